import {
  type Parsed,
  type ParsedRange,
  parseQuantity,
  parseRange,
  type QuantityKind,
  type QuantityProblem,
  type QuantityRange,
  quantity,
} from '@brinewright/units';
import { spaced } from '../issue/space.ts';

/** One value; a range; a range with the step between settings; places along a bore, which may be below zero. */
export const quantityForms = ['one', 'range', 'series', 'position', 'positions'] as const;
export type QuantityForm = (typeof quantityForms)[number];

export const isQuantityForm = (text: string): text is QuantityForm =>
  quantityForms.some((form) => form === text);

/** A length measured from a datum: it may lie before it. */
export const parsePosition = (text: string): Parsed<'length'> => {
  const before = /^\s*[-−–]\s*/u.exec(text)?.[0];
  if (before === undefined) return parseQuantity(text, 'length');
  const read = parseQuantity(text.slice(before.length), 'length');
  if (!read.ok) return read;
  return { ok: true, quantity: quantity('length', -read.quantity.si, text.trim()) };
};

/** Two places along a bore, the first one before the second. */
export const parsePositions = (text: string): ParsedRange<'length'> => {
  const [from, to, ...more] = text.split(/\s+to\s+/u);
  if (from === undefined || to === undefined || more.length > 0) return parseRange(text, 'length');
  const min = parsePosition(from);
  const max = parsePosition(to);
  if (!min.ok) return min;
  if (!max.ok) return max;
  if (min.quantity.si <= max.quantity.si)
    return { ok: true, range: { min: min.quantity, max: max.quantity } };
  const mended = spaced(to, 'to', from);
  return { ok: false, problem: { ...upsideDown(text), mended } };
};

const upsideDown = (text: string) =>
  ({ what: 'range-upside-down', kind: 'length', text, units: [] }) as const;

export const parseSeries = <K extends QuantityKind>(text: string, kind: K): ParsedRange<K> => {
  const read = parseRange(text, kind);
  if (!read.ok || read.range.by !== undefined) return read;
  const example = stepped(read.range);
  return { ok: false, problem: { what: 'not-a-range', example, kind, text, units: [] } };
};

/** A range that lacks nothing but its step, with a step as it might be. */
export const steplessMended = (text: string, kind: QuantityKind): string | undefined => {
  const read = parseRange(text, kind);
  return read.ok && read.range.by === undefined ? stepped(read.range) : undefined;
};

/** The first value serves as the step; where it is zero, one of its unit. */
const stepped = ({ min, max }: QuantityRange): string => {
  const step = min.si === 0 ? min.as?.replace(/^[\d.,]+/u, '1') : min.as;
  return spaced(min.as, 'to', max.as, 'by', step);
};

/** What is wrong with a written quantity, if anything. */
export const problemIn = (
  text: string,
  kind: QuantityKind,
  form: QuantityForm,
): QuantityProblem | undefined => {
  const read = {
    one: () => parseQuantity(text, kind),
    range: () => parseRange(text, kind),
    series: () => parseSeries(text, kind),
    position: () => parsePosition(text),
    positions: () => parsePositions(text),
  }[form]();
  return read.ok ? undefined : read.problem;
};
