import type { Draft } from '@brinewright/journal';
import { aboutVisit, type Place } from '../../../offline/draft-about.ts';

/** A fault decided on site; a later choice replaces an earlier one. */
export const chooseFault = (about: Place, fault: string, reason: string): readonly Draft[] => [
  aboutVisit(about, 'decision-made', {
    what: 'fault',
    value: fault,
    ...(reason.trim() === '' ? {} : { reason: reason.trim() }),
  }),
];
