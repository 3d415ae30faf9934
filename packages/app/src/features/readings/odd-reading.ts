import { likelyUnits } from '@brinewright/units';
import type { QuantityAsk } from '../../engine/views/reading-ask.ts';
import { type QuantityEntry, readEntry } from '../../ui/index.ts';

/** A figure outside of what is usual, and the unit in which it would have been usual. */
export type OddReading = { readonly usual: string; readonly unit?: string };

/** Asked about, never refused. */
export const oddReading = (
  { kind, plausible, units }: QuantityAsk,
  entry: QuantityEntry,
): OddReading | undefined => {
  const read = readEntry(kind, entry);
  if (plausible === undefined || read?.ok !== true) return undefined;
  const { si } = read.quantity;
  if (si >= plausible.min && si <= plausible.max) return undefined;
  const figure = Number.parseFloat(entry.figure.replace(',', '.'));
  const likely = likelyUnits(figure, kind, plausible).filter((unit) => unit !== entry.unit);
  const unit = likely.find((one) => units.includes(one)) ?? likely[0];
  return { usual: plausible.text, ...(unit === undefined ? {} : { unit }) };
};
