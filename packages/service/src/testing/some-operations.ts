import type { Operation, WorkState } from '@brinewright/equipment';
import fc from 'fast-check';
import { back, operation, surroundings } from './tiny-operations.ts';

/* Families made by chance, for properties that hold for all of them. */

const most = 14;
const needs: readonly WorkState[] = [
  {},
  { water: 'off' },
  { water: 'off', pressure: 'none' },
  { power: 'off' },
  { water: 'off', pressure: 'none', power: 'off', piston: 'removal' },
];

const drawn = fc.record({
  kind: fc.constantFrom('open', 'open', 'open', 'work'),
  ways: fc.array(fc.uniqueArray(fc.nat({ max: most }), { maxLength: 2 }), { maxLength: 2 }),
  needs: fc.constantFrom(...needs),
  tool: fc.option(fc.constantFrom('driver', 'wrench', 'hook-slim', 'hook-broad')),
  side: fc.option(fc.constantFrom('front', 'back', 'right')),
  minutes: fc.integer({ min: 1, max: 15 }),
  back: fc.integer({ min: 1, max: 15 }),
  size: fc.option(fc.constantFrom('slim', 'broad'), { freq: 3 }),
});
type Drawn = typeof drawn extends fc.Arbitrary<infer T> ? T : never;

const idAt = (at: number): string => `inside-${String(at).padStart(2, '0')}`;

/** What comes off takes a part of its own with it; the last one counts the stack. */
const operationAt = (one: Drawn, at: number, all: readonly Drawn[]): Operation => {
  const opens = one.kind === 'open';
  const isStack = opens && at === all.length - 1;
  return operation(idAt(at), {
    phase: opens ? 'open' : 'work',
    after: one.ways.map((way) => way.filter((other) => other < at).map(idAt)),
    needs: one.needs,
    tools: one.tool === null ? [] : [one.tool],
    ...(one.side === null ? {} : { side: one.side }),
    minutes: { hands: one.minutes, waiting: 0 },
    takesOut: isStack ? ['seal', 'spacer'] : opens ? [`part-${at}`] : [],
    ...(isStack ? { counts: 'stack' as const } : {}),
    ...(opens ? { back: back(one.back) } : {}),
    fits: one.size === null || isStack ? {} : { size: [one.size] },
  });
};

/** An inside of up to fourteen operations within the usual surroundings. */
export const someFamilies = fc
  .array(drawn, { minLength: 1, maxLength: most })
  .map((list): readonly Operation[] => [...surroundings, ...list.map(operationAt)]);

export const insideOf = (operations: readonly Operation[]): readonly Operation[] =>
  operations.filter(({ id }) => id.startsWith('inside-'));
