import { describe, expect, it } from 'vitest';
import { laundry, programmed } from '../testing/laundry.ts';

const found = {
  backwash: '10 min',
  brine: '52 min',
  'fast-rinse': '9 min',
  refill: '10 min',
  volume: '2300 gal',
};
const prices = { currency: 'USD', salt: '7.50 per 40 lb', water: '9 per 1000 gal' };
const measured = { backwash: '5 gpm', draw: '0.45 gpm', 'slow-rinse': '0.85 gpm' };

describe('settings as found', () => {
  it('are run through the same arithmetic', () => {
    const { notes, read } = programmed(laundry({ settings: { found } }));
    // 10 min × 0.5 gpm × 2.99 lb/gal = 14.95 lb, 4.98 lb/ft³; below 6 lb/ft³ in proportion: 20 × 4.98 / 6 = 16.6 kgr/ft³.
    expect(read('program.found.salt', 'lb')).toBeCloseTo(14.95, 1);
    expect(read('program.found.capacity', 'kgr/ft3')).toBeCloseTo(16.6, 1);
    expect(notes).toContain('program.found-too-little');
  });

  it('keep their dose where it is a sensible one', () => {
    const { read } = programmed(laundry({ settings: { found: { ...found, refill: '14 min' } } }));
    // 14 × 0.5 × 2.99 ÷ 3 = 6.98 lb/ft³, between 6 and 10.
    expect(read('program.dose', 'lb/ft3')).toBeCloseTo(6.98, 2);
    expect(read('program.refill.time', 'min')).toBeCloseTo(14, 6);
  });

  it('explain salty water: the control was exchanged for one three times as fast and the time was left', () => {
    const { notes, read } = programmed(
      laundry(
        { settings: { found: { ...found, refill: '16 min' } } },
        { measured: { ...measured, refill: '1.5 gpm' } },
      ),
    );
    // 24 gal of water become 27.1 gal of brine; ÷ 0.45 gpm = 60 min, and the step is 52 min: nothing rinses.
    expect(read('program.found.draw.time', 'min')).toBeCloseTo(60, 0);
    expect(notes).toEqual(expect.arrayContaining(['program.found-too-much', 'program.found-no-rinse']));
  });

  it('explain salty water by a short rinse where the draw just fits', () => {
    const { notes, read } = programmed(laundry({ settings: { found: { ...found, brine: '30 min' } } }));
    // 5 gal become 5.64 gal, 12.5 min; 17.5 min × 0.85 gpm = 14.9 gal of 22.4 gal: 0.66 bed volumes.
    expect(read('program.found.slow-rinse.bed-volumes', 'BV')).toBeCloseTo(0.66, 2);
    expect(notes).toContain('program.found-short-rinse');
  });

  it('explain hard water before the end: the meter waits for more than the salt softens', () => {
    const { notes } = programmed(laundry({ settings: { found: { ...found, volume: '3000 gal' } } }));
    // 16.6 kgr/ft³ × 3 ft³ ÷ 19 gpg = 2620 gal.
    expect(notes).toContain('program.found-hard-early');
    expect(programmed(laundry({ settings: { found } })).notes).not.toContain('program.found-hard-early');
  });
});

describe('a year with the found settings against the advised ones', () => {
  it('is counted in salt and water, with a gap for the money, where prices are not known', () => {
    const { advice, read, stage } = programmed(laundry({ settings: { found } }));
    expect(advice.year.map(({ what }) => what)).toEqual(['salt', 'water']);
    expect(stage.gaps.map(({ message }) => message.key)).toContain('program.gap.prices');
    // Advised: 365.25 ÷ 4.0 days × 23.92 lb = 2184 lb. Found: 365.25 ÷ (2300 ÷ 700) × 14.95 lb = 1662 lb.
    expect(read('program.as-set.salt-year', 'lb') / 2184).toBeCloseTo(1, 2);
    expect(read('program.found.salt-year', 'lb') / 1662).toBeCloseTo(1, 2);
    // Water: 50 + 17.0 + 34.0 + 45 + 8.0 = 154 gal; found 50 + 52 × 0.85 + 45 + 5 = 144.2 gal.
    expect(read('program.as-set.water', 'gal')).toBeCloseTo(154, 0);
    expect(read('program.found.water', 'gal')).toBeCloseTo(144.2, 0);
  });

  it('is counted in money as well where they are', () => {
    const { advice, read } = programmed(laundry({ site: { name: 'Laundry', prices }, settings: { found } }));
    expect(advice.year.map(({ what }) => what)).toEqual(['salt', 'water', 'money']);
    // 2184 lb × $7.50/40 lb = $409.5 and 154 gal × 91.3 × $9/1000 gal = $126.6.
    expect(read('program.as-set.cost-year', '') / (409.5 + 126.6)).toBeCloseTo(1, 2);
  });
});

describe('what is done once', () => {
  const once = (document: Parameters<typeof programmed>[0]) =>
    programmed(document).advice.once.map(({ key }) => key);

  const fast = { measured: { ...measured, refill: '1.5 gpm' } };
  const holds: ('backwash' | 'brine' | 'fast-rinse' | 'refill')[] = [
    'backwash',
    'brine',
    'fast-rinse',
    'refill',
  ];
  const controller = { holds, starts: ['metered' as const] };

  it('adds water to a tank that the old refill left too weak', () => {
    expect(once(laundry({ settings: { found } }))).toContain('program.once.add-water');
  });

  it('draws a long time where the old refill left too much brine and the controller holds it, else pumps it out', () => {
    const document = laundry({ settings: { found: { ...found, refill: '16 min' } } }, fast);
    expect(once(document)).toEqual(['program.once.pump-out']);
    const long = { ...fast, controller: { ...controller, times: '1 min to 199 min by 1 min' } };
    const held = laundry({ settings: { found: { ...found, refill: '16 min' } } }, long);
    expect(once(held)).toEqual(['program.once.much-brine-brine']);
  });

  it('regenerates an exhausted bed twice, or once heavily where the controller holds that step', () => {
    const exhausted = (unit: object) => programmed(laundry({}, { bedNow: 'exhausted', ...unit })).advice.once;
    expect(exhausted({}).map(({ key }) => key)[0]).toBe('program.once.exhausted-twice');
    const long = { controller: { ...controller, times: '1 min to 199 min by 1 min' } };
    const heavy = exhausted(long).find(({ key }) => key === 'program.once.exhausted-heavy-brine');
    // 15 lb/ft³ × 3 ft³ = 45 lb.
    expect(heavy?.values?.salt).toMatchObject({ kind: 'mass', si: expect.closeTo(45 * 0.45359237, 6) });
  });

  it('asks nothing once where brine and bed are as they should be', () => {
    expect(once(laundry())).toEqual([]);
  });
});
