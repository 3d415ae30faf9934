import { findUnit, kindsMeasuredIn, unitKey } from './find-unit.ts';
import type { QuantityKind } from './kinds.ts';
import type { ProblemDetail, QuantityProblem } from './problem.ts';
import { type Quantity, quantity } from './quantity.ts';
import { type NumberRead, readNumber } from './read-number.ts';
import { unitsOf } from './table.ts';
import type { UnitRow } from './unit-row.ts';

export type Parsed<K extends QuantityKind = QuantityKind> =
  | { readonly ok: true; readonly quantity: Quantity<K> }
  | { readonly ok: false; readonly problem: QuantityProblem };

/**
 * Reads a quantity as a person writes it: '18 gpg', '1 1/2 in', '5 ft 6 in', '7.50 per 40 lb'.
 *
 * The unit is required unless the kind is a plain number. Only temperatures may be below zero, and none
 * below absolute zero. What was written stays with the quantity as `as`.
 *
 * @example
 * ```ts
 * parseQuantity('1/2 in', 'length') // => { ok: true, quantity: { kind: 'length', si: 0.0127, as: '1/2 in' } }
 * ```
 */
export const parseQuantity = <K extends QuantityKind>(text: string, kind: K): Parsed<K> => {
  const reading = sound(isPrice(kind) ? readPrice(text, kind) : readAmount(text, kind));
  return reading.ok
    ? { ok: true, quantity: quantity(kind, reading.si, text.trim()) }
    : { ok: false, problem: problemOf(reading.problem, text, kind) };
};

/** The detail of a problem with what every problem carries. */
export const problemOf = (detail: ProblemDetail, text: string, kind: QuantityKind): QuantityProblem => ({
  ...detail,
  kind,
  text: text.trim(),
  units: unitsOf(kind)
    .map((row) => row.symbol)
    .filter((symbol) => symbol !== ''),
});

type Failed = { readonly ok: false; readonly problem: ProblemDetail };
type Reading = { readonly ok: true; readonly si: number } | Failed;

const failed = (problem: ProblemDetail): Failed => ({ ok: false, problem });

const sound = (reading: Reading): Reading => {
  if (!reading.ok) return reading;
  if (!Number.isFinite(reading.si)) return failed({ what: 'not-finite' });
  if (reading.si < 0) return failed({ what: 'negative' });
  return reading.si === 0 ? { ok: true, si: 0 } : reading;
};

type Unit = { readonly ok: true; readonly row: UnitRow } | Failed;

const readUnit = (unit: string, kind: QuantityKind): Unit => {
  const row = findUnit(kind, unit);
  if (row !== undefined) return { ok: true, row };
  if (unitKey(unit) === '') return failed({ what: 'missing-unit' });
  const measures = kindsMeasuredIn(unit);
  return failed(
    measures.length > 0 ? { what: 'wrong-kind', unit, measures } : { what: 'unknown-unit', unit },
  );
};

const numberProblem = (read: Exclude<NumberRead, { state: 'read' }>, before = '', after = ''): Failed =>
  failed(
    read.state === 'none'
      ? { what: 'no-number' }
      : { what: 'decimal-comma', mended: `${before} ${read.mended} ${after}`.trim() },
  );

/** Kinds written in steps of ever smaller units: '5 ft 6 in', '1 h 30 min', '3 lb 4 oz'. */
const isCompound = (kind: QuantityKind): boolean => kind === 'length' || kind === 'time' || kind === 'mass';

const readAmount = (text: string, kind: QuantityKind): Reading => {
  const bare = kind === 'money' ? withoutCurrency(text) : text;
  return isCompound(kind) ? readTerms(bare, kind, '', Number.POSITIVE_INFINITY) : readTerm(bare, kind);
};

const readTerm = (text: string, kind: QuantityKind): Reading => {
  const read = readNumber(text);
  if (read.state !== 'read') return numberProblem(read);
  const unit = readUnit(read.rest, kind);
  return unit.ok ? { ok: true, si: read.value * unit.row.factor + unit.row.offset } : unit;
};

const readTerms = (text: string, kind: QuantityKind, before: string, largest: number): Reading => {
  const read = readNumber(text);
  if (read.state !== 'read') return numberProblem(read, before);
  const until = read.rest.search(/\d/);
  const name = (until < 0 ? read.rest : read.rest.slice(0, until)).replace(/[\s,-]+$/, '');
  const unit = readUnit(name, kind);
  if (!unit.ok) return unit;
  if (unit.row.factor >= largest) return failed({ what: 'unknown-unit', unit: name });
  const si = read.value * unit.row.factor;
  if (until < 0) return { ok: true, si };
  const smaller = readTerms(
    read.rest.slice(until),
    kind,
    `${before} ${read.figure} ${name}`,
    unit.row.factor,
  );
  return smaller.ok ? { ok: true, si: si + smaller.si } : smaller;
};

const isPrice = (kind: QuantityKind): boolean =>
  kind === 'price-mass' || kind === 'price-volume' || kind === 'price-time';

/** The site names its currency; the sign is only a habit of writing. */
const withoutCurrency = (text: string): string => text.trim().replace(/^\$/, '');

/** '7.50 per 40 lb', '7.50/40 lb', '95 per h'. */
const readPrice = (text: string, kind: QuantityKind): Reading => {
  const parts = /^(.*?)(?:\bper\b|\bpor\b|\/)(.*)$/is.exec(withoutCurrency(text));
  const [, before, after] = parts ?? ['', withoutCurrency(text), ''];
  const money = readNumber(before ?? '');
  if (money.state !== 'read') return numberProblem(money, '', parts === null ? '' : `per ${after?.trim()}`);
  if (money.rest !== '') return failed({ what: 'unknown-unit', unit: money.rest });
  if (parts === null) return failed({ what: 'missing-unit' });
  return readPricePer(money.value, after?.trim() ?? '', money.figure, kind);
};

const readPricePer = (money: number, bought: string, figure: string, kind: QuantityKind): Reading => {
  const amount = /^[\d.,]/.test(bought)
    ? readNumber(bought)
    : ({ state: 'read', value: 1, rest: bought } as const);
  if (amount.state !== 'read') return numberProblem(amount, `${figure} per`);
  if (unitKey(amount.rest) === '') return failed({ what: 'missing-unit' });
  const unit = readUnit(`per ${amount.rest}`, kind);
  return unit.ok ? { ok: true, si: (money / amount.value) * unit.row.factor } : unit;
};
