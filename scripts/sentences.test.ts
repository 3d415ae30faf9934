import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

/*
 * Sentences live in `words`. In the engine no string literal holds a space, so that none is shown in one language
 * only. What throws is for us, not for users, and may speak.
 */
const engine = ['service', 'equipment', 'journal'];

const sourcesOf = (name: string): string[] => {
  const folder = join(import.meta.dirname, '..', 'packages', name, 'src');
  try {
    return readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name.endsWith('.ts') && !entry.name.endsWith('.test.ts'))
      .map((entry) => join(entry.parentPath, entry.name))
      .filter((file) => !file.includes('/testing/'));
  } catch {
    return [];
  }
};

const withoutComments = (text: string): string =>
  text.replaceAll(/\/\*[\s\S]*?\*\//gu, '').replaceAll(/(^|\s)\/\/.*$/gmu, '$1');

const sentencesIn = (text: string): string[] =>
  withoutComments(text)
    .split('\n')
    .filter((line) => !/\b(?:new \w*Error|describe\()/u.test(line))
    .flatMap((line) => [...line.matchAll(/'((?:[^'\\]|\\.)*)'|`([^`]*)`/gu)])
    .map((match) => (match[1] ?? match[2] ?? '').replaceAll(/\$\{[^}]*\}/gu, ''))
    .filter((literal) => /\S \S/u.test(literal));

it.each(engine)('no sentence stands in the source of %s', (name) => {
  const found = sourcesOf(name).flatMap((file) =>
    sentencesIn(readFileSync(file, 'utf8')).map((literal) => `${file.split('/packages/')[1]}: ${literal}`),
  );
  expect(found).toEqual([]);
});

it('finds a sentence where there is one', () => {
  expect(sentencesIn("const x = 'two words'; // 'a comment here'")).toEqual(['two words']);
});
