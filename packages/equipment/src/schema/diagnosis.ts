import { z } from 'zod';
import { join } from './bore.ts';
import { workState } from './operation.ts';
import { quantityKind } from './quantity-text.ts';
import { says } from './says.ts';
import { fits, id, ids, mark, minutes, off, text, texts, words } from './text.ts';

const kind = z.enum(['softener', 'filter']);
export const kinds = z.array(kind).min(1);
const strength = z.enum(['sure', 'likely', 'possible', 'hardly']);
const strengths = z.record(id, strength);
const places = ['valve', 'brine', 'drain', 'control', 'bed', 'supply', 'outside', 'after-service'] as const;

const repair = z.strictObject({
  replace: says('repair.replace', ids.optional()),
  do: says('repair.do', ids.optional()),
  settings: says('repair.settings', z.boolean().optional()),
});

const fault = z.strictObject({
  title: says('fault.title', text.optional()),
  explains: says('fault.explains', text.optional()),
  mend: says('fault.mend', text.optional()),
  where: says('fault.where', z.enum(places).optional()),
  odds: says('fault.odds', z.number().gt(0).max(1000).optional()),
  kinds: says('fault.kinds', kinds.optional()),
  fits: says('fault.fits', fits.optional()),
  path: says('fault.path', join.optional()),
  'after-service': says('fault.after-service', z.boolean().optional()),
  repair: says('fault.repair', repair.optional()),
  off: says('off', off),
});
export type WrittenFault = z.infer<typeof fault>;
export const faults = z.record(id, fault);

const band = z.union([words, z.number()]);
const outcome = z.strictObject({
  title: says('outcome.title', text.optional()),
  from: says('outcome.from', band.optional()),
  to: says('outcome.to', band.optional()),
  faults: says('outcome.faults', strengths.optional()),
});
export type WrittenOutcome = z.infer<typeof outcome>;

const reading = z.strictObject({
  kind: says('reading.kind', quantityKind),
  u: says('reading.u', words),
  of: says('reading.of', words.optional()),
  plausible: says('reading.plausible', words),
});
export type WrittenReading = z.infer<typeof reading>;

const test = z.strictObject({
  ask: says('test.ask', text.optional()),
  how: says('test.how', texts.optional()),
  reading: says('test.reading', reading.optional()),
  outcomes: says('test.outcomes', z.record(mark, outcome).optional()),
  normal: says('test.normal', mark.optional()),
  minutes: says('test.minutes', minutes.optional()),
  needs: says('test.needs', workState.optional()),
  after: says('test.after', ids.optional()),
  tools: says('test.tools', z.array(words).optional()),
  hazards: says('test.hazards', ids.optional()),
  kinds: says('test.kinds', kinds.optional()),
  fits: says('test.fits', fits.optional()),
  off: says('off', off),
});
export type WrittenTest = z.infer<typeof test>;
export const tests = z.record(id, test);

const lookedFor = z.strictObject({
  en: says('words.en', z.array(words).optional()),
  es: says('words.es', z.array(words).optional()),
});

const complaint = z.strictObject({
  title: says('complaint.title', text.optional()),
  words: says('complaint.words', lookedFor.optional()),
  faults: says('complaint.faults', strengths.optional()),
  off: says('off', off),
});
export type WrittenComplaint = z.infer<typeof complaint>;
export const complaints = z.record(id, complaint);

const change = z.strictObject({
  title: says('change.title', text.optional()),
  words: says('complaint.words', lookedFor.optional()),
  raises: says('change.raises', z.record(id, z.number().min(0.001).max(1000)).optional()),
  off: says('off', off),
});
export type WrittenChange = z.infer<typeof change>;
export const changes = z.record(id, change);

const caution = z.strictObject({
  signal: says('caution.signal', z.enum(['danger', 'warning', 'caution', 'notice']).optional()),
  title: says('caution.title', text.optional()),
  does: says('caution.does', text.optional()),
  act: says('caution.act', texts.optional()),
  fact: says('caution.fact', text.optional()),
  always: says('caution.always', z.array(kind).optional()),
  off: says('off', off),
});
export type WrittenCaution = z.infer<typeof caution>;
export const cautions = z.record(id, caution);
