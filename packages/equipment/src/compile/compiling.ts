import type { QuantityKind, QuantityRange } from '@brinewright/units';
import { parseQuantity, parseRange, type Quantity } from '@brinewright/units';
import type { Path, Text } from '@brinewright/words';
import type { Report } from '../issue/report.ts';
import { space } from '../issue/space.ts';
import type { Fits } from '../model/feature.ts';
import type { WrittenFits, WrittenMinutes } from '../schema/text.ts';

/** What every part of a definition needs while it is compiled. */
export type Compiling = {
  readonly report: Report;
};

/** A key that has no default and that neither the file nor its stock gives. */
export const needed = <T>(value: T | undefined, at: Path, key: string, report: Report): T | undefined => {
  if (value === undefined) report.error([...at, key], { code: 'schema.missing-key', values: { key } });
  return value;
};

/** An id as words, where no title was given. */
export const titleOr = (title: Text | undefined, id: string): Text => title ?? id.replaceAll('-', space);

export const fitsOf = (written: WrittenFits | undefined): Fits =>
  Object.fromEntries(
    Object.entries(written ?? {}).map(([feature, values]) => [
      feature,
      typeof values === 'string' ? [values] : values,
    ]),
  );

/** The schema has let only readable quantities through. */
export const quantityOf = <K extends QuantityKind>(text: string, kind: K): Quantity<K> => {
  const read = parseQuantity(text, kind);
  if (!read.ok) throw new RangeError(`unchecked:${text}`);
  return read.quantity;
};

export const rangeOf = <K extends QuantityKind>(text: string, kind: K): QuantityRange<K> => {
  const read = parseRange(text, kind);
  if (!read.ok) throw new RangeError(`unchecked:${text}`);
  return read.range;
};

export const minutesOf = (written: WrittenMinutes | undefined): { hands: number; waiting: number } => {
  if (written === undefined) return { hands: 1, waiting: 0 };
  if (typeof written === 'number') return { hands: written, waiting: 0 };
  return { hands: written.hands ?? 0, waiting: written.waiting ?? 0 };
};

/** Entries in the order of the file, without those that could not be compiled. */
export const compileEach = <W, T>(
  section: Readonly<Record<string, W>> | undefined,
  name: string,
  to: (entry: W, id: string, at: Path) => T | undefined,
): readonly T[] =>
  Object.entries(section ?? {}).flatMap(([id, entry]) => {
    const compiled = to(entry, id, [name, id]);
    return compiled === undefined ? [] : [compiled];
  });
