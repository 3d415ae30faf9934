import { describe, expect, it } from 'vitest';
import { laundry, programmed } from '../testing/laundry.ts';

/*
 * By hand, with 60 °F brine at 2.99 lb of salt to a gallon of water (saturated brine of 26.4 %):
 * 18 gpg + 4 × 0.25 mg/L iron = 19 gpg. 3 ft³ × 8 lb/ft³ = 24 lb; 24 ÷ 2.99 = 8.03 gal; 8.03 ÷ 0.5 gpm = 16.05 min.
 */
describe('the advised program', () => {
  it('counts iron as four grains for each mg/L', () => {
    const { read } = programmed(laundry());
    expect(read('program.hardness', 'gpg')).toBeCloseTo(18 + 4 * 0.25, 3);
  });

  it('goes from dose to salt, to refill water, to minutes', () => {
    const { read } = programmed(laundry());
    expect(read('program.dose', 'lb/ft3')).toBeCloseTo(8, 9);
    expect(read('program.salt', 'lb')).toBeCloseTo(3 * 8, 6);
    expect(read('program.brine.salt-per-water', 'lb/gal')).toBeCloseTo(2.99, 2);
    expect(read('program.refill.water', 'gal')).toBeCloseTo(24 / 2.99, 1);
    expect(read('program.refill.time', 'min')).toBeCloseTo(24 / 2.99 / 0.5, 1);
  });

  it('sets the nearest minute and shows what both neighbours bring', () => {
    const { advice, minutes, read } = programmed(laundry());
    const refill = advice.settings.find(({ step }) => step === 'refill');
    expect(refill?.below?.time).toBe(16 * 60);
    expect(refill?.above?.time).toBe(17 * 60);
    expect(minutes('refill')).toBe(16);
    // 16 min × 0.5 gpm × 2.99 lb/gal = 23.9 lb, and 17 min bring 25.4 lb.
    expect(read('program.below.refill.salt', 'lb')).toBeCloseTo(16 * 0.5 * 2.99, 1);
    expect(read('program.above.refill.salt', 'lb')).toBeCloseTo(17 * 0.5 * 2.99, 1);
  });

  it('brackets every exact time by its neighbours', () => {
    const { advice, read } = programmed(laundry());
    expect(advice.settings.map(({ step }) => step)).toEqual(['backwash', 'brine', 'fast-rinse', 'refill']);
    for (const { below, above, exact } of advice.settings) {
      const time = read(exact, 's');
      expect(below?.time).toBeLessThanOrEqual(time + 1e-6);
      expect(above?.time).toBeGreaterThanOrEqual(time - 1e-6);
    }
  });

  it('takes a third of the minutes for the same salt at three times the refill rate', () => {
    const slow = programmed(laundry());
    const measured = { backwash: '5 gpm', draw: '0.45 gpm', 'slow-rinse': '0.85 gpm', refill: '1.5 gpm' };
    const fast = programmed(laundry({}, { measured }));
    const time = slow.read('program.refill.time', 's');
    expect(fast.read('program.refill.time', 's') / time).toBeCloseTo(1 / 3, 12);
    expect(fast.read('program.salt', 'kg')).toBe(slow.read('program.salt', 'kg'));
  });

  it('covers the draw and one and a half bed volumes of rinse in the brine step', () => {
    const { minutes, read } = programmed(laundry());
    // 8.03 gal of water become 8.03 × 1.128 = 9.05 gal of brine; ÷ 0.45 gpm = 20.1 min.
    // 1.5 × 3 ft³ × 7.4805 gal/ft³ ÷ 0.85 gpm = 39.6 min. Together 59.7 min, set upward to 60.
    expect(read('program.brine.volume', 'gal')).toBeCloseTo(8.03 * 1.128, 1);
    expect(read('program.draw.time', 'min')).toBeCloseTo(9.05 / 0.45, 0);
    expect(read('program.slow-rinse.time', 'min')).toBeCloseTo((1.5 * 3 * 7.4805) / 0.85, 1);
    expect(minutes('brine')).toBe(60);
    expect(read('program.as-set.slow-rinse.bed-volumes', 'BV')).toBeGreaterThanOrEqual(1.5);
  });

  it('rinses fast with two bed volumes at the rate of the drain control', () => {
    // 2 × 3 ft³ × 7.4805 gal/ft³ ÷ 5 gpm = 8.98 min.
    expect(programmed(laundry()).minutes('fast-rinse')).toBe(9);
  });

  it('keeps one average day back and rounds the volume down to what the controller holds', () => {
    const { read } = programmed(laundry());
    // As set 16 min bring 23.92 lb, 7.973 lb/ft³, so 20 + 4.5 × 1.973 / 4 = 22.22 kgr/ft³.
    // 22.22 × 3 × 1000 ÷ 19 = 3508 gal; less 700 gal = 2808 gal; in steps of 20 gal 2800.
    expect(read('program.as-set.capacity', 'kgr/ft3')).toBeCloseTo(22.22, 1);
    expect(read('program.as-set.volume.full', 'gal')).toBeCloseTo(3508, -1);
    expect(read('program.reserve', 'gal')).toBeCloseTo(700, 6);
    expect(read('program.set.volume', 'gal')).toBeCloseTo(2800, 6);
    expect(read('program.interval', 'd')).toBeCloseTo(2800 / 700, 6);
    // A meter counts; the days it holds beside are the calendar limit.
    expect(read('program.set.days', 'd')).toBeCloseTo(7, 9);
  });

  it('waits at most a week, and four days where the water holds iron', () => {
    const little = laundry({ demand: { daily: '100 gal' } });
    expect(programmed(little).read('program.set.days', 'd')).toBeCloseTo(7, 9);
    const iron = laundry({
      demand: { daily: '100 gal' },
      water: [{ of: 'raw', hardness: '18 gpg', iron: '0.3 mg/L' }],
    });
    expect(programmed(iron).read('program.set.days', 'd')).toBeCloseTo(4, 9);
    expect(programmed(iron).notes).toContain('program.iron-some');
  });

  it('gives whole days to a clock, never more than the bed lasts', () => {
    const fitted = { controller: 'dial', injector: 'middle', drain: 'd4', refill: 'r2' };
    const { advice, minutes, read } = programmed(laundry({}, { fitted }));
    // 16.05 min between 15 and 18: 15 min are 22.4 lb, 7.475 lb/ft³, 21.66 kgr/ft³, 3420 gal; less 700 = 2720.
    expect(minutes('refill')).toBe(15);
    expect(read('program.days.exact', 'd')).toBeCloseTo(2720 / 700, 1);
    expect(read('program.set.days', 'd')).toBe(3);
    expect(advice.volume).toBeUndefined();
  });

  it('gives volume and calendar, and says that nothing is held back, where nobody knows the demand', () => {
    const { advice, notes, read } = programmed(laundry({ demand: {} }));
    expect(advice.days).not.toHaveProperty('expected');
    expect(read('program.set.days', 'd')).toBe(7);
    expect(notes).toContain('program.no-reserve');
    expect(read('program.reserve', 'gal')).toBe(0);
    expect(read('program.set.volume', 'gal')).toBeCloseTo(3500, 6);
  });

  it('says of a decided dose that its brine is never drawn or rinsed out in the time the controller has', () => {
    const dose = (value: string) => programmed(laundry({ decided: [{ what: 'dose', value }] })).notes;
    // 45 lb/ft³ make about 53 gal of brine, 118 min at 0.45 gpm: longer than the 99 min held.
    expect(dose('45 lb/ft3')).toContain('program.set-draw-cut');
    expect(dose('30 lb/ft3')).toContain('program.set-short-rinse');
    expect(dose('10 lb/ft3')).not.toContain('program.set-short-rinse');
  });

  it('keeps nothing back and says so where the bed does not last a day', () => {
    const { notes, read } = programmed(laundry({ demand: { daily: '5000 gal' } }));
    expect(notes).toContain('program.bed-too-small');
    expect(read('program.set.volume', 'gal')).toBeCloseTo(3500, 6);
  });

  it('says when a step needs more time than the controller holds', () => {
    const media = [{ medium: 'gel-cation', volume: '20 ft3', depth: '40 in', free: '24 in' }];
    const { minutes, notes } = programmed(laundry({}, { tank: { diameter: '30 in' }, media }));
    // 160 lb ÷ 2.99 ÷ 0.5 gpm = 107 min; the controller holds 99.
    expect(minutes('refill')).toBe(99);
    expect(notes).toContain('program.beyond-controller');
  });

  it('follows the dose that the technician decided', () => {
    const { read } = programmed(laundry({ decided: [{ what: 'dose', value: '6 lb/ft3' }] }));
    expect(read('program.salt', 'lb')).toBeCloseTo(18, 6);
  });

  it('does not guess the unit of a decided dose, and says so', () => {
    const { read, stage } = programmed(laundry({ decided: [{ what: 'dose', value: '6' }] }));
    expect(stage.issues.find(({ code }) => code === 'dose-not-read')?.at).toEqual(['decided', 0, 'value']);
    expect(read('program.dose', 'lb/ft3')).toBeCloseTo(8, 9);
  });

  it('is blocked, with what would open it, where nothing is known of the bed and its rates', () => {
    const bare: Parameters<typeof laundry>[1] = { tank: {}, media: [], fitted: {}, measured: {} };
    expect(() => programmed(laundry({ water: [], supply: {} }, bare))).toThrow('no program');
  });

  it('loses five percent of capacity for each year of the resin', () => {
    const aged = (age: string) =>
      programmed(
        laundry({}, { media: [{ medium: 'gel-cation', volume: '3 ft3', free: '20 in', age }] }),
      ).read('program.dose-8.capacity', 'kgr/ft3');
    expect(aged('0 yr')).toBeCloseTo(22.25, 2);
    expect(aged('2 yr')).toBeCloseTo(22.25 * 0.95 ** 2, 2);
  });

  it('shows the usual doses beside the chosen one, each for more volume at more salt', () => {
    const { advice, read } = programmed(laundry());
    expect(advice.doses.map(({ dose }) => Math.round(read(dose, 'lb/ft3')))).toEqual([6, 8, 10, 15]);
    expect(advice.doses.map(({ chosen }) => chosen)).toEqual([false, true, false, false]);
    // 20, 22.25, 24.5 and 30 kgr/ft³ × 3 ft³ ÷ 19 gpg.
    expect(advice.doses.map(({ volume }) => Math.round(read(volume, 'gal') / 10))).toEqual([
      316, 351, 387, 474,
    ]);
  });
});

describe('potassium chloride', () => {
  const refillAt = (temperature: string, salt: 'sodium' | 'potassium') =>
    programmed(laundry({}, { brineTank: { temperature }, salt })).read('program.refill.water', 'gal');

  it('needs more refill water for the same mass, and more again when cold', () => {
    expect(refillAt('70 degF', 'potassium')).toBeGreaterThan(refillAt('70 degF', 'sodium'));
    expect(refillAt('40 degF', 'potassium')).toBeGreaterThan(refillAt('70 degF', 'potassium') * 1.1);
    expect(refillAt('40 degF', 'sodium')).toBeLessThan(refillAt('70 degF', 'sodium') * 1.02);
  });

  it('is named as the reason, and no sodium is said to be added', () => {
    const { notes } = programmed(laundry({}, { salt: 'potassium' }));
    expect(notes).toContain('program.potassium');
    expect(notes).not.toContain('program.sodium');
  });
});
