import { type Draft, draftsOfVisit, type Json } from '@brinewright/journal';
import type { Made } from '../../made.ts';

/** What is known as entries would write it, so that a part can be said anew with the rest as it was. */
export type Written = {
  readonly media: Json;
  readonly controller: Json;
  readonly water: Json;
  readonly prices: Json;
};

export const writtenOf = ({
  visit,
  stream,
  subject,
}: Pick<Made, 'visit' | 'stream' | 'subject'>): Written => {
  const drafts = draftsOfVisit(visit, { stream });
  const unit = drafts.find(
    ({ kind, about }) => isKind(kind, 'conditioner-added') && about.conditioner === subject.id,
  );
  return {
    media: fieldOf(unit?.payload ?? null, 'media') ?? [{ medium: 'gel-cation' }],
    controller: fieldOf(unit?.payload ?? null, 'controller') ?? {},
    water: newestRaw(drafts) ?? { of: 'raw' },
    prices: fieldOf(drafts.find(({ kind }) => isKind(kind, 'site-opened'))?.payload ?? null, 'prices') ?? {
      currency: 'USD',
    },
  };
};

const isKind = (kind: string, name: string): boolean => kind.startsWith(`${name}/`);

const fieldOf = (value: Json, name: string): Json | undefined =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? value[name] : undefined;

/** The same one that the engine takes: by day, the last of those of one day. */
const newestRaw = (drafts: readonly Draft[]): Json | undefined =>
  drafts
    .filter(({ kind, payload }) => isKind(kind, 'water-analysed') && fieldOf(payload, 'of') === 'raw')
    .map(({ payload }) => payload)
    .reduce<Json | undefined>(
      (newest, one) => (newest !== undefined && dayOf(one) < dayOf(newest) ? newest : one),
      undefined,
    );

const dayOf = (analysis: Json): string => {
  const date = fieldOf(analysis, 'date');
  return typeof date === 'string' ? date : '';
};
