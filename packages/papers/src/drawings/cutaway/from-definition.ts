import type { BoreHarm, FittedBore, Stop } from '@brinewright/equipment';
import type { BoreDrawing } from './bore-drawing.ts';

/** The bore of a definition at one stop, ready to be drawn; with a wrong piston or sleeve as it then stands. */
export const boreDrawing = (
  bore: FittedBore,
  stop: Stop,
  harm: Pick<BoreHarm, 'piston' | 'sleeve'> = {},
): BoreDrawing => {
  const { lengths } = bore.lengths;
  const { open, joined, shift, piston } = bore.at(stop, harm);
  return {
    chambers: lengths.chambers,
    seals: lengths.seals.map(({ id, at }) => ({ number: id, at })),
    piston: { grooves: piston.grooves, ends: piston.length },
    stop,
    shift,
    joined,
    openSeals: open,
    schematic: bore.lengths.schematic,
  };
};
