import { expect, test } from 'vitest';
import { assess } from './assess.ts';
import { laundry } from './testing/laundry.ts';
import { shippedEquipment } from './testing/shipped.ts';
import { type VisitDocument, visitSchema } from './visit/schema.ts';

const equipment = shippedEquipment();

const cautionsOf = (document: VisitDocument): readonly string[] =>
  assess(visitSchema.parse(document), equipment, {
    now: '2026-11-25T10:00:00Z',
    effort: 'quick',
  }).cautions.map(({ caution }) => caution);

const decided = (fault: string, more: Partial<VisitDocument> = {}) =>
  laundry({ decided: [{ what: 'fault', value: fault }], ...more });

const opening = ['isolate-and-vent', 'pressure-returns', 'people-warned', 'work-place'] as const;

test('a visit that only sets the program has none of the cautions of opening', () => {
  const cautions = cautionsOf(decided('refill-time-wrong'));
  expect(cautions.filter((id) => opening.some((one) => one === id))).toEqual([]);
  expect(cautions).toEqual(
    expect.arrayContaining(['mains-power', 'potable-hygiene', 'licensed-work', 'sodium', 'unsafe-water']),
  );
});

test('work that opens the valve has every one of them', () => {
  expect(cautionsOf(decided('riser-o-ring'))).toEqual(
    expect.arrayContaining([
      ...opening,
      'vacuum-collapse',
      'bonding',
      'heavy-load',
      'air-gap',
      'beads-on-floor',
    ]),
  );
});

test('potassium chloride gets its own caution and not that of sodium', () => {
  const document = laundry({}, { salt: 'potassium' });
  expect(cautionsOf(document)).toContain('potassium');
  expect(cautionsOf(document)).not.toContain('sodium');
  expect(cautionsOf(laundry())).not.toContain('potassium');
});

test('hot water names scalding and parts rated for it, cold water does not', () => {
  const hot = laundry({ water: [{ of: 'raw', hardness: '18 gpg', temperature: '140 degF' }] });
  expect(cautionsOf(hot)).toEqual(expect.arrayContaining(['hot-water', 'rated-parts']));
  expect(cautionsOf(laundry())).not.toContain('hot-water');
});

test('pressure above what the family is made for names rated parts', () => {
  expect(cautionsOf(laundry({ supply: { pressure: '160 psi' } }))).toContain('rated-parts');
});

test('a filter hears nothing of sodium', () => {
  expect(cautionsOf(laundry({}, { kind: 'filter', media: [] }))).not.toContain('sodium');
});
