import type { FittedBore, Stop } from '@brinewright/equipment';
import type { BoreDrawing } from './bore-drawing.ts';

/** The bore of a definition at one stop, ready to be drawn. */
export const boreDrawing = (bore: FittedBore, stop: Stop): BoreDrawing => {
  const { lengths } = bore.lengths;
  return {
    chambers: lengths.chambers,
    seals: lengths.seals.map(({ id, at }) => ({ number: id, at })),
    piston: { grooves: lengths.piston.grooves, ends: lengths.piston.length },
    stop,
    shift: bore.shifts.find((one) => one.stop === stop)?.shift ?? 0,
    joined: bore.joins(stop),
    openSeals: bore.open(stop),
    schematic: bore.lengths.schematic,
  };
};
