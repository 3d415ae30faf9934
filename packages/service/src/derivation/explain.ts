import type { Figure, FigureId, Figures } from './figure.ts';

/** A figure with everything it was computed from; `name` is what the equation above it calls it. */
export type Explained = {
  readonly name?: string;
  readonly figure: Figure;
  readonly inputs: readonly Explained[];
  /** Its inputs were already shown further up. */
  readonly again: boolean;
};

/**
 * The derivation tree of one figure, down to what was measured, told, defined or assumed. A figure met twice is
 * opened only the first time.
 */
export const explain = (figures: Figures, id: FigureId): Explained | undefined =>
  open(figures, id, new Set());

const open = (figures: Figures, id: FigureId, seen: Set<FigureId>, name?: string): Explained | undefined => {
  const figure = Object.hasOwn(figures, id) ? figures[id] : undefined;
  if (figure === undefined) return undefined;
  const again = seen.has(id) && Object.keys(figure.inputs).length > 0;
  seen.add(id);
  const inputs = again ? [] : inputsOf(figures, figure, seen);
  return { ...(name === undefined ? {} : { name }), figure, inputs, again };
};

const inputsOf = (figures: Figures, { inputs }: Figure, seen: Set<FigureId>): readonly Explained[] =>
  Object.entries(inputs)
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([name, id]) => open(figures, id, seen, name) ?? []);
