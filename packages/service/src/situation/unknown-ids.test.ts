import { expect, it } from 'vitest';
import { laundry, situationFor } from '../testing/laundry.ts';
import type { VisitDocument } from '../visit/schema.ts';

const unknownIn = (change: Partial<VisitDocument>) =>
  situationFor(laundry(change))
    .issues.filter(({ code }) => code === 'unknown-id')
    .map(({ severity, at, mend }) => ({ severity, at, near: mend?.values?.near }));

const warned = (at: readonly (string | number)[], near?: string) => [{ severity: 'warning', at, near }];

it('a decided fault that the family does not have gets the one that was meant', () => {
  const decided = (value: string) => ({ decided: [{ what: 'fault' as const, value }] });
  expect(unknownIn(decided('leak-raw-to-drian'))).toEqual(
    warned(['decided', 0, 'value'], 'leak-raw-to-drain'),
  );
  expect(unknownIn(decided('leak-raw-to-drain'))).toEqual([]);
});

it('a complaint that was chosen and is not known is said, beside one that is', () => {
  const kinds = ['water-at-drain', 'water-at-drian'];
  expect(unknownIn({ complaint: { words: 'It runs', kinds } })).toEqual(
    warned(['complaint', 'kinds', 1], 'water-at-drain'),
  );
});

it('a change that was chosen and is not known is said', () => {
  expect(unknownIn({ history: { changes: ['refill-control-change'] } })).toEqual(
    warned(['history', 'changes', 0], 'refill-control-changed'),
  );
});

it('an answer or reading of a unit that the visit does not have is said', () => {
  const answers = [{ tell: 'foot-letter', answer: 'J', conditioner: 's11' }];
  const readings = [{ test: 'drain-in-service', value: '0 gpm', conditioner: 's11' }];
  expect(unknownIn({ answers })).toMatchObject([{ at: ['answers', 0, 'conditioner'] }]);
  expect(unknownIn({ readings })).toMatchObject([{ at: ['readings', 0, 'conditioner'] }]);
});

it('a reading of another unit of the visit is no mistake', () => {
  const [softener] = laundry().conditioners;
  if (softener === undefined) throw new Error('no softener');
  const readings = [{ test: 'drain-in-service', value: '0 gpm', conditioner: 's2' }];
  expect(unknownIn({ conditioners: [softener, { ...softener, id: 's2' }], readings })).toEqual([]);
});
