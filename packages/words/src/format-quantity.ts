import {
  type Entered,
  enteredAs,
  findUnit,
  inUnit,
  type Quantity,
  shownUnit,
  type UnitRow,
  type UnitSystem,
} from '@brinewright/units';
import { formatDecimals, formatEntered, formatNumber } from './format-number.ts';
import type { Language } from './message.ts';

/** Who reads: language, and the system of units. */
export type Reader = {
  readonly language: Language;
  readonly system: UnitSystem;
  /** Of the site, for prices: '$', 'MXN'. */
  readonly currency?: string | undefined;
};

export type QuantityFormat = Reader & {
  /** A unit to show it in, instead of the usual one. */
  readonly unit?: string | undefined;
  /** Significant digits, three unless said. */
  readonly digits?: number | undefined;
};

export type FormattedQuantity = { readonly figure: string; readonly unit: string; readonly text: string };

/**
 * A quantity for the reader: figure and unit apart, and joined so that no line break parts them.
 *
 * What a person entered in a unit of the reader's system is shown as entered; everything else in the
 * usual unit, to three significant digits.
 *
 * @throws RangeError where the kind does not have the unit asked for, or the value is not finite.
 * @example
 * ```ts
 * formatQuantity({ kind: 'flow', si: 3.154509e-4 }, { system: 'us', language: 'en' }).text // => '5 gpm'
 * ```
 */
export const formatQuantity = (q: Quantity, format: QuantityFormat): FormattedQuantity => {
  const entered = enteredAs(q);
  const row = rowFor(q, entered, format);
  const asEntered =
    entered?.row === row && format.digits === undefined ? formatEntered(entered.figure) : undefined;
  const figure = asEntered ?? computed(q, row, format.digits);
  return joined(figure, row, format.currency);
};

const rowFor = (q: Quantity, entered: Entered | undefined, format: QuantityFormat): UnitRow => {
  if (format.unit !== undefined) return knownUnit(q, format.unit);
  if (entered?.row.system === 'both' || entered?.row.system === format.system) return entered.row;
  return shownUnit(q.kind, format.system, q.si);
};

const knownUnit = (q: Quantity, symbol: string): UnitRow => {
  const row = findUnit(q.kind, symbol);
  if (row === undefined) throw new RangeError(`'${symbol}' is no unit of ${q.kind}`);
  return row;
};

const computed = (q: Quantity, row: UnitRow, digits: number | undefined): string => {
  const value = inUnit(q.si, row);
  if (digits !== undefined) return formatNumber(value, digits);
  if (q.kind === 'money') return formatMoney(value);
  return q.kind === 'count' ? formatNumber(value) : formatNumber(value, 3);
};

/** Cents only where there are any, and none from a thousand up. */
const formatMoney = (value: number): string => {
  const hasCents = Math.abs(value) < 1000 && Math.round(value * 100) % 100 !== 0;
  return hasCents ? formatDecimals(value, 2, 2) : formatDecimals(value, 0, 0);
};

const noBreak = '\u00a0';

const joined = (figure: string, row: UnitRow, currency: string | undefined): FormattedQuantity => {
  const isPriced = row.kind === 'money' || row.shown.startsWith('/');
  const priced = isPriced && currency !== undefined ? withCurrency(figure, currency) : figure;
  const gap = row.shown === '' || row.shown.startsWith('/') ? '' : noBreak;
  return { figure: priced, unit: row.shown, text: `${priced}${gap}${row.shown}`.replaceAll(' ', noBreak) };
};

/** A sign stands before the amount, a code behind it. */
const withCurrency = (figure: string, currency: string): string =>
  /\p{L}/u.test(currency) ? `${figure}${noBreak}${currency}` : `${currency}${figure}`;
