import type { Draft } from '@brinewright/journal';
import { aboutUnit, type Place } from '../../../offline/draft-about.ts';
import { correctionOf } from '../../../offline/undo.ts';

export type TellInput = { readonly tell: string; readonly answer: string; readonly isUnsure: boolean };

/** A tell answered; where it was answered before, that entry is corrected, so that taking it back leaves nothing. */
export const answerTell = (
  about: Place,
  { tell, answer, isUnsure }: TellInput,
  before: string | undefined,
): readonly Draft[] => {
  const payload = { tell, answer, ...(isUnsure ? { unsure: true } : {}) };
  return before === undefined
    ? [aboutUnit(about, 'tell-answered', payload)]
    : correctionOf(about.stream, before, payload);
};
