import { isQuantityKind } from '@brinewright/units';
import { type Message, message, type Path } from '@brinewright/words';
import { z } from 'zod';
import type { Finding } from '../issue/codes.ts';
import { clipped, listed, unknownWord } from '../issue/report.ts';
import { quantityFinding } from '../quantity/finding.ts';
import { isQuantityForm, problemIn, steplessMended } from '../quantity/written.ts';
import type { YamlRead } from './read-yaml.ts';
import { valueAt } from './record.ts';

export type SchemaIssue = z.core.$ZodIssue;

/** What was found under which key, and the same as an error shows it. */
type Found = { readonly key: string; readonly value: unknown; readonly text: string };

/** One issue of a schema as a finding of ours; no word of the schema library is shown. */
export const findingOf = (issue: SchemaIssue, path: Path, yaml: YamlRead): Finding => {
  const value = valueAt(yaml.data, path);
  const found = { key: keyName(path), value, text: foundText(value, path, yaml) };
  switch (issue.code) {
    case 'invalid_type':
      return typeFinding([issue.expected], found);
    case 'invalid_union':
      return typeFinding(issue.errors.flatMap(expectedOf), found);
    case 'invalid_value':
      return valueFinding(issue.values, found);
    case 'too_small':
      return boundFinding(issue.origin, 'least', issue.minimum, found);
    case 'too_big':
      return boundFinding(issue.origin, 'most', issue.maximum, found);
    case 'invalid_format':
      return formatFinding(found);
    case 'invalid_key':
      return keyFinding(String(path.at(-1)), issue.issues);
    case 'custom':
      return customFinding(issue.params, found);
    default:
      return { code: 'schema.does-not-fit', values: { key: found.key, found: found.text } };
  }
};

/** The last key by name: an item of a list is named by its list. */
const keyName = (path: Path): string => String(path.findLast((key) => typeof key === 'string') ?? '');

/** Numbers as they stand in the text: 1.10 is not shown as 1.1. */
const foundText = (value: unknown, path: Path, yaml: YamlRead): string =>
  clipped(typeof value === 'number' ? (yaml.textOf(path) ?? value) : value);

const expectedOf = (branch: readonly SchemaIssue[]): readonly string[] =>
  branch.flatMap((issue) => {
    if (issue.path.length > 0) return [];
    if (issue.code === 'invalid_type') return [issue.expected];
    return issue.code === 'invalid_value' ? issue.values.map(String) : [];
  });

const typeWords = {
  string: 'schema.type.text',
  number: 'schema.type.number',
  int: 'schema.type.whole-number',
  boolean: 'schema.type.yes-no',
  array: 'schema.type.list',
  tuple: 'schema.type.list',
  object: 'schema.type.map',
  record: 'schema.type.map',
} as const;

const typeWord = (type: string): Message | string => {
  const known = Object.entries(typeWords).find(([name]) => name === type);
  return known === undefined ? type : message(known[1]);
};

const typeFinding = (expected: readonly string[], { key, value, text }: Found): Finding => {
  const [first = 'string', ...others] = [...new Set(expected)];
  const values = { key, found: text, expected: typeWord(first) };
  if (value === undefined) return { code: 'schema.missing-key', values };
  if (value === null) return { code: 'schema.no-value', values };
  if (typeof value === 'number' && expected.includes('string'))
    return { code: 'schema.quote-number', values };
  const [second] = others;
  if (second === undefined) return { code: 'schema.wrong-type', values };
  return { code: 'schema.wrong-type-of-two', values: { ...values, other: typeWord(second) } };
};

const valueFinding = (allowed: readonly unknown[], found: Found): Finding => {
  const known = allowed.map(String);
  const { key, value, text } = found;
  if (value === undefined) return typeFinding(['string'], found);
  if (value === null) return { code: 'schema.no-value', values: { key, expected: listed(known) } };
  return unknownWord('schema.not-one-of', text, known, { key });
};

const boundFinding = (
  origin: string,
  bound: 'least' | 'most',
  limit: number | bigint,
  { key, text }: Found,
): Finding => {
  const values = { key, limit: Number(limit), found: text };
  if (origin === 'string') return { code: 'schema.empty-text', values };
  if (origin === 'array')
    return { code: bound === 'least' ? 'schema.list-short' : 'schema.list-long', values };
  return { code: bound === 'least' ? 'schema.too-small' : 'schema.too-large', values };
};

const formatFinding = ({ key, text }: Found): Finding => {
  const code = text.includes('+') ? 'schema.not-a-join' : 'schema.not-an-id';
  return { code, values: { key, found: text } };
};

const keyFinding = (key: string, issues: readonly SchemaIssue[]): Finding => {
  const custom = issues.find((issue) => issue.code === 'custom');
  if (custom !== undefined) return customFinding(custom.params, { key, value: key, text: clipped(key) });
  return { code: 'schema.key-not-an-id', values: { key: clipped(key) } };
};

const asked = z.object({ quantity: z.string(), form: z.string() });

/** Quantities say only what was asked for; what is wrong with the text is read again here. */
const customFinding = (params: unknown, { key, text }: Found): Finding => {
  const read = asked.safeParse(params);
  if (read.success && isQuantityKind(read.data.quantity) && isQuantityForm(read.data.form)) {
    const mended = read.data.form === 'series' ? steplessMended(text, read.data.quantity) : undefined;
    if (mended !== undefined) return { code: 'quantity.no-step', values: { text, mended } };
    const problem = problemIn(text, read.data.quantity, read.data.form);
    if (problem !== undefined) return quantityFinding(problem);
  }
  return { code: 'schema.does-not-fit', values: { key, found: text } };
};
