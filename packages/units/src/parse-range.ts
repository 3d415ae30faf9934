import type { QuantityKind } from './kinds.ts';
import { parseQuantity, problemOf } from './parse-quantity.ts';
import type { ProblemDetail, QuantityProblem } from './problem.ts';
import type { Quantity } from './quantity.ts';
import { readNumber } from './read-number.ts';
import { unitsOf } from './table.ts';

export type QuantityRange<K extends QuantityKind = QuantityKind> = {
  readonly min: Quantity<K>;
  readonly max: Quantity<K>;
  /** Step between the values that can be set. */
  readonly by?: Quantity<K>;
};

export type ParsedRange<K extends QuantityKind = QuantityKind> =
  | { readonly ok: true; readonly range: QuantityRange<K> }
  | { readonly ok: false; readonly problem: QuantityProblem };

/**
 * Reads '20 psi to 125 psi', '6 to 9 in', '1 min to 99 min by 1 min'. A first figure without a unit
 * takes the unit of the second.
 *
 * @example
 * ```ts
 * parseRange('2 to 8 min', 'time') // => { ok: true, range: { min: { kind: 'time', si: 120, as: '2 min' }, max: { kind: 'time', si: 480, as: '8 min' } } }
 * ```
 */
export const parseRange = <K extends QuantityKind>(text: string, kind: K): ParsedRange<K> => {
  const fail = (detail: ProblemDetail): ParsedRange<K> => ({
    ok: false,
    problem: problemOf(detail, text, kind),
  });
  const parts = partsOf(text);
  if (parts === undefined) return fail({ what: 'not-a-range', example: example(kind) });
  const max = parseQuantity(parts.max, kind);
  const min = parseQuantity(withUnitOf(parts.min, parts.max), kind);
  const by = parts.by === undefined ? undefined : parseQuantity(withUnitOf(parts.by, parts.max), kind);
  if (!min.ok) return min;
  if (!max.ok) return max;
  if (by?.ok === false) return by;
  if (min.quantity.si > max.quantity.si) {
    return fail({ what: 'range-upside-down', mended: `${parts.max} to ${min.quantity.as}` });
  }
  if (by === undefined) return { ok: true, range: { min: min.quantity, max: max.quantity } };
  if (by.quantity.si === 0) return fail({ what: 'zero-step' });
  return { ok: true, range: { min: min.quantity, max: max.quantity, by: by.quantity } };
};

type Parts = { readonly min: string; readonly max: string; readonly by: string | undefined };

const partsOf = (text: string): Parts | undefined => {
  const plain = text.replace(/\s+/g, ' ').trim();
  const [ends = '', by, ...more] = plain.split(/ by /i);
  const [min, max, ...others] = ends.split(/ to /i);
  if (min === undefined || max === undefined || more.length + others.length > 0) return undefined;
  return { min: min.trim(), max: max.trim(), by: by?.trim() };
};

const withUnitOf = (text: string, model: string): string => {
  const own = readNumber(text);
  const other = readNumber(model);
  return own.state === 'read' && own.rest === '' && other.state === 'read'
    ? `${text} ${other.rest}`.trim()
    : text;
};

const example = (kind: QuantityKind): string => {
  const symbol = unitsOf(kind)[0]?.symbol ?? '';
  return `1 ${symbol} to 2 ${symbol}`.replace(/ +/g, ' ').trim();
};
