import type { Issue, Path } from '@brinewright/words';
import type { z } from 'zod';
import { issueAt, unknownWord } from '../issue/report.ts';
import { keysAllowed } from './keys-allowed.ts';
import type { YamlRead } from './read-yaml.ts';
import { findingOf, type SchemaIssue } from './schema-finding.ts';

/** What a schema found in a YAML text, in our words, each with its place. */
export const schemaIssues = (error: z.ZodError, schema: z.ZodType, yaml: YamlRead): readonly Issue[] =>
  error.issues.flatMap((issue) => spread(issue, [])).flatMap((issue) => told(issue, schema, yaml));

/** Out of a union that fits in no branch, the branch that was probably meant. */
const spread = (issue: SchemaIssue, above: readonly PropertyKey[]): readonly SchemaIssue[] => {
  const path = [...above, ...issue.path];
  if (issue.code !== 'invalid_union') return [{ ...issue, path }];
  const [meant] = issue.errors
    .filter((branch) => !branch.some((inner) => inner.path.length === 0 && isWrongType(inner)))
    .toSorted((a, b) => faultsIn(a) - faultsIn(b));
  return meant === undefined ? [{ ...issue, path }] : meant.flatMap((inner) => spread(inner, path));
};

const isWrongType = (issue: SchemaIssue): boolean =>
  issue.code === 'invalid_type' || issue.code === 'invalid_value';

/** Keys that a branch does not know weigh as many as they are. */
const faultsIn = (branch: readonly SchemaIssue[]): number =>
  branch.reduce((sum, issue) => sum + (issue.code === 'unrecognized_keys' ? issue.keys.length : 1), 0);

const told = (issue: SchemaIssue, schema: z.ZodType, yaml: YamlRead): readonly Issue[] => {
  const path = issue.path.map((key) => (typeof key === 'symbol' ? String(key) : key));
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => unknownKey(key, path, schema, yaml));
  }
  const part = issue.code === 'invalid_key' ? 'key' : 'value';
  return [issueAt('error', path, yaml.locate(path, part), findingOf(issue, path, yaml))];
};

const unknownKey = (key: string, path: Path, schema: z.ZodType, yaml: YamlRead): Issue => {
  const at = [...path, key];
  const finding = unknownWord('schema.unknown-key', key, keysAllowed(schema, path));
  return issueAt('error', at, yaml.locate(at, 'key'), finding);
};
