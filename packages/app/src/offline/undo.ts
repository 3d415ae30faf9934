import type { Draft, Json } from '@brinewright/journal';

/** Takes entries back by later ones; nothing is ever changed (F3). */
export const undoOf = (stream: string, ids: readonly string[], why: string): readonly Draft[] =>
  ids.map((target) => ({ stream, kind: 'corrected/1', payload: { target, withdrawn: why }, about: {} }));

/** Puts another content in the place of an entry, where it was first said. */
export const correctionOf = (stream: string, target: string, payload: Json): readonly Draft[] => [
  { stream, kind: 'corrected/1', payload: { target, payload }, about: {} },
];
