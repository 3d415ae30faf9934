import { expect, test } from 'vitest';
import { familyFrom, smallFamily, smallStock } from '../../test/small-family.ts';
import { variantsOf } from './variants-of.ts';

test('variants are all assignments that never does not rule out, with weights that sum to 1', () => {
  const family = familyFrom(smallStock, `${smallFamily}never: [{size: broad, injector: a}]\n`);
  expect(variantsOf(family)).toEqual([
    { variant: { size: 'slim', injector: 'a' }, weight: 1 / 3 },
    { variant: { size: 'slim', injector: 'b' }, weight: 1 / 3 },
    { variant: { size: 'broad', injector: 'b' }, weight: 1 / 3 },
  ]);
});

test('a family without features has one variant', () => {
  expect(variantsOf({ features: [], never: [] })).toEqual([{ variant: {}, weight: 1 }]);
});
