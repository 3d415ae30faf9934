import type { Draft } from '@brinewright/journal';
import { aboutVisit, type Place } from '../../../offline/draft-about.ts';
import type { KeptPhoto } from '../../../offline/keep-photo.ts';

/** The photo is on the device already; this says what it shows. */
export const photoTaken = (
  about: Place,
  { file, bytes, type }: KeptPhoto,
  of: { readonly en: string; readonly es: string },
): readonly Draft[] => [
  aboutVisit(about, 'photo-taken', { file, of: { en: of.en, es: of.es }, bytes, type }),
];
