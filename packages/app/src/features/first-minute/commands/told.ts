import type { Draft } from '@brinewright/journal';
import { aboutVisit, type Place } from '../../../offline/draft-about.ts';

export const complaintTold = (
  about: Place,
  { words, kinds }: { readonly words: string; readonly kinds: readonly string[] },
): readonly Draft[] => [
  aboutVisit(about, 'complaint-told', {
    words: words.trim(),
    ...(kinds.length === 0 ? {} : { kinds: [...kinds] }),
  }),
];

export type HistoryDraft = {
  readonly changed: string;
  readonly changes: readonly string[];
  readonly by: string;
  readonly what: string;
};

export const isNothingTold = ({ changed, changes, by, what }: HistoryDraft): boolean =>
  changes.length === 0 && [changed, by, what].every((text) => text.trim() === '');

export const historyTold = (about: Place, told: HistoryDraft): readonly Draft[] => {
  const [changed, by, what] = [told.changed.trim(), told.by.trim(), told.what.trim()];
  const lastWork = { ...(by === '' ? {} : { by }), ...(what === '' ? {} : { what }) };
  return [
    aboutVisit(about, 'history-told', {
      ...(changed === '' ? {} : { changed }),
      changes: [...told.changes],
      ...(by === '' && what === '' ? {} : { lastWork }),
    }),
  ];
};
