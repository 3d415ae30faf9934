import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { lintDefinitions } from '@brinewright/equipment';
import { compileFiles, readDefinitions } from '@brinewright/equipment/load-files';
import { english, type Issue, missingValues } from '@brinewright/words';
import { expect, test } from 'vitest';
import { formatIssue } from './format-issue.ts';

/*
 * Every code about definitions has a file that provokes it; the page docs/errors/definitions.md shows them all,
 * and is written from what the program says.
 */

const folder = fileURLToPath(new URL('../../../../docs/errors/definitions/', import.meta.url));
const page = fileURLToPath(new URL('../../../../docs/errors/definitions.md', import.meta.url));

/**
 * Codes that no small file of definitions can provoke: tested beside the code that gives them, except
 * `schema.does-not-fit`, which is kept for what a newer schema library may report.
 */
const elsewhere = [
  'file.missing',
  'file.none',
  'file.unreadable',
  'schema.does-not-fit',
  'yaml.too-deep',
  'yaml.too-long',
];

const quantityCodes = [
  'decimal-comma',
  'missing-unit',
  'negative',
  'no-number',
  'not-a-range',
  'not-finite',
  'range-upside-down',
  'unknown-unit',
  'wrong-kind',
  'zero-step',
].map((what) => `quantity.${what}`);

const ownCodes = Object.keys(english).flatMap((key) => /^issue\.(.+)\.mend$/u.exec(key)?.[1] ?? []);

const documented = [...ownCodes, ...quantityCodes].filter((code) => !elsewhere.includes(code)).toSorted();

type Provoked = { readonly issues: readonly Issue[]; readonly sources: ReadonlyMap<string, string> };

/** Read once for both tests: each file brings the whole stock with it. */
const read = new Map<string, Provoked>();

const provoked = (code: string): Provoked => {
  const known = read.get(code) ?? provoke(code);
  read.set(code, known);
  return known;
};

const provoke = (code: string): Provoked => {
  const path = existsSync(`${folder}${code}`) ? `${folder}${code}` : `${folder}${code}.yaml`;
  const definitions = readDefinitions([path], folder);
  const compiled = compileFiles(definitions);
  const issues = [...compiled.issues, ...(compiled.ok ? lintDefinitions(compiled.value) : [])];
  const sources = new Map(definitions.files.map(({ file, text }) => [file, text]));
  return { issues, sources };
};

const said = (code: string): Issue | undefined =>
  provoked(code).issues.find((issue) => issue.code === code && issue.place?.file.startsWith(code));

test.each(documented)('%s is provoked by its file, with place, reason and mend', (code) => {
  const issue = said(code);
  expect(issue?.place?.line).toBeGreaterThan(0);
  expect(issue === undefined ? ['nothing'] : missingValues(issue.message)).toEqual([]);
  expect(issue?.mend === undefined ? ['no mend'] : missingValues(issue.mend)).toEqual([]);
});

test('every file provokes a code that exists', () => {
  const names = readdirSync(folder).map((name) => name.replace(/\.yaml$/u, ''));
  expect(names.toSorted()).toEqual(documented);
});

const shownAs = (code: string): string => {
  const { sources } = provoked(code);
  const issue = said(code);
  return `## ${code}\n\n\`\`\`text\n${issue === undefined ? '' : formatIssue(issue, sources, 'en')}\n\`\`\`\n`;
};

test('the page of errors shows what the program says', async () => {
  const head =
    '# What can be wrong in a definition\n\nWritten from the files in `definitions/` by the test that provokes them.\n';
  await expect([head, ...documented.map(shownAs)].join('\n')).toMatchFileSnapshot(page);
});
