import { findUnit, type Parsed, parseQuantity, type QuantityKind } from '@brinewright/units';

/** What stands in a quantity field: as typed, with its unit and how sure it is. */
export type QuantityEntry = {
  readonly figure: string;
  readonly unit: string;
  readonly known: 'value' | 'cannot-see' | 'unsure';
};

export const emptyEntry = (unit: string): QuantityEntry => ({ figure: '', unit, known: 'value' });

/** The quantity typed; nothing while the field is empty or cannot be seen. */
export const readEntry = <K extends QuantityKind>(kind: K, entry: QuantityEntry): Parsed<K> | undefined =>
  entry.known === 'cannot-see' || entry.figure.trim() === ''
    ? undefined
    : parseQuantity(`${entry.figure.trim().replace(',', '.')} ${entry.unit}`, kind);

export const unitShown = (kind: QuantityKind, unit: string): string => findUnit(kind, unit)?.shown ?? unit;
