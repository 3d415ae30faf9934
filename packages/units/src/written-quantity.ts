import { findUnit } from './find-unit.ts';
import type { Quantity } from './quantity.ts';
import { readNumber } from './read-number.ts';
import { unitsOf } from './table.ts';
import type { UnitRow } from './unit-row.ts';

/**
 * Text that `parseQuantity` reads back to the very same value: what was entered, or the SI figure in full.
 *
 * @example
 * ```ts
 * writeQuantity({ kind: 'flow', si: 0.001 }) // => '0.001 m3/s'
 * ```
 */
export const writeQuantity = (q: Quantity): string => q.as ?? `${q.si} ${siSymbol(q)}`.trim();

const siSymbol = (q: Quantity): string =>
  unitsOf(q.kind).find((row) => row.factor === 1 && row.offset === 0)?.symbol ?? '';

export type Entered = { readonly figure: string; readonly row: UnitRow };

/** Figure and unit as a person entered them; nothing for a computed quantity or one in several terms. */
export const enteredAs = (q: Quantity): Entered | undefined => {
  const read = q.as === undefined ? undefined : readNumber(q.as);
  if (read?.state !== 'read') return undefined;
  const row = findUnit(q.kind, read.rest);
  if (row === undefined || read.value * row.factor + row.offset !== q.si) return undefined;
  return { figure: read.figure, row };
};
