import type { FigureId, Figures } from './figure.ts';
import { leansOn } from './ledger.ts';

/** An assumption, and the figures whose doubt comes mostly from it. */
export type Leaning = { readonly assumption: FigureId; readonly figures: readonly FigureId[] };

/**
 * What to measure first: each assumption that more than half of some figure's spread comes from, with those figures,
 * in the order in which the figures are given.
 */
export const measureFirst = (figures: Figures, ids: readonly FigureId[]): readonly Leaning[] => {
  const byAssumption = new Map<FigureId, FigureId[]>();
  for (const id of new Set(ids)) {
    const figure = Object.hasOwn(figures, id) ? figures[id] : undefined;
    const assumption = figure === undefined ? undefined : leansOn(figure, figures);
    if (assumption === undefined) continue;
    byAssumption.set(assumption, [...(byAssumption.get(assumption) ?? []), id]);
  }
  return [...byAssumption].map(([assumption, leaning]) => ({ assumption, figures: leaning }));
};
