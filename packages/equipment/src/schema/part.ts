import { z } from 'zod';
import { says } from './says.ts';
import { fits, id, ids, mark, off, text, words } from './text.ts';

const amount = z.union([z.literal('all'), z.int().min(1).max(999)]);

const part = z.strictObject({
  is: says('part.is', id.optional()),
  title: says('part.title', text.optional()),
  number: says('part.number', words.optional()),
  fits: says('part.fits', fits.optional()),
  price: says('part.price', z.number().min(0).max(1_000_000).optional()),
  of: says('part.of', mark.optional()),
  count: says('part.count', z.int().min(1).max(999).optional()),
  holds: says('part.holds', z.record(id, amount).optional()),
  off: says('off', off),
});
export type WrittenPart = z.infer<typeof part>;
export const parts = z.record(id, part);

const conversion = z.strictObject({
  change: says('conversion.change', z.record(id, z.tuple([mark, mark]))),
  also: says('conversion.also', ids.optional()),
  check: says('conversion.check', text.optional()),
});
export type WrittenConversion = z.infer<typeof conversion>;
export const conversions = z.array(conversion);

const tool = z.strictObject({
  title: says('tool.title', text.optional()),
  fits: says('tool.fits', fits.optional()),
  special: says('tool.special', z.boolean().optional()),
  off: says('off', off),
});
export type WrittenTool = z.infer<typeof tool>;
export const tools = z.record(id, tool);
