import { describe, expect, test } from 'vitest';
import { boreAt } from '../../../test/bore.ts';
import { leakPast, passagesIn, standingIn, standings } from './waters.ts';

const ways = (variant: 'raw-pass' | 'shut-outlet', stop: Parameters<typeof boreAt>[1]): readonly string[] =>
  passagesIn(boreAt(variant, stop), 'draw').map(
    ({ from, to, seal, water }) => `${from}>${to} past ${seal}: ${water}`,
  );

describe('the waters at a stop', () => {
  test('in service raw water goes to the tank top and treated water to the outlet', () => {
    expect(ways('raw-pass', 'service')).toEqual(['IN>TOP past 2: raw', 'BOT>OUT past 5: treated']);
  });

  test('in backwash raw water comes up the riser and leaves by the drain', () => {
    expect(ways('raw-pass', 'backwash')).toEqual([
      'TOP>DR past 3: drain',
      'IN>OUT past 6: raw',
      'IN>BOT past 7: raw',
    ]);
  });

  test('at the brine stop the tank top holds brine in the draw and raw water in the slow rinse', () => {
    const bore = boreAt('raw-pass', 'brine');
    expect(standingIn(bore, 'TOP', 'draw')).toEqual({ water: 'brine', moves: true });
    expect(standingIn(bore, 'TOP', 'slow-rinse')).toEqual({ water: 'raw', moves: true });
    expect(standingIn(bore, 'BOT', 'draw').water).toBe('drain');
  });

  test('a piston that shuts the outlet leaves it standing with treated water', () => {
    expect(standingIn(boreAt('shut-outlet', 'fast-rinse'), 'OUT', 'draw')).toEqual({
      water: 'treated',
      moves: false,
    });
  });
});

describe('a torn seal', () => {
  test('leaks from the higher pressure to the lower', () => {
    const service = boreAt('raw-pass', 'service');
    expect(leakPast(service, 4, 'draw')).toEqual({ seal: 4, from: 'BOT', to: 'DR', water: 'treated' });
    expect(leakPast(service, 3, 'draw')).toEqual({ seal: 3, from: 'TOP', to: 'DR', water: 'raw' });
    expect(leakPast(service, 1, 'draw')).toEqual({ seal: 1, from: 'IN', to: 'OUTSIDE', water: 'raw' });
  });

  test('shows nothing where both its sides are joined anyway', () => {
    expect(leakPast(boreAt('raw-pass', 'service'), 2, 'draw')).toBeUndefined();
  });

  test('fills the idle drain, which is how it is seen', () => {
    const service = boreAt('raw-pass', 'service');
    expect(standings(service, 'draw', leakPast(service, 4, 'draw')).get('DR')).toEqual({
      water: 'drain',
      moves: true,
    });
    expect(standings(service, 'draw', undefined).get('DR')).toEqual({ water: 'none', moves: false });
  });
});
