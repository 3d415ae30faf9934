import type { Issue } from '@brinewright/words';
import { expect, test } from 'vitest';
import { smallFamily } from '../../test/small-family.ts';
import { parseDefinition } from './parse-definition.ts';

const issuesIn = (text: string): readonly Issue[] => parseDefinition('a.yaml', text).issues;
const short = (issues: readonly Issue[]) =>
  issues.map(({ code, place, at }) => [code, place?.line, place?.column, at.join('.')]);

test('a sound family is read without a word', () => {
  const parsed = parseDefinition('a.yaml', smallFamily);
  expect(parsed).toMatchObject({ state: 'family', id: 'harrow', issues: [] });
});

test('only the first syntax error of a file is shown', () => {
  expect(short(issuesIn('family: a\nkinds: [softener\ntitle: x: y\n'))).toEqual([
    ['yaml.not-closed', 3, 1, ''],
  ]);
});

test('all schema errors are shown at once, each at its own place', () => {
  const text =
    'family: a\ntels: {}\nkinds: [softner]\nlimits: {pressure: 20 to 125}\nparts:\n  seal: {is: 7}\n';
  expect(short(issuesIn(text))).toEqual([
    ['schema.not-one-of', 3, 9, 'kinds.0'],
    ['quantity.missing-unit', 4, 20, 'limits.pressure'],
    ['schema.quote-number', 6, 14, 'parts.seal.is'],
    ['schema.unknown-key', 2, 1, 'tels'],
  ]);
});

test('an unknown key close to a known one gets the known one as its mend', () => {
  expect(issuesIn('family: a\ntels: {}\n')[0]?.mend).toEqual({
    key: 'issue.did-you-mean',
    values: { near: 'tells' },
  });
  expect(issuesIn('famly: a\n')[0]).toMatchObject({ at: ['famly'], mend: { values: { near: 'family' } } });
  const inside = issuesIn('family: a\noperations:\n  x: {miutes: 2}\n');
  expect(inside[0]?.mend).toMatchObject({ values: { near: 'minutes' } });
});

test('a decimal comma is mended with a point', () => {
  const [issue] = issuesIn('family: a\ncontrols: {drain: {"4": "4,5 gpm"}}\n');
  expect(issue).toMatchObject({ code: 'quantity.decimal-comma', mend: { values: { text: '4.5 gpm' } } });
});

test('a quantity that is a key is looked at as well', () => {
  const text = 'family: a\ninjectors: {a: {at: {20 gpm: {draw: 1 gpm, slow-rinse: 1 gpm}}}}\n';
  expect(short(issuesIn(text))).toEqual([['quantity.wrong-kind', 2, 22, 'injectors.a.at.20 gpm']]);
});

test('a key made of digits keeps its last zero and gets a note', () => {
  const parsed = parseDefinition('a.yaml', 'family: a\ncontrols: {drain: {1.10: 1.1 gpm}}\n');
  expect(short(parsed.issues)).toEqual([['yaml.number-key', 2, 20, 'controls.drain.1.10']]);
  expect(parsed).toMatchObject({ state: 'family', written: { controls: { drain: { '1.10': '1.1 gpm' } } } });
});

test('a code that is an unquoted number is shown as it was written', () => {
  const [issue] = issuesIn('family: a\nparts: {seal: {is: seal, number: 1.10}}\n');
  expect(issue?.message.values).toMatchObject({ found: '1.10' });
});

test('on and off stay words', () => {
  const parsed = parseDefinition('a.yaml', 'family: a\noperations: {x: {needs: {water: off, power: on}}}\n');
  expect(parsed).toMatchObject({ written: { operations: { x: { needs: { water: 'off', power: 'on' } } } } });
});

test('a text that nests without end is refused, not thrown', () => {
  expect(issuesIn(`family: ${'['.repeat(60_000)}`)[0]?.code).toMatch(/^yaml\./u);
  expect(issuesIn(`family: ${'['.repeat(60)}${']'.repeat(60)}`)[0]?.code).toBe('yaml.too-deep');
  expect(issuesIn('a'.repeat(1_000_001))[0]?.code).toBe('yaml.too-long');
});

test('a key named like a part of every object is a key like any other', () => {
  expect(short(issuesIn('family: a\n__proto__: {x: 1}\nconstructor: 2\n'))).toEqual([
    ['schema.unknown-key', 2, 1, '__proto__'],
    ['schema.unknown-key', 3, 1, 'constructor'],
  ]);
});

const mends = (text: string) =>
  issuesIn(`family: a\n${text}\n`).map(({ code, place, message, mend }) => [
    code,
    place?.column,
    message.values?.text,
    mend?.values?.mended,
  ]);

test('a decimal comma inside braces or brackets is told as one, and nothing of its pieces', () => {
  expect(mends('controls: {drain: {"5": 5,5 gpm, "7": 7,5 gpm}}')).toEqual([
    ['yaml.decimal-comma', 25, '5,5 gpm', '5.5 gpm'],
    ['yaml.decimal-comma', 39, '7,5 gpm', '7.5 gpm'],
  ]);
  expect(mends('parts: {seal: {is: seal, price: 3,10}}')).toEqual([
    ['yaml.decimal-comma', 33, '3,10', '3.10'],
  ]);
  expect(mends('bore: {measured: {seals: [12 mm, 46,5 mm]}}')).toContainEqual([
    'yaml.decimal-comma',
    34,
    '46,5 mm',
    '46.5 mm',
  ]);
  expect(mends('controllers: {a: {times: 1,5 min to 3,5 min by 0,5 min}}')).toEqual([
    ['yaml.decimal-comma', 26, '1,5 min to 3,5 min by 0,5 min', '1.5 min to 3.5 min by 0.5 min'],
  ]);
});

test('a comma between thousands inside braces asks for quotes', () => {
  expect(mends('controllers: {a: {volumes: 10 gal to 9,990 gal by 10 gal}}')).toEqual([
    ['yaml.comma-ends-value', 28, '10 gal to 9,990 gal by 10 gal', undefined],
  ]);
});

test('commas between values pass', () => {
  expect(mends('bore: {joins: [{open: {backwash: [3,6,7]}}]}')).toEqual([]);
  expect(mends('controls: {drain: {"4": 4 gpm,"5": 5 gpm}}')).toEqual([]);
});

test('a range that lacks only its step is told so, with a step', () => {
  const times = (text: string) => mends(`controllers: {a: {times: ${text}}}`);
  expect(times('1 min to 90 min')).toEqual([
    ['quantity.no-step', 26, '1 min to 90 min', '1 min to 90 min by 1 min'],
  ]);
  expect(times('0 min to 90 min')[0]?.[3]).toBe('0 min to 90 min by 1 min');
  expect(times('90 min')[0]?.[0]).toBe('quantity.not-a-range');
  expect(mends('limits: {pressure: 20 psi to 90 psi}')).toEqual([]);
});

test('a visit among the definitions is told as one', () => {
  const [issue, ...others] = issuesIn('schema: 1\nsite: {name: x}\nconditioners: []\n');
  expect(issue).toMatchObject({
    code: 'definition.is-visit',
    place: { line: 2 },
    mend: { values: { file: 'a.yaml' } },
  });
  expect(others).toEqual([]);
});
