import type { QuantityKind } from './kinds.ts';
import { unitsByKind } from './table.ts';
import type { UnitRow } from './unit-row.ts';

/** What a spelling is looked up by: no spaces, no superscripts, 'per' as a stroke; capitals stay. */
export const unitKey = (text: string): string =>
  text
    .replace(/[°º˚]/g, 'deg')
    .replace(/[″”“]/g, '"')
    .replace(/[′’‘]/g, "'")
    .normalize('NFKC')
    .replace(/\b(?:per|por)\b/gi, '/')
    .replace(/\.(?=\s|\/|$)/g, '')
    .replace(/[\s^]/g, '')
    .replace(/[·⋅*]/g, '.')
    .replace(/μ/g, 'u');

/** The row of a unit written in any of its spellings; nothing where the kind has no such unit. */
export const findUnit = (kind: QuantityKind, text: string): UnitRow | undefined => {
  const key = unitKey(text);
  const index = spellingsOf(kind);
  return index.exact.get(key) ?? looseMatch(index, key);
};

/** Kinds that have such a unit: for telling someone what the unit they wrote does measure. */
export const kindsMeasuredIn = (text: string): readonly QuantityKind[] =>
  [...indexes.keys()].filter((kind) => findUnit(kind, text) !== undefined);

type Loose = { readonly row: UnitRow; readonly key: string };
type Index = { readonly exact: ReadonlyMap<string, UnitRow>; readonly loose: ReadonlyMap<string, Loose> };

const spellings = (row: UnitRow): readonly string[] => [row.symbol, row.shown, ...row.aliases].map(unitKey);

const indexOf = (rows: readonly UnitRow[]): Index => {
  const exact = new Map<string, UnitRow>();
  const loose = new Map<string, Loose>();
  for (const row of rows) {
    for (const key of spellings(row)) {
      if (!exact.has(key)) exact.set(key, row);
      if (!loose.has(key.toLowerCase())) loose.set(key.toLowerCase(), { row, key });
    }
  }
  return { exact, loose };
};

const indexes: ReadonlyMap<QuantityKind, Index> = new Map(
  [...unitsByKind].map(([kind, rows]) => [kind, indexOf(rows)]),
);

const empty: Index = { exact: new Map(), loose: new Map() };
const spellingsOf = (kind: QuantityKind): Index => indexes.get(kind) ?? empty;

/** Capitals are forgiven, except that a leading m never passes for a leading M: milli is not mega. */
const looseMatch = (index: Index, key: string): UnitRow | undefined => {
  const found = index.loose.get(key.toLowerCase());
  if (found === undefined) return undefined;
  const shouted = key === key.toUpperCase();
  return shouted || startsWithMega(found.key) === startsWithMega(key) ? found.row : undefined;
};

const startsWithMega = (key: string): boolean => key.startsWith('M');
