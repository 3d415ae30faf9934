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

  it('makes the program for the drain control that goes in, and says what stays until then', () => {
    // 3.2 gpm is too weak, d4 gives 4.6: two volumes of 3 ft³ (22.44 gal) take 44.88 / 4.6 = 9.76 min, 10 as set;
    // through the old control 44.88 / 3.2 = 14.03 min, 15 as set. Ten minutes of backwash are 46 gal.
    const { advice, minutes, notes, read } = programmed(laundry({}, fitted('d3')));
    expect(notes).toContain('program.window.fit-below-rinse');
    expect(read('program.fast-rinse.time', 'min')).toBeCloseTo(44.88 / 4.6, 2);
    expect(minutes('fast-rinse')).toBe(10);
    expect(read('program.as-set.water.backwash', 'gal')).toBeCloseTo(46, 6);
    expect(read('program.until-then.fast-rinse.time', 'min')).toBeCloseTo(44.88 / 3.2, 2);
    const said = advice.notes.find(({ key }) => key === 'program.window.fit-below-rinse');
    expect(said?.values?.rinse).toMatchObject({ si: 15 * 60 });
  });

  it('keeps a control that is outside by less than its rate is known', () => {
    const unsure = { measured: { backwash: { value: '4 gpm', u: '1 gpm' } } };
    const { notes, read } = programmed(laundry({}, { ...fitted('d3'), ...unsure }));
    expect(notes).toContain('program.window.nearly-below');
    expect(read('program.fast-rinse.time', 'min')).toBeCloseTo(44.88 / 4, 2);
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
