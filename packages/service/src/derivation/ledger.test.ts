import { averageUse, equation, saltMass, serviceTime, volumeBeforeReserve } from '@brinewright/physics';
import { fromUnit, quantity } from '@brinewright/units';
import { describe, expect, it } from 'vitest';
import { leansOn, openLedger } from './ledger.ts';

const difference = equation(
  {
    key: 'test-difference',
    title: 'equation.volume-before-reserve',
    words: 'formula.volume-before-reserve',
    inputs: { first: { symbol: 'a', kind: 'volume' }, second: { symbol: 'b', kind: 'volume' } },
    outputs: { left: { symbol: 'c', kind: 'volume' } },
    range: [{ of: 'symbol.volume', kind: 'volume', max: 100, value: ({ first }) => first }],
    source: 'definition',
    status: 'ours',
  },
  ({ first, second }) => ({ left: first - second }),
);

const volume = (si: number, u?: number) => ({
  value: quantity('volume', si),
  how: 'measured' as const,
  ...(u === undefined ? {} : { u: quantity('volume', u) }),
});

describe('a derived figure', () => {
  it('carries its equation, its inputs and its source', () => {
    const ledger = openLedger();
    ledger.given('dose', { value: fromUnit(8, 'lb/ft3', 'salt-dose'), how: 'told' });
    ledger.given('bed', { value: fromUnit(3, 'ft3', 'volume'), how: 'measured' });
    expect(ledger.derive(saltMass, { saltDose: 'dose', resinVolume: 'bed' }, { saltMass: 'salt' })).toBe(
      true,
    );
    // 3 ft³ × 8 lb/ft³ = 24 lb = 10.886 kg.
    expect(ledger.need('salt')).toBeCloseTo(24 * 0.45359237, 9);
    expect(ledger.figures().salt).toMatchObject({
      by: { kind: 'equation', key: 'salt-mass' },
      inputs: { saltDose: 'dose', resinVolume: 'bed' },
      source: saltMass.meta.source,
      issues: [],
    });
  });

  it('is not put where an input is missing, and nothing is said: the gap says it', () => {
    const ledger = openLedger();
    ledger.given('bed', volume(1));
    expect(ledger.derive(saltMass, { saltDose: 'dose', resinVolume: 'bed' }, { saltMass: 'salt' })).toBe(
      false,
    );
    expect(ledger.has('salt')).toBe(false);
    expect(ledger.issues()).toEqual([]);
  });

  it('is refused for an impossible input, with the figures to look at', () => {
    const ledger = openLedger();
    ledger.given('dose', { value: quantity('salt-dose', 128), how: 'told' });
    ledger.given('bed', volume(0));
    expect(ledger.derive(saltMass, { saltDose: 'dose', resinVolume: 'bed' }, { saltMass: 'salt' })).toBe(
      false,
    );
    expect(ledger.has('salt')).toBe(false);
    expect(ledger.issues()).toMatchObject([
      { code: 'cannot-compute', severity: 'warning', at: ['dose', 'bed'] },
    ]);
  });

  it('is refused where its value or its spread would pass what a number holds', () => {
    const ledger = openLedger();
    ledger.given('dose', { value: quantity('salt-dose', 1e300), how: 'told' });
    ledger.given('bed', volume(1e300));
    ledger.given('small', volume(1, 1e-9));
    ledger.given('wild', volume(2, 1e100));
    expect(ledger.derive(saltMass, { saltDose: 'dose', resinVolume: 'bed' }, { saltMass: 'salt' })).toBe(
      false,
    );
    expect(ledger.derive(difference, { first: 'wild', second: 'small' }, { left: 'left' })).toBe(true);
    ledger.given('wilder', volume(1e300, 1e300));
    expect(ledger.derive(difference, { first: 'wilder', second: 'small' }, { left: 'lost' })).toBe(false);
  });

  it('says when its inputs lie outside what its source was tested at, and is put all the same', () => {
    const ledger = openLedger();
    ledger.given('a', volume(250));
    ledger.given('b', volume(1));
    expect(ledger.derive(difference, { first: 'a', second: 'b' }, { left: 'c' })).toBe(true);
    expect(ledger.need('c')).toBe(249);
    expect(ledger.issues()).toMatchObject([{ code: 'out-of-range', at: ['c'] }]);
    expect(ledger.issues()[0]?.message.values).toMatchObject({ value: { si: 250 }, limit: { si: 100 } });
    expect(ledger.figures().c?.issues).toEqual(ledger.issues());
  });
});

describe('the uncertainty of a figure', () => {
  it('is the root of the sum of squares of independent inputs', () => {
    const ledger = openLedger();
    ledger.given('a', volume(10, 0.3));
    ledger.given('b', volume(4, 0.4));
    ledger.derive(difference, { first: 'a', second: 'b' }, { left: 'c' });
    expect(ledger.figures().c?.u).toBeCloseTo(0.5, 12);
    expect(ledger.figures().c?.spread).toMatchObject({
      a: expect.closeTo(0.3, 12),
      b: expect.closeTo(-0.4, 12),
    });
  });

  it('cancels where both inputs are the same figure: a less a is certain', () => {
    const ledger = openLedger();
    ledger.given('a', volume(10, 0.3));
    ledger.derive(difference, { first: 'a', second: 'a' }, { left: 'c' });
    expect(ledger.need('c')).toBe(0);
    expect(ledger.figures().c?.u ?? 0).toBeLessThan(1e-12);
  });

  it('adds up along the way, not in squares, where two inputs share a root', () => {
    const ledger = openLedger();
    ledger.given('day', volume(2, 0.1));
    ledger.given('none', volume(0));
    ledger.derive(averageUse, { dailyUse: 'day' }, { averageUse: 'use' });
    ledger.derive(
      volumeBeforeReserve,
      { serviceVolume: 'day', reserve: 'none' },
      { meteredVolume: 'metered' },
    );
    ledger.derive(serviceTime, { meteredVolume: 'metered', averageUse: 'use' }, { serviceTime: 'time' });
    // A day's use lasts a day however uncertain it is.
    expect(ledger.need('time')).toBeCloseTo(86_400, 6);
    expect((ledger.figures().time?.u ?? 0) / 86_400).toBeLessThan(1e-3);
  });

  it('stays with a figure that is one of its inputs, and leaves one that was rounded to be keyed in', () => {
    const ledger = openLedger();
    ledger.given('a', volume(10, 0.3));
    ledger.choose('same', quantity('volume', 10), 'same', { of: 'a' }, { as: 'a' });
    ledger.choose('rounded', quantity('volume', 9), 'downward', { exact: 'a' });
    expect(ledger.figures().same).toMatchObject({ u: 0.3, spread: { a: 0.3 }, inputs: { of: 'a' } });
    expect(ledger.figures().rounded).toMatchObject({ inputs: { exact: 'a' } });
    expect(ledger.figures().rounded?.u).toBeUndefined();
  });

  it('comes through an input that is zero but not surely so', () => {
    const ledger = openLedger();
    ledger.given('a', volume(10, 0));
    ledger.given('b', volume(0, 0.2));
    ledger.derive(difference, { first: 'a', second: 'b' }, { left: 'c' });
    expect(ledger.figures().c?.u).toBeCloseTo(0.2, 9);
  });
});

describe('what a figure leans on', () => {
  const leaning = (assumed: number, measured: number) => {
    const ledger = openLedger();
    ledger.assume('a', quantity('volume', 10), 'ours', assumed);
    ledger.given('b', volume(4, measured));
    ledger.derive(difference, { first: 'a', second: 'b' }, { left: 'c' });
    const figures = ledger.figures();
    return figures.c === undefined ? 'nothing' : leansOn(figures.c, figures);
  };

  it('is the assumption that more than half of its spread comes from', () => {
    expect(leaning(0.4, 0.3)).toBe('a');
  });

  it('is nothing where measurements weigh more, or nothing is uncertain', () => {
    expect(leaning(0.3, 0.4)).toBeUndefined();
    expect(leaning(0, 0)).toBeUndefined();
  });
});
