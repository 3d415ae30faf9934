import { visitParts } from '@brinewright/service';
import { z } from 'zod';

/*
 * What each kind of entry holds, in its newest version. Parts of a visit are the visit's own schemas, so that a folded
 * visit and a written one are the same type. Partial payloads say only what is said; the rest stays as it was.
 */

const parts = visitParts;
const sha256 = z.string().regex(/^[0-9a-f]{64}$/u);
const uuid = z.uuid();
const name = z.string().min(1).max(200);

const definitions = z.strictObject({ digest: z.string(), file: sha256.optional() });

/** Figures as shown, so that papers of a finished visit stay what they were (F5). */
const shown = z.strictObject({
  engine: z.string(),
  definitions: z.string(),
  figures: z.record(z.string(), z.string()),
});

const conditioner = parts.conditioner.omit({ id: true });

export const payloads = {
  'workshop-named': z.strictObject({ name }),
  'definition-added': z.strictObject({ name, file: sha256 }),

  'site-opened': parts.site,
  'site-described': parts.site.partial(),
  'water-analysed': parts.waterAnalysis,
  'demand-described': parts.demand,
  'supply-described': parts.supply,
  'conditioner-added': conditioner,
  'conditioner-described': conditioner.partial(),

  'visit-started': z.strictObject({
    subject: parts.id,
    definitions: definitions.optional(),
    date: parts.day.optional(),
    by: parts.technician.optional(),
  }),
  'visit-definitions-changed': z.strictObject({ definitions, gone: z.array(z.string()) }),
  'visit-noted': z.strictObject({ note: parts.text }),
  'complaint-told': parts.complaint,
  'history-told': parts.history,
  'tell-answered': parts.tellAnswer.omit({ conditioner: true, entry: true }),
  'reading-taken': parts.reading.omit({ conditioner: true, entry: true }),
  'decision-made': parts.decision,
  'gate-checked': parts.gate,
  'apart-noted': parts.apart,
  'operation-done': parts.operationDone.omit({ entry: true }),
  /** `from`: the stock place it was taken from; `instance`: which of several alike. */
  'part-used': parts.partUsed.extend({
    instance: z.int().positive().optional(),
    from: uuid.optional(),
  }),
  'stock-listed': z.strictObject({ lines: z.array(parts.stockLine) }),
  'setting-found': parts.settings,
  'setting-set': parts.settings,
  'meter-read': z.strictObject({
    volume: parts.volume.optional(),
    lastRegeneration: parts.instant.optional(),
  }),
  'proof-reading-taken': parts.proofReading.omit({ entry: true }),
  'caution-acknowledged': parts.acknowledged,
  'photo-taken': parts.photo.extend({ bytes: z.int().nonnegative().optional(), type: z.string().optional() }),
  'signature-given': parts.signature.extend({ file: sha256.optional() }),
  'advice-given': shown,
  'handed-over': parts.handOver.extend({ shown: shown.optional() }),

  'stock-place-named': z.strictObject({ name }),
  'stock-moved': z
    .strictObject({
      part: z.string(),
      count: z.int().positive(),
      from: uuid.optional(),
      to: uuid.optional(),
      why: parts.text.optional(),
    })
    .refine(({ from, to }) => from !== to),
  'stock-taken': z.strictObject({ lines: z.array(parts.stockLine) }),

  corrected: z.union([
    z.strictObject({ target: uuid, payload: z.json() }),
    z.strictObject({ target: uuid, withdrawn: parts.text }),
  ]),
  redacted: z.strictObject({ target: uuid, reason: parts.text }),
} as const;

export type KindName = keyof typeof payloads;
export type Payload<K extends KindName> = z.output<(typeof payloads)[K]>;

/** What an entry of the kind is about: the whole stream, one conditioner of it, or one visit. */
export type Scope = 'stream' | 'conditioner' | 'visit';

const ofStream: readonly KindName[] = [
  'workshop-named',
  'definition-added',
  'site-opened',
  'site-described',
  'water-analysed',
  'demand-described',
  'supply-described',
  'stock-place-named',
  'stock-moved',
  'stock-taken',
  'corrected',
  'redacted',
];

export const scopeOf = (kind: KindName): Scope => {
  if (ofStream.includes(kind)) return 'stream';
  return kind === 'conditioner-added' || kind === 'conditioner-described' ? 'conditioner' : 'visit';
};

export const kindNames: readonly KindName[] = Object.keys(payloads).filter(isKindName);

export function isKindName(name: string): name is KindName {
  return Object.hasOwn(payloads, name);
}
