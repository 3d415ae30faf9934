import { boreOf } from '@brinewright/equipment';
import type { BoreDrawing } from '@brinewright/papers';
import {
  boreDrawing,
  cutaway,
  type DrawingOptions,
  type ExplodedStack,
  type Sheet,
  stackLayers,
} from '@brinewright/papers';
import type { StackCount } from '@brinewright/service';
import { type Pictures, pictures } from '../figure-view.ts';
import type { StackView } from './work-types.ts';

/** Drawn twice, for a phone and for the middle of a wide sheet: words are never scaled. */
const widths = { narrow: 358, wide: 520 } as const;

/** The bore of the likeliest build. */
const boreIn = ({ family, assessment }: Sheet): BoreDrawing | undefined => {
  const { recognition } = assessment.stages;
  const variant = recognition.state === 'done' ? recognition.value.top[0]?.variant : undefined;
  const bore = family === undefined ? undefined : boreOf(family, variant ?? {});
  return bore === undefined ? undefined : boreDrawing(bore, 'service');
};

const optionsFor = ({ reader }: Sheet, width: number, id: string): DrawingOptions => ({
  ...reader,
  width,
  id,
});

/** The stack pulled apart, to be moved by what is counted. */
export const stackView = (
  sheet: Sheet,
  count: StackCount | undefined,
  way: 'out' | 'in',
): StackView | undefined => {
  const pieces = sheet.family?.stack ?? [];
  if (count === undefined || pieces.length === 0) return undefined;
  const bore = boreIn(sheet);
  const stack: ExplodedStack = {
    pieces,
    sealsAt: bore?.seals.map(({ at }) => at) ?? [],
    schematic: bore?.schematic ?? true,
    way,
    moved: 0,
  };
  return {
    way,
    order: count.pieces.map(({ is }) => is),
    narrow: stackLayers(stack, optionsFor(sheet, widths.narrow, `stack-${way}-n`)),
    wide: stackLayers(stack, optionsFor(sheet, widths.wide, `stack-${way}-w`)),
  };
};

/** The bore with its piston at home, for the step that brings it there. */
export const homePicture = (sheet: Sheet): Pictures | undefined => {
  const bore = boreIn(sheet);
  return bore === undefined ? undefined : pictures(sheet, 'home', (options) => cutaway(bore, options));
};
