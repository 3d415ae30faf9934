import { describe, expect, it } from 'vitest';
import { laundry, type Programmed, programmed } from '../testing/laundry.ts';

const windowIn = ({ advice: { window } }: Programmed) => {
  if (window === undefined) throw new Error('no window');
  return window;
};

const fitted = (drain: string) => ({
  fitted: { controller: 'tally', injector: 'middle', drain, refill: 'r2' },
  measured: {},
});

describe('the backwash window', () => {
  it('aims at a flow inside it, for the tank as it is', () => {
    const { read } = programmed(laundry());
    const [floor, aim, ceiling] = [
      'program.window.floor',
      'program.backwash.aim',
      'program.window.ceiling',
    ].map((id) => read(id, 'gpm'));
    expect(aim).toBeGreaterThanOrEqual(floor ?? Number.NaN);
    expect(aim).toBeLessThanOrEqual(ceiling ?? Number.NaN);
    // 14 in inside is π/4 × (14/12)² = 1.069 ft².
    expect(read('program.window.floor', 'gpm') / read('program.window.floor.upflow', 'gpm/ft2')).toBeCloseTo(
      1.069,
      3,
    );
  });

  it('says of the fitted drain control whether it lies below, inside or above', () => {
    // About 4.2 to 5.8 gpm: 3.2 gpm is below, 4.6 inside, 6.5 above.
    for (const [drain, fits] of [
      ['d3', 'below'],
      ['d4', 'inside'],
      ['d5', 'above'],
    ] as const) {
      expect(windowIn(programmed(laundry({}, fitted(drain))))).toMatchObject({ state: 'open', fits });
    }
  });

  it('names the drain control nearest to its aim, and none where none lies inside', () => {
    expect(windowIn(programmed(laundry({}, fitted('d5'))))).toMatchObject({ choice: 'd4' });
    const wide = laundry({}, { ...fitted('d6'), tank: { diameter: '24 in' } });
    expect(windowIn(programmed(wide))).not.toHaveProperty('choice');
  });

  it('is lowered to what supply or drain carry, and says which', () => {
    const drain = programmed(laundry({ supply: { flow: '16 gpm', drain: '5 gpm' } }));
    expect(windowIn(drain)).toMatchObject({ state: 'open', ceiling: 'situation.drain.carries' });
    const supply = programmed(laundry({ supply: { flow: '3 gpm', drain: '9 gpm' } }));
    expect(windowIn(supply)).toMatchObject({
      state: 'empty',
      ceiling: 'situation.supply.flow',
      why: { key: 'program.window.empty.supply' },
    });
  });

  it('is not made up where nobody knows how far the bed may rise', () => {
    const { advice, stage } = programmed(laundry({}, { media: [{ medium: 'gel-cation', volume: '3 ft3' }] }));
    expect(advice.window).toBeUndefined();
    expect(stage.state).toBe('done');
  });

  it('moves up for larger beads once a pail showed nothing at a rate that should have lifted the bed out', () => {
    const seen = (what: 'nothing' | 'fines' | 'beads') =>
      programmed(laundry({}, { pail: { seen: what, rate: '6.8 gpm', temperature: '50 degF' } })).read(
        'program.window.ceiling',
        'gpm',
      );
    const before = programmed(laundry()).read('program.window.ceiling', 'gpm');
    expect(seen('nothing')).toBeGreaterThan(before);
    expect(seen('beads')).toBeCloseTo(before, 9);
  });

  it('is opened by what hangs on it: a figure with its method, its inputs and its spread', () => {
    const { figures } = programmed(laundry());
    const ceiling = figures['program.window.ceiling'];
    expect(ceiling?.by.kind).toBe('equation');
    expect(Object.keys(ceiling?.spread ?? {})).toEqual(
      expect.arrayContaining(['situation.bed.grain', 'situation.bed.voidage']),
    );
  });
});
