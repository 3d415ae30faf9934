import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodyFromPorts, joined, leakOf } from './body.ts';
import { boreFromJoins } from './joins.ts';
import { boreFromLengths } from './lengths.ts';
import { statesAtStops, transit } from './piston-state.ts';
import { placeSchematic } from './schematic.ts';

const seeded = { numRuns: 100, seed: 20260713 };

const names = ['IN', 'TOP', 'DR', 'BOT', 'OUT', 'BRN'] as const;
const ports = fc.array(fc.constantFrom(...names), { minLength: 2, maxLength: 9 });

/** A body and, for some stops, which of its seals are open. */
const demands = ports.chain((row) =>
  fc.record({
    body: fc.constant(bodyFromPorts(row)),
    row: fc.constant(row),
    stops: fc.array(
      fc.subarray(row.slice(1).map((_port, place) => place + 1)).map((open) => ({ open })),
      { minLength: 1, maxLength: 6 },
    ),
  }),
);

const named = (stops: readonly { readonly open: readonly number[] }[]) =>
  stops.map((stop, place) => ({ stop: `stop-${place}`, ...stop }));

describe('a schematic bore', () => {
  it('opens just the wanted seals at every stop, all others well covered', () => {
    fc.assert(
      fc.property(demands, ({ body, stops }) => {
        const placed = placeSchematic(body, named(stops));
        const states = statesAtStops(placed.bore, placed.stops);
        expect(states.map((state) => state.open)).toEqual(stops.map((stop) => stop.open));
        const others = states.flatMap((state) => state.seals.filter((seal) => seal.state !== 'open'));
        expect(others.filter((seal) => seal.state !== 'closed')).toEqual([]);
      }),
      seeded,
    );
  });

  it('has lengths that pass as measured ones would', () => {
    fc.assert(
      fc.property(demands, ({ body, stops }) => {
        const { bore } = placeSchematic(body, named(stops));
        expect(boreFromLengths(bore.lengths)).toMatchObject({ ok: true });
        expect(bore.schematic).toBe(true);
      }),
      seeded,
    );
  });

  it('passes on its way through what it joins at the stops', () => {
    fc.assert(
      fc.property(demands, ({ body, stops }) => {
        const placed = placeSchematic(body, named(stops));
        const last = placed.stops.at(-1)?.shift ?? 0;
        const way = transit(placed.bore, [0, last]);
        for (const state of statesAtStops(placed.bore, placed.stops)) {
          const there = way.find(({ from, to }) => from <= state.shift + 1e-6 && state.shift <= to + 1e-6);
          expect(there?.joined).toEqual(state.joined);
        }
      }),
      seeded,
    );
  });
});

describe('joins', () => {
  it('do not depend on the end they are read from', () => {
    fc.assert(
      fc.property(demands, ({ body, row, stops }) => {
        const backwards = bodyFromPorts(row.toReversed());
        for (const { open } of stops) {
          const mirrored = open.map((seal) => row.length - seal);
          expect(joined(backwards, mirrored)).toEqual(joined(body, open));
        }
      }),
      seeded,
    );
  });

  it('grow or stay when one more seal opens, and then hold both its ports', () => {
    fc.assert(
      fc.property(demands, fc.nat(), ({ body, stops }, pick) => {
        const seal = body.seals[pick % body.seals.length] ?? 1;
        for (const { open } of stops) {
          const more = joined(body, [...open, seal]);
          for (const group of joined(body, open))
            expect(more.some((wider) => group.every((port) => wider.includes(port)))).toBe(true);
          const [before, behind] = leakOf(body, seal).ports;
          if (before !== behind)
            expect(more.some((group) => group.includes(before) && group.includes(behind))).toBe(true);
        }
      }),
      seeded,
    );
  });

  it('read back as joins give a set of seals that joins the same', () => {
    fc.assert(
      fc.property(demands, ({ body, row, stops }) => {
        const wishes = named(stops).map(({ stop, open }) => ({ stop, joins: joined(body, open) }));
        const { stops: found, problems } = boreFromJoins({ ports: row, stops: wishes });
        expect(problems).toEqual([]);
        expect(found.map(({ open }) => joined(body, open))).toEqual(wishes.map(({ joins }) => joins));
      }),
      seeded,
    );
  });
});
