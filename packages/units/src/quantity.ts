import type { QuantityKind } from './kinds.ts';

/** A value in SI with, where a person wrote it, the text as entered: '18 gpg' stays '18 gpg'. */
export type Quantity<K extends QuantityKind = QuantityKind> = {
  readonly kind: K;
  readonly si: number;
  readonly as?: string;
};

/** US customary or metric; what a reader sees, never what is computed with. */
export type UnitSystem = 'us' | 'metric';

export const quantity = <K extends QuantityKind>(kind: K, si: number, as?: string): Quantity<K> =>
  as === undefined ? { kind, si } : { kind, si, as };
