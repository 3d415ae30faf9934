import type { Entry } from '../entry/entry.ts';

export type StreamKind = 'site' | 'stock-place' | 'workshop';

/** What a stream holds, by the entries in it; the workshop's own stream bears the company's id. */
export const kindOfStream = (stream: string, company: string, entries: readonly Entry[]): StreamKind => {
  if (stream === company) return 'workshop';
  return entries.some(({ kind }) => kind.startsWith('stock-place-') || isStockMovement(kind))
    ? 'stock-place'
    : 'site';
};

const isStockMovement = (kind: string): boolean =>
  kind.startsWith('stock-moved/') || kind.startsWith('stock-taken/');
