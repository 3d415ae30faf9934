import type { FigureId } from '@brinewright/service';
import type { Quantity } from '@brinewright/units';
import type { Sheet } from './sheet.ts';

/** The quantity of a figure, where the assessment has it. */
export const quantityAt = ({ assessment }: Sheet, id: FigureId | undefined): Quantity | undefined =>
  id !== undefined && Object.hasOwn(assessment.figures, id) ? assessment.figures[id]?.quantity : undefined;

export const isFlow = (value: Quantity | undefined): value is Quantity<'flow'> => value?.kind === 'flow';
export const isTime = (value: Quantity | undefined): value is Quantity<'time'> => value?.kind === 'time';
export const isLength = (value: Quantity | undefined): value is Quantity<'length'> =>
  value?.kind === 'length';
