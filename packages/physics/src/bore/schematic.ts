import type { BoreBody, SealNo } from './body.ts';
import type { Bore, BoreLengths, Span } from './lengths.ts';
import type { StopShift } from './piston-state.ts';

/** Made-up lengths, m (our own): near enough to a real valve to draw, never to be read as its measures. */
export const schematicLengths = { stopPitch: 7e-3, reach: 4e-3, cover: 2e-3, sleeve: 9e-3 } as const;

const margin = schematicLengths.reach + schematicLengths.cover;

/** Runs of neighbouring stops at which a seal is open, as places in the row of stops. */
const openRuns = (seal: SealNo, stops: readonly { readonly open: readonly SealNo[] }[]): readonly Span[] => {
  const runs: Span[] = [];
  for (const [place, { open }] of stops.entries()) {
    if (!open.includes(seal)) continue;
    const last = runs.at(-1);
    if (last !== undefined && last[1] === place - 1) runs.splice(-1, 1, [last[0], place]);
    else runs.push([place, place]);
  }
  return runs;
};

/** The groove that lies over a seal from the first to the last stop of a run. */
const grooveOver = (at: number, [first, last]: Span): Span => [
  at - last * schematicLengths.stopPitch - schematicLengths.reach,
  at - first * schematicLengths.stopPitch + schematicLengths.reach,
];

const chambersAt = (body: BoreBody, walls: readonly number[], ends: Span): BoreLengths['chambers'] =>
  body.chambers.map((chamber, place) => ({
    ...chamber,
    from: walls[place - 1] ?? ends[0],
    to: walls[place] ?? ends[1],
  }));

/**
 * A bore and piston made up so that just the wanted seals open at each stop; marked schematic.
 *
 * The seals stand farther apart than the stroke, so that each sweeps land and grooves of its own and any set of open
 * seals can be had. Checked: schematic.property.test.ts.
 * @throws RangeError when there is no stop (programming mistake).
 */
export const placeSchematic = (
  body: BoreBody,
  stops: readonly { readonly stop: string; readonly open: readonly SealNo[] }[],
): { readonly bore: Bore; readonly stops: readonly StopShift[] } => {
  if (stops.length === 0) throw new RangeError('no stop to place');
  const stroke = (stops.length - 1) * schematicLengths.stopPitch;
  const sealPitch = stroke + 2 * margin;
  const walls = body.seals.map((_seal, place) => (place + 1) * sealPitch);
  const length: Span = [sealPitch - stroke - 2 * margin, (walls.at(-1) ?? sealPitch) + 2 * margin];
  const ends: Span = [length[0] - margin, length[1] + stroke + margin];
  const lengths = {
    chambers: chambersAt(body, walls, ends),
    seals: body.seals.map((id, place) => ({ id, at: walls[place] ?? 0 })),
    fixedPassages: body.passages,
    piston: {
      grooves: body.seals.flatMap((seal, place) =>
        openRuns(seal, stops)
          .map((run) => grooveOver(walls[place] ?? 0, run))
          .toSorted(([a], [b]) => a - b),
      ),
      length,
    },
    rule: { reach: schematicLengths.reach, cover: schematicLengths.cover },
  };
  return {
    bore: { body, lengths, schematic: true },
    stops: stops.map(({ stop }, place) => ({ stop, shift: place * schematicLengths.stopPitch })),
  };
};
