import type { QuantityKind } from './kinds.ts';
import type { UnitSystem } from './quantity.ts';

/** Where a factor comes from; the package's README says more on each. */
export type UnitSource = 'si' | 'nist-sp-811' | 'atomic-weights' | 'iapws-95' | 'convention';

/** A unit of one kind. SI value = value × factor + offset. */
export type UnitRow = {
  readonly kind: QuantityKind;
  /** As written in a file, in ASCII; empty for a plain number. */
  readonly symbol: string;
  /** As printed. */
  readonly shown: string;
  /** Other spellings; spaces, capitals, superscripts and 'per' are dealt with by the reader. */
  readonly aliases: readonly string[];
  readonly factor: number;
  readonly offset: number;
  readonly system: UnitSystem | 'both';
  /** UCUM code, where one certainly has the same size. */
  readonly ucum?: string;
  readonly source: UnitSource;
  /** Follows from definitions alone, so no later measurement moves it. */
  readonly exact: boolean;
};

/** A row before it is put under a kind. */
export type UnitEntry = Omit<UnitRow, 'kind'>;

type More = Partial<Pick<UnitRow, 'shown' | 'offset' | 'source' | 'exact'>>;

const entryOf =
  (system: UnitRow['system'], source: UnitSource) =>
  (
    symbol: string,
    factor: number,
    ucum = '',
    aliases: readonly string[] = [],
    more: More = {},
  ): UnitEntry => ({
    symbol,
    shown: printed(symbol),
    aliases,
    factor,
    offset: 0,
    system,
    ...(ucum === '' ? {} : { ucum }),
    source,
    exact: true,
    ...more,
  });

export const us = entryOf('us', 'nist-sp-811');
export const metric = entryOf('metric', 'si');
export const both = entryOf('both', 'si');

export const rowsOf = (kind: QuantityKind, entries: readonly UnitEntry[]): readonly UnitRow[] =>
  entries.map((entry) => ({ ...entry, kind }));

/** The same rows under another kind: salt dose and density are both mass per volume. */
export const alsoAs = (kind: QuantityKind, rows: readonly UnitRow[]): readonly UnitRow[] =>
  rows.map((row) => ({ ...row, kind }));

/** Every spelling above a stroke with every one below it. */
export const quotients = (above: readonly string[], below: readonly string[]): readonly string[] =>
  above.flatMap((top) => below.map((bottom) => `${top}/${bottom}`));

const superscripts: Readonly<Record<string, string>> = { 2: '²', 3: '³' };
const subscripts: Readonly<Record<string, string>> = { 2: '₂', 3: '₃' };

/** 'ft3' → 'ft³', 'mg/L CaCO3' → 'mg/L CaCO₃', 'degF' → '°F', 'uS/cm' → 'µS/cm', 'Pa.s' → 'Pa·s'. */
const printed = (symbol: string): string =>
  symbol
    .replace(/(?<=[a-z])[23]/g, (digit) => superscripts[digit] ?? digit)
    .replace(/(?<=[A-Z])[23]/g, (digit) => subscripts[digit] ?? digit)
    .replace(/^deg/, '°')
    .replace(/^u(?=[A-Zegm])/, 'µ')
    .replace(/\./g, '·');
