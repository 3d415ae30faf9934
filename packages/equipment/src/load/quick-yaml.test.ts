import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stringify } from 'yaml';
import { mutationNames, mutations, randomFrom } from '../../test/mutations.ts';
import { readDefinitions } from '../load-files/load-equipment.ts';
import { quickYaml } from './quick-yaml.ts';
import { readFully } from './read-yaml.ts';

const { files } = readDefinitions([]);
const docs = fileURLToPath(new URL('../../../../docs/', import.meta.url));
const below = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.yaml'))
    .toSorted()
    .map((name) => readFileSync(join(folder, name), 'utf8'));

/** What the two ways give, where the quick one gives anything: alike, and nothing to say about it. */
const agree = (text: string): boolean => {
  const quick = quickYaml(text);
  if (quick === undefined) return false;
  const full = readFully('a.yaml', text);
  expect(full.issues).toEqual([]);
  expect(quick.data).toStrictEqual(full.data);
  return true;
};

test('the shipped definitions are read quickly, and just as the full parser reads them', () => {
  expect(files.filter(({ text }) => !agree(text)).map(({ file }) => file)).toEqual([]);
});

test('every sample and every file with a mistake is read alike, or left to the full parser', () => {
  const texts = below(docs);
  const quick = texts.filter(agree);
  expect(quick.length).toBeGreaterThan(texts.length / 2);
});

test('400 broken definitions are read alike, or left to the full parser', () => {
  const own = files.find(({ file }) => file.startsWith('osier'))?.text ?? '';
  let quick = 0;
  for (let seed = 1; seed <= 400; seed += 1) {
    const name = mutationNames[seed % mutationNames.length] ?? 'null';
    if (agree(mutations[name](own, randomFrom(seed)))) quick += 1;
  }
  expect(quick).toBeGreaterThan(50);
}, 60_000);

test.each([
  'a: |\n  x\n',
  "a: 'x'\n",
  'a: &b x\n',
  'a: "x\\n"\n',
  'a: x\n  y\n',
  'a: 1.10\n1.10: x\n',
  'a: {b}\n',
  'a: [b: c]\n',
  'a: {b: 5,5 gpm}\n',
  'a: b: c\n',
  'a: 1\na: 2\n',
  'a:\n- b\n',
  'a:\n\tb: c\n',
  '--- \na: b\n',
  'a: {b: c\nd: e}\n',
  'a:\n',
  'a: x #y\n  b: z\n',
  '[a]\n',
  'a: [b,,c]\n',
  'a: Null\n',
  'a: 0x1f\n',
])('%j is left to the full parser', (text) => {
  expect(quickYaml(text)).toBeUndefined();
});

const word = fc.stringMatching(/^[a-z][a-z0-9 :#,.\-"'[\]{}&*!?|>%@]{0,9}$/u);
const value = fc.letrec((tie) => ({
  node: fc.oneof(
    { maxDepth: 3 },
    word,
    fc.integer(),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.boolean(),
    fc.array(tie('node'), { maxLength: 3 }),
    fc.dictionary(word, tie('node'), { maxKeys: 3 }),
  ),
})).node;

test('whatever can be written in YAML is read alike, or left to the full parser', () => {
  fc.assert(
    fc.property(fc.dictionary(word, value, { minKeys: 1, maxKeys: 4 }), fc.boolean(), (data, inBraces) => {
      agree(stringify(data, inBraces ? { collectionStyle: 'flow' } : {}));
    }),
    { numRuns: 300, seed: 7 },
  );
});

test('any text at all is read alike, or left to the full parser', () => {
  const sign = fc.constantFrom(...'ab: \n  -[]{},"#\'1.5&*|>?!~%'.split(''), '\n  ', ': ', '- ', '\n- ');
  fc.assert(
    fc.property(fc.array(sign, { maxLength: 24 }), (signs) => {
      agree(`a: ${signs.join('')}`);
    }),
    { numRuns: 2000, seed: 11 },
  );
});
