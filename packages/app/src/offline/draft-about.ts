import type { Draft, Json, KindName } from '@brinewright/journal';

/** Where an entry belongs: what a stage's screen is given. */
export type Place = { readonly stream: string; readonly visit: string; readonly conditioner: string };

/** An entry about the visit, in the first version of its kind. */
export const aboutVisit = ({ stream, visit }: Place, kind: KindName, payload: Json): Draft => ({
  stream,
  kind: `${kind}/1`,
  payload,
  about: { visit },
});

/** An entry about the unit that the visit is made to: a tell answered, a reading taken. */
export const aboutUnit = ({ stream, visit, conditioner }: Place, kind: KindName, payload: Json): Draft => ({
  stream,
  kind: `${kind}/1`,
  payload,
  about: { visit, conditioner },
});
