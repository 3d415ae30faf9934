import { undescribed } from '@brinewright/equipment';
import { expect, test } from 'vitest';
import { openByMaker, stockIds } from './stock-ids.ts';
import { shippedEquipment } from './testing/shipped.ts';

const equipment = shippedEquipment();
const family = equipment.families.get('osier');
if (family === undefined) throw new Error('the family of the demo is not shipped');

const idsOf = (list: readonly { readonly id: string }[]): readonly string[] => list.map(({ id }) => id);

test.each([
  ['features', stockIds.features, idsOf(family.features)],
  ['roles', stockIds.roles, family.parts.map(({ is }) => is)],
  ['tests', stockIds.tests, idsOf(family.tests)],
  ['cautions', stockIds.cautions, idsOf(family.cautions)],
])('the shipped family has the %s that the reasoning looks for', (_what, sought, shipped) => {
  expect(shipped).toEqual(expect.arrayContaining(Object.values(sought)));
});

test('a make nobody has described has its one way in', () => {
  expect(idsOf(equipment.families.get(undescribed)?.operations ?? [])).toContain(openByMaker);
});
