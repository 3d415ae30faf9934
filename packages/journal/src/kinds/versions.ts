import type { Json } from '../entry/entry.ts';
import { type KindName, kindNames } from './payloads.ts';

/** From one version of a payload to the next; pure, at fold, never at rest (F4). */
export type Upcast = (payload: Json) => Json;

/** Steps 1→2, 2→3 … of each kind that has more than one version; the newest is one more than their number. */
export type Upcasts = { readonly [K in KindName]?: readonly Upcast[] };

/** No kind has a second version yet. One that gets it adds its step here and a sample to `samples/`. */
export const upcasts: Upcasts = {};

export const newestVersion = (kind: KindName, steps: Upcasts = upcasts): number =>
  (steps[kind]?.length ?? 0) + 1;

/** 'tell-answered/1' for the newest version of the kind. */
export const kindNow = (kind: KindName): string => `${kind}/${newestVersion(kind)}`;

/** Every kind and version ever written; each has a sample file that is kept and tested. */
export const everWritten = (): readonly string[] =>
  kindNames.flatMap((kind) =>
    Array.from({ length: newestVersion(kind) }, (_, before) => `${kind}/${before + 1}`),
  );

/** The payload as the newest version writes it. */
export const upcast = (kind: KindName, version: number, payload: Json, steps: Upcasts = upcasts): Json =>
  (steps[kind] ?? []).slice(version - 1).reduce((held, step) => step(held), payload);
