import type { BoreDrawing } from '../src/drawings/cutaway/bore-drawing.ts';
import geometry from './valve-geometry-convertible.json' with { type: 'json' };

const metres = (mm: number): number => mm / 1000;

const stopOf = (name: string): BoreDrawing['stop'] => {
  if (
    name === 'service' ||
    name === 'backwash' ||
    name === 'brine' ||
    name === 'fast-rinse' ||
    name === 'refill'
  )
    return name;
  throw new Error(`no such stop: ${name}`);
};

/** The invented bore at one stop, read from its reference table. */
export const boreAt = (variant: 'raw-pass' | 'shut-outlet', stop: BoreDrawing['stop']): BoreDrawing => {
  const row = geometry.variants.find((item) => item.variant === variant);
  const joins = row?.connectivity.find((item) => stopOf(item.position) === stop);
  if (row === undefined || joins === undefined) throw new Error(`${variant} has no stop ${stop}`);
  const [from = 0, to = 0] = row.piston.length_mm.map(metres);
  return {
    chambers: geometry.chambers.map(({ port, from_mm, to_mm }) => ({
      port,
      from: metres(from_mm),
      to: metres(to_mm),
    })),
    seals: geometry.seals.map(({ id, at_mm }) => ({ number: id, at: metres(at_mm) })),
    piston: {
      grooves: row.piston.grooves_mm.map(([a = 0, b = 0]) => [metres(a), metres(b)]),
      ends: [from, to],
    },
    stop,
    shift: metres(joins.shift_mm),
    joined: joins.joined_ports.map((group) => group.split('+')),
    openSeals: joins.open_seals,
    schematic: false,
  };
};
