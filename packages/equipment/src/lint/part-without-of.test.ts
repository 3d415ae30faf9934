import { expect, test } from 'vitest';
import { lintAfter, replacing } from '../../test/small-family.ts';

const twoControls = replacing('{"4": 4 gpm}', '{"4": 4 gpm, "5": 5 gpm}');
const found = (parts: string, controls: (text: string) => string = twoControls) =>
  lintAfter((text) => `${controls(text)}${parts}`).filter(({ code }) => code === 'lint.part-without-of');

test('parts that say which of several fittings they are pass', () => {
  expect(found('  d4: {is: drain-control, of: "4"}\n  d5: {is: drain-control, of: "5"}\n')).toEqual([]);
});

test('a part that is one of several fittings and does not say which is a note on the part', () => {
  expect(found('  d4: {is: drain-control, of: "4"}\n  d5: {is: drain-control}\n')).toMatchObject([
    {
      severity: 'note',
      place: { file: '1.yaml', line: 27 },
      message: { values: { role: 'drain-control', parts: 'd5', more: 0, count: 2, known: '4, 5' } },
    },
  ]);
});

test('where the family has one fitting of the role, or the part fits by its feature, nothing is said', () => {
  expect(found('  d: {is: drain-control}\n', (text) => text)).toEqual([]);
  const withFeature = (text: string) =>
    replacing('injector: [a, b]', 'injector: [a, b]\n  drain: ["4", "5"]')(twoControls(text));
  expect(found('  d4: {is: drain-control, fits: {drain: "4"}}\n', withFeature)).toEqual([]);
});
