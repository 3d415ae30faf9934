import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AssessOptions, assess } from './assess.ts';
import { arbitraryVisit } from './testing/arbitrary-visit.ts';
import { faultsOf } from './testing/faults-of.ts';
import { shippedEquipment } from './testing/shipped.ts';
import { textOf } from './testing/text-of.ts';
import { visitSchema } from './visit/schema.ts';

const equipment = shippedEquipment();
const documents = arbitraryVisit(equipment);
const visits = documents.map((document) => visitSchema.parse(document));
const options: AssessOptions = { now: '2026-11-25T10:00:00Z', effort: 'quick' };
const runs = { numRuns: 100, seed: 20261125 };

describe('an arbitrary visit', () => {
  it('is one that its schema takes', () => {
    fc.assert(
      fc.property(documents, (document) => {
        expect(visitSchema.safeParse(document).error).toBeUndefined();
      }),
      runs,
    );
  });
});

describe('an assessment of any visit', () => {
  it.each([1, 2, 3, 4])(
    'never throws, holds finite figures whose inputs are there, and only sentences that say something (seed 20261125 and batch %i)',
    (batch) => {
      const seed = 20261125 + batch;
      fc.assert(
        fc.property(visits, (visit) => {
          expect(faultsOf(assess(visit, equipment, options))).toEqual([]);
        }),
        { numRuns: 250, seed },
      );
    },
  );

  it('comes back the same from JSON, but for the situation and the belief, whose odds are a Float64Array', () => {
    fc.assert(
      fc.property(visits, (visit) => {
        const { stages, ...rest } = assess(visit, equipment, options);
        const { situation: _, recognition: __, ...plain } = stages;
        for (const part of [rest, ...Object.values(plain)]) {
          expect(JSON.parse(JSON.stringify(part))).toEqual(part);
        }
      }),
      runs,
    );
  });

  it('is the same twice, to the last bit', () => {
    fc.assert(
      fc.property(visits, (visit) => {
        const once = textOf(assess(visit, equipment, options));
        expect(textOf(assess(visitSchema.parse(visitSchema.encode(visit)), equipment, options))).toBe(once);
      }),
      runs,
    );
  });
});
