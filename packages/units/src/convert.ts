import { findUnit } from './find-unit.ts';
import type { QuantityKind } from './kinds.ts';
import { type Quantity, quantity } from './quantity.ts';
import { unitsOf } from './table.ts';
import type { UnitRow } from './unit-row.ts';

/**
 * The figure of a quantity in a unit.
 *
 * @throws RangeError where the kind has no such unit (programming mistake: check text from outside with `findUnit`).
 * @example
 * ```ts
 * toUnit(fromUnit(20, 'gpg', 'hardness'), 'mg/L CaCO3') // => 342.3612
 * ```
 */
export const toUnit = (q: Quantity, symbol: string): number => inUnit(q.si, knownUnit(q.kind, symbol));

/**
 * A quantity from a figure and its unit.
 *
 * @throws RangeError where the kind has no such unit.
 * @example
 * ```ts
 * fromUnit(5, 'gpm/ft2', 'superficial-velocity').si // => 0.003395486
 * ```
 */
export const fromUnit = <K extends QuantityKind>(value: number, symbol: string, kind: K): Quantity<K> => {
  const row = knownUnit(kind, symbol);
  return quantity(kind, value * row.factor + row.offset);
};

export const inUnit = (si: number, row: UnitRow): number => (si - row.offset) / row.factor;

const knownUnit = (kind: QuantityKind, symbol: string): UnitRow => {
  const row = findUnit(kind, symbol);
  if (row === undefined) throw new RangeError(`'${symbol}' is no unit of ${kind}`);
  return row;
};

/**
 * Units in which the same figure would have been plausible, for a reading that is not: 300 entered as
 * gpg was perhaps mg/L. `plausible` is in SI. Of units of one size only the first is named.
 *
 * @example
 * ```ts
 * likelyUnits(300, 'hardness', { min: 0, max: 14 }) // => ['mg/L CaCO3']
 * ```
 */
export const likelyUnits = (
  value: number,
  kind: QuantityKind,
  plausible: { readonly min: number; readonly max: number },
): readonly string[] => {
  const rows = unitsOf(kind);
  const fits = ({ factor, offset }: UnitRow): boolean => {
    const si = value * factor + offset;
    return si >= plausible.min && si <= plausible.max;
  };
  const isFirstOfSize = (row: UnitRow): boolean =>
    rows.find(({ factor, offset }) => factor === row.factor && offset === row.offset) === row;
  return rows.filter((row) => fits(row) && isFirstOfSize(row)).map((row) => row.symbol);
};
