import type { Entry } from '../entry/entry.ts';
import { byCodeUnit } from '../entry/order.ts';
import type { Handlers } from '../kinds/read-payload.ts';
import { effectiveFacts } from './effective.ts';
import type { FoldedStock, StockLine } from './folded.ts';
import { Registers } from './registers.ts';
import { saidOf } from './said.ts';

/**
 * What lies at a stock place (F2): of each part the last stock-take by J4, and the movements after it. Takes the
 * entries of any streams, since parts are used in the streams of sites; order is the same in all of them.
 */
export const foldStock = (place: string, entries: readonly Entry[]): FoldedStock => {
  const { facts, rivals, setAside, waiting, newer } = effectiveFacts(entries);
  const stock: Stock = {
    place,
    names: new Registers(),
    takes: new Registers(),
    counts: new Map(),
    used: new Map(),
  };
  for (const { entry, fact } of facts) fact.tell(stockHandlers, { stock, entry });
  const lines = [...stock.counts]
    .map(([part, line]) => ({ part, ...line }))
    .toSorted((a, b) => byCodeUnit(a.part, b.part));
  return {
    name: nameIn(stock),
    lines,
    belowZero: lines.flatMap(({ part, count }) => (count < 0 ? [part] : [])),
    rivals: [...rivals.filter(isOfStock), ...stock.names.rivals(), ...stock.takes.rivals()],
    setAside: setAside.filter(isOfStock),
    waiting: waiting.filter(isOfStock),
    newer: newer.filter(isOfStock),
  };
};

/** What is odd about other entries is told with their site. */
const isOfStock = ({ kind }: { readonly kind: string }): boolean => kind.startsWith('stock-');

type Stock = {
  readonly place: string;
  readonly names: Registers;
  /** Stock-takes by part, for those who counted without knowing of one another. */
  readonly takes: Registers;
  readonly counts: Map<string, Omit<StockLine, 'part'>>;
  /** What was taken for one place in one visit; said again it is the same part, not another (F2). */
  readonly used: Map<string, number>;
};

const stockHandlers: Handlers<{ readonly stock: Stock; readonly entry: Entry }> = {
  'stock-place-named': ({ stock, entry }, { name }) => {
    if (entry.stream === stock.place) stock.names.write(entry, ['name'], name);
  },
  'stock-moved': ({ stock }, { part, count, from, to }) => {
    if (to === stock.place) move(stock, part, count);
    if (from === stock.place) move(stock, part, -count);
  },
  'stock-taken': ({ stock, entry }, { lines }) => {
    if (entry.stream !== stock.place) return;
    for (const { part, count } of lines) take(stock, entry, part, count);
  },
  'part-used': ({ stock, entry }, { part, count, instance, from }) => {
    const key = [entry.stream, entry.about.visit ?? '', part, instance ?? ''].join('\u0000');
    const before = stock.used.get(key) ?? 0;
    const now = from === stock.place ? count : 0;
    stock.used.set(key, now);
    if (now !== before) move(stock, part, before - now);
  },
};

const move = ({ counts }: Stock, part: string, by: number): void => {
  const line = counts.get(part) ?? { count: 0 };
  counts.set(part, { ...line, count: line.count + by });
};

const take = ({ counts, takes }: Stock, entry: Entry, part: string, count: number): void => {
  takes.write(entry, [part], count);
  counts.set(part, { count, since: saidOf(entry) });
};

const nameIn = ({ names }: Stock): string | undefined => {
  const [name] = names.values();
  return typeof name?.value === 'string' ? name.value : undefined;
};
