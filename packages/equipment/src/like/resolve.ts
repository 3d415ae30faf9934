import { type Issue, message, type Path, type Place } from '@brinewright/words';
import type { Finding } from '../issue/codes.ts';
import { nearest } from '../issue/near.ts';
import { createReport, type Locate, type PlaceOf, type Report, unknownWord } from '../issue/report.ts';
import type { ParsedFamily } from '../load/parse-definition.ts';
import { locateWith } from '../load/read-yaml.ts';
import type { WrittenFamily } from '../schema/documents.ts';
import type { WrittenController } from '../schema/fitting.ts';
import { merge, type Removed, removedFrom, withoutOff } from './merge.ts';
import { withoutStrays } from './strays.ts';

/** A family with all that its stock gives it, and where each line came from. */
export type Resolved = {
  readonly id: string;
  readonly file: string;
  readonly written: WrittenFamily;
  /** The family's own file alone. */
  readonly own: WrittenFamily;
  readonly placeOf: PlaceOf;
  readonly locate: Locate;
  readonly removed: Removed;
  readonly issues: readonly Issue[];
};

export type Stocks = {
  /** By `stock/<id>`. */
  readonly whole: ReadonlyMap<string, ParsedFamily>;
  /** Stocks that have errors of their own: nothing is said about what leans on them. */
  readonly broken: ReadonlySet<string>;
};

/** Puts a family over the stock it is like. Nothing comes back where that stock is unknown or broken. */
export const resolveLike = (
  family: ParsedFamily,
  stocks: Stocks,
): Resolved | { readonly issues: readonly Issue[] } => {
  const report = createReport(locateWith(family.placeOf, family.file));
  const stock = stockOf(family, stocks, report);
  if (stock === 'none') return { issues: report.issues };
  const below = stock?.written ?? {};
  const merged = merge(below, withoutStrays(family.written, below, report));
  const controllers = withControllers(merged, stocks, report);
  const placeOf: PlaceOf = (path, part) =>
    isOwn(path)
      ? family.placeOf(path, part)
      : (family.placeOf(path, part) ??
        stock?.placeOf(path, part) ??
        placeInBase(path, controllers.bases, part));
  return {
    id: family.id,
    file: family.file,
    written: withoutOff({ ...merged, controllers: controllers.merged }),
    own: family.written,
    placeOf,
    locate: locateWith(placeOf, family.file),
    removed: removedFrom(merged),
    issues: report.issues,
  };
};

/** What a stock does not give: who the family is and who says so. */
const isOwn = ([key]: Path): boolean => key === 'title' || key === 'source';

const stockOf = (family: ParsedFamily, stocks: Stocks, report: Report): ParsedFamily | undefined | 'none' => {
  const { like } = family.written;
  if (like === undefined) return undefined;
  const stock = stocks.whole.get(like);
  if (like === selfName(family)) report.error(['like'], { code: 'like.loop', values: { like } });
  else if (stock?.written.like !== undefined) {
    report.error(['like'], { code: 'like.two-levels', values: { like, next: stock.written.like } });
  } else if (stock !== undefined) return stock;
  else if (!stocks.broken.has(like)) {
    report.error(['like'], unknownStock(like, [...stocks.whole.keys()]));
  }
  return 'none';
};

/** The part before the stroke is easily left out: `metered` for `stock/metered`. */
const unknownStock = (like: string, known: readonly string[]): Finding => {
  const near = nearest(bareName(like), known.map(bareName));
  const meant = known.find((name) => near !== undefined && bareName(name) === near);
  const finding = unknownWord('reference.unknown', like, known);
  return meant === undefined ? finding : { ...finding, mend: message('issue.did-you-mean', { near: meant }) };
};

const bareName = (name: string): string => name.slice(name.indexOf('/') + 1);

const selfName = (family: ParsedFamily): string =>
  family.state === 'stock' ? `stock/${family.id}` : family.id;

type Base = { readonly entry: WrittenController; readonly id: string; readonly placeOf: PlaceOf };
type Bases = ReadonlyMap<string, Base>;

/** A controller may be like one of any stock: `stock/clock`. */
const withControllers = (merged: WrittenFamily, stocks: Stocks, report: Report) => {
  const bases = new Map<string, Base>();
  const entries = Object.entries(merged.controllers ?? {}).map(([id, entry]) => {
    const base = entry.like === undefined ? undefined : baseController(entry.like, stocks);
    if (base !== undefined) bases.set(id, base);
    if (entry.like !== undefined && base === undefined && stocks.broken.size === 0) {
      report.error(['controllers', id, 'like'], unknownStock(entry.like, controllerNames(stocks)));
    }
    return [id, { ...base?.entry, ...entry }] as const;
  });
  return { merged: Object.fromEntries(entries), bases };
};

const placeInBase = (path: Path, bases: Bases, part?: 'key' | 'value'): Place | undefined => {
  const [section, id, ...rest] = path;
  const base = section === 'controllers' ? bases.get(String(id)) : undefined;
  return base?.placeOf(['controllers', base.id, ...rest], part);
};

const controllerNames = (stocks: Stocks): readonly string[] =>
  [...stocks.whole.values()].flatMap((stock) =>
    Object.keys(stock.written.controllers ?? {}).map((id) => `stock/${id}`),
  );

const baseController = (like: string, stocks: Stocks): Base | undefined => {
  if (!like.startsWith('stock/')) return undefined;
  const id = like.slice('stock/'.length);
  for (const { written, placeOf } of stocks.whole.values()) {
    const entry = written.controllers?.[id];
    if (entry !== undefined) return { entry, id, placeOf };
  }
  return undefined;
};
