import type { Draft, Json } from '@brinewright/journal';

export type NewSite = { readonly stream: string; readonly name: string; readonly isNew: boolean };

export type NewUnit = {
  readonly id: string;
  /** What is said of a unit not known yet; none for one that is. */
  readonly described?: {
    readonly family: string;
    readonly kind: 'softener' | 'filter';
    readonly name: string;
  };
};

export type VisitBegun = {
  readonly visit: string;
  readonly date: string;
  readonly by: string;
  /** Digest of the definitions it is worked with (F5). */
  readonly definitions: string;
};

/** A visit from nothing: the site and the unit where they are new, then the visit itself. */
export const beginVisit = (site: NewSite, unit: NewUnit, begun: VisitBegun): readonly Draft[] => {
  const { stream } = site;
  const { visit, date, by, definitions } = begun;
  const started: Json = { subject: unit.id, definitions: { digest: definitions }, date, by: { name: by } };
  return [
    ...(site.isNew
      ? [{ stream, kind: 'site-opened/1', payload: { name: site.name.trim() }, about: {} }]
      : []),
    ...(unit.described === undefined ? [] : [addedUnit(stream, unit.id, unit.described)]),
    { stream, kind: 'visit-started/1', payload: started, about: { visit } },
  ];
};

const addedUnit = (
  stream: string,
  id: string,
  { family, kind, name }: NonNullable<NewUnit['described']>,
): Draft => ({
  stream,
  kind: 'conditioner-added/1',
  payload: { family, kind, ...(name.trim() === '' ? {} : { name: name.trim() }) },
  about: { conditioner: id },
});
