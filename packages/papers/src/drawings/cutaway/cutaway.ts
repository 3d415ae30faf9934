import { type Drawing, type DrawingOptions, drawn } from '../drawing.ts';
import type { BoreDrawing } from './bore-drawing.ts';
import { casting, type Section } from './casting.ts';
import { flows } from './flows.ts';
import { framed } from './frame.ts';
import { inside } from './inside.ts';
import { balloons, labelRoom, portLabels, portWords } from './labels.ts';
import { legend } from './legend.ts';
import { cutawaySays } from './sayings.ts';
import { type BrineStep, leakPast, passagesIn, standings } from './waters.ts';

export type CutawayOptions = DrawingOptions & {
  readonly torn?: number;
  /** At the brine stop: drawing brine, or rinsing slowly. */
  readonly step?: BrineStep;
};

const patterns = ['raw', 'treated', 'brine', 'drain', 'casting', 'fine-metal', 'piston'] as const;

/** The valve cut along its bore at one stop: which water stands where, and where it passes. */
export const cutaway = (bore: BoreDrawing, options: CutawayOptions): Drawing => {
  const { width, torn, step = 'draw', id } = options;
  const leak = torn === undefined ? undefined : leakPast(bore, torn, step);
  const standing = standings(bore, step, leak);
  const labels = portLabels(bore, options, standing, leak);
  const above = framed(bore, width, 0);
  const top = above.lying ? labelRoom(labels, -1, above, width) + 6 : 6;
  const frame = framed(bore, width, top);
  const section: Section = { bore, frame, id, standing };
  const bottom = frame.lying
    ? top + 2 * frame.radii.neck + labelRoom(labels, 1, frame, width)
    : top + frame.capEnd;
  const keys = legend(options, id, standing, leak?.seal, width);
  return drawn(
    options,
    { height: bottom + 18 + keys.height, twin: cutawaySays(bore, step, torn), patterns, moving: true },
    casting(section),
    inside(section, torn),
    flows(section, passagesIn(bore, step), leak, step),
    balloons(section, torn),
    portWords(section, labels, width),
    keys.draw(bottom + 20),
  );
};
