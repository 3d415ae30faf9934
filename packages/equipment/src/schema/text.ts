import { z } from 'zod';

/** Ids of entries: lower case, figures and hyphens. */
export const id = z.string().regex(/^[a-z0-9][a-z0-9-]*$/u);

/** Marks that stand on a part or a dial: answers, controls, feature values. */
export const mark = z.string().regex(/^[\p{L}\p{N}][\p{L}\p{N}._+/-]*$/u);

/** Name of a port, as joins write it. */
export const portPattern = /^[A-Za-z][A-Za-z0-9-]*$/u;

export const words = z.string().min(1);

/** Words for people: plain, or by language. */
export const text = z.union([words, z.strictObject({ en: words, es: words.optional() })]);
export type WrittenText = z.infer<typeof text>;

export const texts = z.array(text);
export const ids = z.array(id);

/** Per feature the values allowed, one or several. */
export const fits = z.record(id, z.union([mark, z.array(mark).min(1)]));
export type WrittenFits = z.infer<typeof fits>;

const places = z.number().min(0);

/** Minutes of hands, or hands and waiting. */
export const minutes = z.union([
  places.max(2000),
  z.strictObject({ hands: places.max(2000).optional(), waiting: places.max(20000).optional() }),
]);
export type WrittenMinutes = z.infer<typeof minutes>;

/** Removes what the stock has under this id. */
export const off = z.literal(true).optional();
