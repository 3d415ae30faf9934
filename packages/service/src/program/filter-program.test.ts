import { describe, expect, it } from 'vitest';
import { laundry, programmed } from '../testing/laundry.ts';

const filter = laundry(
  {},
  {
    kind: 'filter',
    media: [{ medium: 'sand', depth: '30 in', free: '18 in' }],
    fitted: { controller: 'dial-filter', drain: 'd6' },
    measured: {},
  },
);

describe('the program of a filter', () => {
  it('has a backwash and a rinse, never shorter than it needs, and no salt', () => {
    const { advice, minutes } = programmed(filter);
    // 10 and 5 min on a dial of 3 min steps.
    expect(advice.settings.map(({ step }) => step)).toEqual(['backwash', 'fast-rinse']);
    expect(minutes('backwash')).toBe(12);
    expect(minutes('fast-rinse')).toBe(6);
    expect(advice.doses).toEqual([]);
  });

  it('runs every three days until its pressure loss is known, and says so', () => {
    const { notes, read } = programmed(filter);
    expect(read('program.set.days', 'd')).toBeCloseTo(3, 9);
    expect(notes).toContain('program.filter-interval');
  });

  it('asks nothing about salt, brine or refill', () => {
    const { stage } = programmed(filter);
    expect(stage.gaps).toEqual([]);
    expect(stage.issues.map(({ code }) => code)).not.toContain('cannot-compute');
  });
});
