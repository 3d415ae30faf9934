import { z } from 'zod';
import { quantityKind, quantityText } from './quantity-text.ts';
import { says } from './says.ts';
import { fits, id, ids, mark, text, words } from './text.ts';

const weight = z.number().min(0).max(1_000_000);

const featureValue = z.strictObject({
  title: says('feature.value.title', text.optional()),
  weight: says('feature.value.weight', weight.optional()),
});

/** A plain list (taken as equal), weights, or the long form with titles. */
const feature = z.union([
  z.array(mark).min(1),
  z.strictObject({
    title: says('feature.title', text.optional()),
    values: says(
      'feature.values',
      z.union([z.array(mark).min(1), z.record(mark, z.union([weight, featureValue]))]),
    ),
  }),
  z.record(mark, weight),
]);
export type WrittenFeature = z.infer<typeof feature>;

export const features = z.record(id, feature);

const answer = z.union([
  z.strictObject({
    title: says('answer.title', text.optional()),
    allows: says('answer.allows', fits),
  }),
  fits,
]);
export type WrittenAnswer = z.infer<typeof answer>;

const tell = z.strictObject({
  ask: says('tell.ask', text.optional()),
  how: says('tell.how', text.optional()),
  minutes: says('tell.minutes', z.number().min(0).max(600).optional()),
  trust: says('tell.trust', z.number().min(0.51).max(0.999).optional()),
  after: says('tell.after', ids.optional()),
  answers: says('tell.answers', z.record(mark, answer).optional()),
  measure: says('tell.measure', text.optional()),
  kind: says('tell.kind', quantityKind.optional()),
  u: says('tell.u', words.optional()),
  value: says('tell.value', z.record(id, z.record(mark, words)).optional()),
  off: says('off', z.literal(true).optional()),
});
export type WrittenTell = z.infer<typeof tell>;

export const tells = z.record(id, tell);
export const limits = z.strictObject({
  pressure: says('limits.pressure', quantityText('pressure', 'range').optional()),
  temperature: says(
    'limits.temperature',
    z.union([quantityText('temperature'), z.record(mark, quantityText('temperature'))]).optional(),
  ),
});
