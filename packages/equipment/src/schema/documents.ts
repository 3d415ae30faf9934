import { z } from 'zod';
import { boreEntry, bores, stack } from './bore.ts';
import { cautions, changes, complaints, faults, kinds, tests } from './diagnosis.ts';
import { features, limits, tells } from './feature.ts';
import { controllers, controls, injectors, media, meterEntry, meters } from './fitting.ts';
import { operations } from './operation.ts';
import { conversions, parts, tools } from './part.ts';
import { says } from './says.ts';
import { fits, id, text, texts, words } from './text.ts';

/** What a family and a stock have in common; a stock gives what the families like it leave out. */
const sections = {
  title: says('title', text.optional()),
  source: says('source', words.optional()),
  like: says('like', words.optional()),
  kinds: says('kinds', kinds.optional()),
  limits: says('limits', limits.optional()),
  features: says('features', features.optional()),
  never: says('never', z.array(fits).optional()),
  tells: says('tells', tells.optional()),
  bore: says('bore', boreEntry.optional()),
  bores: says('bores', bores.optional()),
  stack: says('stack', stack.optional()),
  'looks-wrong': says('looks-wrong', texts.optional()),
  injectors: says('injectors', injectors.optional()),
  controls: says('controls', controls.optional()),
  controllers: says('controllers', controllers.optional()),
  meter: says('meter', meterEntry.optional()),
  meters: says('meters', meters.optional()),
  parts: says('parts', parts.optional()),
  conversions: says('conversions', conversions.optional()),
  tools: says('tools', tools.optional()),
  operations: says('operations', operations.optional()),
  faults: says('faults', faults.optional()),
  tests: says('tests', tests.optional()),
  complaints: says('complaints', complaints.optional()),
  changes: says('changes', changes.optional()),
  cautions: says('cautions', cautions.optional()),
};

export const familyDocument = z.strictObject({ family: says('family', id), ...sections });
export const stockDocument = z.strictObject({ stock: says('stock', id), ...sections });
export const mediaDocument = z.strictObject({
  media: says('media', media),
  source: says('source', words.optional()),
});

/** A family or stock as written, after its own file was checked. */
export type WrittenFamily = Omit<z.infer<typeof familyDocument>, 'family'>;
export type WrittenMedia = z.infer<typeof mediaDocument>;

export const documents = { family: familyDocument, stock: stockDocument, media: mediaDocument } as const;
export type DocumentKind = keyof typeof documents;
