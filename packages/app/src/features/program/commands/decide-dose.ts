import type { Draft } from '@brinewright/journal';
import { aboutVisit, type Place } from '../../../offline/draft-about.ts';

/** The dose that was agreed on; a later one takes its place. */
export const decideDose = (about: Place, value: string): readonly Draft[] => [
  aboutVisit(about, 'decision-made', { what: 'dose', value }),
];
