import {
  parseQuantity,
  parseRange,
  type Quantity,
  type QuantityKind,
  type QuantityRange,
  writeQuantity,
} from '@brinewright/units';
import { z } from 'zod';

export const howKnown = ['measured', 'read', 'told', 'assumed'] as const;
export type HowKnown = (typeof howKnown)[number];

/** A value and how it is known; `u` is its standard uncertainty in the same kind. */
export type Known<T> = {
  readonly value: T;
  readonly how: HowKnown;
  readonly u?: T;
  readonly entry?: string;
};

export type KnownQuantity<K extends QuantityKind = QuantityKind> = Known<Quantity<K>>;

const isQuantity = (value: unknown): boolean => typeof value === 'object' && value !== null && 'si' in value;

/** Text with a unit on paper, an SI quantity inside; the text as entered is kept. */
export const quantityOf = <K extends QuantityKind>(kind: K) =>
  z.codec(z.string().meta({ quantity: kind }), z.custom<Quantity<K>>(isQuantity), {
    decode: (text, context): Quantity<K> => {
      const parsed = parseQuantity(text, kind);
      if (parsed.ok) return { kind, si: parsed.quantity.si, as: text };
      context.issues.push({ code: 'custom', input: text, params: { quantity: kind, form: 'one' } });
      return z.NEVER;
    },
    encode: writeQuantity,
  });

/** A span as text: '1 min to 99 min by 1 min'. */
export const rangeOf = <K extends QuantityKind>(kind: K) =>
  z.codec(
    z.string().meta({ range: kind }),
    z.custom<WrittenRange<K>>((value) => typeof value === 'object' && value !== null),
    {
      decode: (text, context): WrittenRange<K> => {
        const parsed = parseRange(text, kind);
        if (parsed.ok) return { ...parsed.range, as: text };
        context.issues.push({ code: 'custom', input: text, params: { quantity: kind, form: 'range' } });
        return z.NEVER;
      },
      encode: (range) => range.as,
    },
  );

export type WrittenRange<K extends QuantityKind> = QuantityRange<K> & { readonly as: string };

/**
 * A plain quantity, or `{ value, how, u }`. Plain means known in the way that is usual for the field, so that
 * writing it back gives the same text.
 */
export const knownQuantity = <K extends QuantityKind>(kind: K, usual: HowKnown) => {
  const plain = quantityOf(kind);
  const full = z.strictObject({
    value: plain,
    how: z.enum(howKnown).optional(),
    u: plain.optional(),
    entry: z.string().optional(),
  });
  return z.codec(
    z.union([plain, full]),
    z.custom<KnownQuantity<K>>((value) => typeof value === 'object' && value !== null),
    {
      decode: (given): KnownQuantity<K> =>
        'kind' in given
          ? { value: given, how: usual }
          : {
              value: given.value,
              how: given.how ?? usual,
              ...(given.u === undefined ? {} : { u: given.u }),
              ...(given.entry === undefined ? {} : { entry: given.entry }),
            },
      encode: (known) =>
        known.how === usual && known.u === undefined && known.entry === undefined ? known.value : known,
    },
  );
};
