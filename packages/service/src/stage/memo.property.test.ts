import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AssessOptions, assess } from '../assess.ts';
import { arbitraryVisit } from '../testing/arbitrary-visit.ts';
import { shippedEquipment } from '../testing/shipped.ts';
import { textOf } from '../testing/text-of.ts';
import { type Visit, visitSchema } from '../visit/schema.ts';
import { type Memo, newMemo } from './memo.ts';
import { type StageName, stageNames } from './stage.ts';

const equipment = shippedEquipment();
const visits = arbitraryVisit(equipment).map((document) => visitSchema.parse(document));
const options: AssessOptions = { now: '2026-11-25T10:00:00Z', effort: 'quick' };
const runs = { numRuns: 100, seed: 20261125 };

/** One visit with a part of another: what changes between two assessments of a visit that is being written. */
const withPartOf = (visit: Visit, other: Visit, part: keyof Visit): Visit => ({
  ...visit,
  ...Object.fromEntries([[part, other[part] ?? visit[part]]]),
});

const changes = fc.constantFrom<keyof Visit>(
  'water',
  'demand',
  'supply',
  'site',
  'conditioners',
  'complaint',
  'history',
  'answers',
  'readings',
  'apart',
  'gate',
  'done',
  'decided',
  'settings',
  'proofs',
  'stock',
  'acknowledged',
);

describe('the memo', () => {
  it('gives what an assessment without it gives, whatever changed since', () => {
    fc.assert(
      fc.property(
        visits,
        visits,
        fc.array(changes, { minLength: 1, maxLength: 4 }),
        (visit, other, parts) => {
          const memo = newMemo();
          assess(visit, equipment, { ...options, memo });
          let current = visit;
          for (const part of parts) {
            current = withPartOf(current, other, part);
            const remembered = assess(current, equipment, { ...options, memo });
            const fresh = assess(current, equipment, options);
            for (const stage of stageNames) {
              expect(textOf(remembered.stages[stage]), stage).toBe(textOf(fresh.stages[stage]));
            }
            expect(textOf(remembered)).toBe(textOf(fresh));
          }
        },
      ),
      runs,
    );
  });
});

describe('a change in a visit', () => {
  const visit = visitSchema.parse({
    schema: 1,
    id: 'v1',
    site: { name: 'Site' },
    water: [{ of: 'raw', hardness: '18 gpg' }],
    demand: { daily: '700 gal' },
    supply: { pressure: '60 psi' },
    conditioners: [
      {
        id: 's1',
        family: 'osier',
        kind: 'softener',
        tank: { diameter: '14 in' },
        media: [{ medium: 'gel-cation', depth: '34 in', free: '20 in' }],
        fitted: { controller: 'tally', injector: 'middle', drain: 'd4', refill: 'r2' },
      },
    ],
    subject: 's1',
    answers: [{ tell: 'foot-letter', answer: 'J' }],
    readings: [{ test: 'drain-in-service', value: '0.2 gpm' }],
  });

  const kept = (change: Partial<Visit>): readonly StageName[] => {
    const memo = newMemo();
    assess(visit, equipment, { ...options, memo });
    const before: Memo = { ...memo };
    assess({ ...visit, ...change }, equipment, { ...options, memo });
    return stageNames.filter((stage) => before[stage] === memo[stage]);
  };

  it('that changes nothing runs nothing again', () => {
    expect(kept({})).toEqual(stageNames);
  });

  it('of a proof reading runs only the plan and the proof again', () => {
    const proofs = [{ check: 'backwash-flow', value: '4.6 gpm' }];
    expect(kept({ proofs })).toEqual(['recognition', 'diagnosis', 'repair', 'program']);
  });

  it('of what hangs on the water runs only the plan again', () => {
    const site = { name: 'Site', uses: ['food' as const] };
    expect(kept({ site })).toEqual(['recognition', 'diagnosis', 'repair', 'program', 'proof']);
  });

  it('of what the van holds leaves program, proof and odds as they are', () => {
    const stock = [{ part: 'reseal-slim-nitrile', count: 1 }];
    expect(kept({ stock })).toEqual(['recognition', 'diagnosis', 'program', 'proof']);
  });

  it('of a tell does not program again', () => {
    const answers = [{ tell: 'foot-letter', answer: 'Q' }];
    expect(kept({ answers })).toEqual(['program', 'proof']);
  });
});
