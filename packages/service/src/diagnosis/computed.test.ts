import { formatMessage } from '@brinewright/words';
import { describe, expect, it } from 'vitest';
import { assess } from '../assess.ts';
import { laundry } from '../testing/laundry.ts';
import { shippedEquipment } from '../testing/shipped.ts';
import { type VisitDocument, visitSchema } from '../visit/schema.ts';
import type { Diagnosis } from './diagnosis.ts';

const equipment = shippedEquipment();

type Found = NonNullable<NonNullable<VisitDocument['settings']>['found']>;

const diagnosed = (found: Found, change: Partial<VisitDocument> = {}): Diagnosis => {
  const visit = visitSchema.parse(laundry({ settings: { found }, ...change }));
  const { diagnosis } = assess(visit, equipment, { now: '2026-11-25T10:00:00Z', effort: 'quick' }).stages;
  if (diagnosis.state === 'blocked') throw new Error('blocked');
  return diagnosis.value;
};

const forFault = (found: Diagnosis, fault: string): string =>
  (found.odds.find((one) => one.fault === fault)?.speaksFor ?? [])
    .map((clue) => formatMessage(clue, { language: 'en', system: 'us' }))
    .join('\n');

const asks = (found: Diagnosis): readonly string[] => found.next.map(({ test }) => test.id);

/* 3 ft³ of resin and 0.5 gpm of refill: at three pounds of salt a gallon, 16 min bring 8 lb/ft³. */
describe('the found program', () => {
  it('is compared by the engine: a dose more than a quarter off 6 to 10 lb/ft³ is a refill that is off', () => {
    const said = forFault(diagnosed({ refill: '30 min' }), 'refill-time-wrong');
    expect(said).toContain('The refill time does not go with dose and control');
    expect(said).toContain('(computed from the found settings)');
    expect(forFault(diagnosed({ refill: '16 min' }), 'refill-time-wrong')).not.toContain('computed');
  });

  it('waits too long where the found volume is more than the found salt softens', () => {
    const long = diagnosed({ refill: '16 min', volume: '9000 gal' });
    expect(forFault(long, 'capacity-set-too-high')).toContain('(computed from the found settings)');
    const fine = diagnosed({ refill: '16 min', volume: '1500 gal' });
    expect(forFault(fine, 'capacity-set-too-high')).not.toContain('computed');
  });

  it('is no longer asked for once it is computed', () => {
    const complaint = { words: 'The water is hard.' };
    expect(asks(diagnosed({ refill: '30 min' }, { complaint }))).not.toContain('program-compared');
  });

  it('is what the technician says where he compared it himself', () => {
    const readings = [{ test: 'program-compared', state: 'agrees' }];
    const found = diagnosed({ refill: '30 min' }, { readings });
    expect(forFault(found, 'refill-time-wrong')).not.toContain('computed');
  });
});
