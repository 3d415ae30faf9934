import type { Draft } from '@brinewright/journal';
import { aboutUnit, aboutVisit, type Place } from '../../../offline/draft-about.ts';

export type Photo = { readonly file: string; readonly bytes?: number; readonly type?: string };

export type Found =
  | { readonly kind: 'note'; readonly text: string }
  | { readonly kind: 'tell'; readonly tell: string; readonly answer: string }
  | { readonly kind: 'look'; readonly test: string; readonly state: string };

/** What turned up, with a photo where one was taken. A note is added to those there are. */
export const foundSomething = (
  place: Place,
  found: Found,
  more: { readonly note: string; readonly at: string; readonly photo?: Photo; readonly of?: string },
): readonly Draft[] => [
  ...entryOf(place, found, more),
  ...(more.photo === undefined
    ? []
    : [
        aboutVisit(place, 'photo-taken', {
          ...more.photo,
          ...(more.of === undefined ? {} : { of: more.of }),
        }),
      ]),
];

const entryOf = (
  place: Place,
  found: Found,
  { note, at }: { readonly note: string; readonly at: string },
): readonly Draft[] => {
  switch (found.kind) {
    case 'note': {
      const text = found.text.trim();
      return text === ''
        ? []
        : [aboutVisit(place, 'visit-noted', { note: [note, text].filter(Boolean).join('\n') })];
    }
    case 'tell':
      return [aboutUnit(place, 'tell-answered', { tell: found.tell, answer: found.answer })];
    case 'look':
      return [aboutUnit(place, 'reading-taken', { test: found.test, state: found.state, at })];
  }
};

/** How it stands now, whatever was written before. */
export const apartNoted = (place: Place, what: string, value: string): readonly Draft[] => [
  aboutVisit(place, 'apart-noted', { [what]: value }),
];
