import { stops } from '@brinewright/equipment';
import { z } from 'zod';
import { knownQuantity, quantityOf, rangeOf } from './codec.ts';

/*
 * The visit document: what is known of site, water and units; what was seen, measured and done.
 * Every field is optional unless nothing can be said without it; a stage that lacks something says so.
 */

const id = z.string().regex(/^[a-z0-9][a-z0-9-]*$/u);
const text = z.union([z.string(), z.strictObject({ en: z.string(), es: z.string().optional() })]);
const instant = z.iso.datetime({ offset: true });
const day = z.iso.date();

const prices = z.strictObject({
  currency: z.string(),
  salt: quantityOf('price-mass').optional(),
  water: quantityOf('price-volume').optional(),
  sewer: quantityOf('price-volume').optional(),
  labour: quantityOf('price-time').optional(),
});

/** What hangs on the water: decides whom to warn and which outlet behaviour is allowed. */
export const uses = [
  'boiler',
  'laundry',
  'dialysis',
  'food',
  'fire',
  'eyewash',
  'cooling',
  'ice',
  'guests',
  'high-building',
] as const;

const site = z.strictObject({
  name: z.string(),
  address: z.string().optional(),
  zone: z.string().optional(),
  access: text.optional(),
  uses: z.array(z.enum(uses)).optional(),
  prices: prices.optional(),
});

const concentration = knownQuantity('concentration', 'read').optional();

/** One analysis of one water. Hardness may be given, or follows from calcium and magnesium. */
const waterAnalysis = z.strictObject({
  of: z.enum(['raw', 'treated', 'blended']),
  source: text.optional(),
  date: day.optional(),
  hardness: knownQuantity('hardness', 'measured').optional(),
  calcium: concentration,
  magnesium: concentration,
  sodium: concentration,
  potassium: concentration,
  iron: concentration,
  manganese: concentration,
  barium: concentration,
  strontium: concentration,
  /** Ammonia and nitrate as nitrogen, the way most laboratories report them. */
  ammoniaNitrogen: concentration,
  alkalinity: knownQuantity('equivalent-concentration', 'read').optional(),
  sulfate: concentration,
  chloride: concentration,
  nitrateNitrogen: concentration,
  fluoride: concentration,
  ph: knownQuantity('ph', 'read').optional(),
  conductivity: knownQuantity('conductivity', 'read').optional(),
  solids: concentration,
  chlorine: concentration,
  temperature: knownQuantity('temperature', 'measured').optional(),
  coldest: knownQuantity('temperature', 'told').optional(),
  warmest: knownQuantity('temperature', 'told').optional(),
});

const demand = z.strictObject({
  daily: knownQuantity('volume', 'told').optional(),
  peak: knownQuantity('flow', 'told').optional(),
  usual: knownQuantity('flow', 'told').optional(),
});

const supply = z.strictObject({
  pressure: knownQuantity('pressure', 'measured').optional(),
  flow: knownQuantity('flow', 'measured').optional(),
  drain: knownQuantity('flow', 'told').optional(),
  drainPipe: quantityOf('length').optional(),
});

const timedSteps = ['backwash', 'brine', 'draw', 'slow-rinse', 'fast-rinse', 'refill'] as const;

/** A controller nobody has described, as found on the wall. */
const ownController = z.strictObject({
  holds: z.array(z.enum(timedSteps)).min(1),
  times: rangeOf('time').optional(),
  starts: z.array(z.enum(['clock', 'metered'])).optional(),
  volumes: rangeOf('volume').optional(),
  days: rangeOf('count').optional(),
});

const fitted = z.strictObject({
  controller: z.string().optional(),
  injector: z.string().optional(),
  drain: z.string().optional(),
  refill: z.string().optional(),
  meter: z.string().optional(),
});

/** Rates and sizes of this very unit; they always beat a chart. */
const measured = z.strictObject({
  backwash: knownQuantity('flow', 'measured').optional(),
  draw: knownQuantity('flow', 'measured').optional(),
  'slow-rinse': knownQuantity('flow', 'measured').optional(),
  'fast-rinse': knownQuantity('flow', 'measured').optional(),
  refill: knownQuantity('flow', 'measured').optional(),
  at: knownQuantity('pressure', 'measured').optional(),
});

const tank = z.strictObject({
  girth: knownQuantity('length', 'measured').optional(),
  wall: knownQuantity('length', 'measured').optional(),
  diameter: knownQuantity('length', 'read').optional(),
  height: knownQuantity('length', 'read').optional(),
});

const layer = z.strictObject({
  medium: z.string(),
  depth: knownQuantity('length', 'measured').optional(),
  volume: knownQuantity('volume', 'read').optional(),
  /** Height above the settled bed into which it may rise. */
  free: knownQuantity('length', 'measured').optional(),
  age: knownQuantity('time', 'told').optional(),
  bead: knownQuantity('length', 'read').optional(),
  density: knownQuantity('density', 'read').optional(),
});

/** What came out of the drain in backwash: nothing, fines only, or beads. */
const pail = z.strictObject({
  seen: z.enum(['nothing', 'fines', 'beads']),
  rate: quantityOf('flow'),
  temperature: quantityOf('temperature'),
});

const conditioner = z.strictObject({
  id,
  name: z.string().optional(),
  family: z.string(),
  kind: z.enum(['softener', 'filter']),
  /** Feature values told or read from papers; a tell answered on the valve outweighs them. */
  believed: z.record(z.string(), z.string()).optional(),
  tank: tank.optional(),
  media: z.array(layer).optional(),
  fitted: fitted.optional(),
  measured: measured.optional(),
  controller: ownController.optional(),
  salt: z.enum(['sodium', 'potassium']).optional(),
  brineTank: z
    .strictObject({
      temperature: knownQuantity('temperature', 'measured').optional(),
      diameter: knownQuantity('length', 'measured').optional(),
      level: knownQuantity('length', 'measured').optional(),
    })
    .optional(),
  bedNow: z.enum(['in-use', 'exhausted']).optional(),
  pail: pail.optional(),
});

const complaint = z.strictObject({
  words: text,
  /** Complaints of the definitions that fit, where the technician chose them. */
  kinds: z.array(z.string()).optional(),
  since: text.optional(),
});

const history = z.strictObject({
  changed: text.optional(),
  changes: z.array(z.string()).optional(),
  lastWork: z
    .strictObject({ by: z.string().optional(), when: day.optional(), what: text.optional() })
    .optional(),
});

const tellAnswer = z.strictObject({
  tell: z.string(),
  conditioner: id.optional(),
  /** An answer of the tell, 'cannot-see' or 'unsure'; a measured tell takes a length. */
  answer: z.string(),
  /** The answer is a guess: it counts, but a little. */
  unsure: z.boolean().optional(),
  entry: z.string().optional(),
});

/** One reading of a test: a quantity as text, a state, or 'cannot-do'. Several of one test are repeats. */
const reading = z.strictObject({
  test: z.string(),
  conditioner: id.optional(),
  value: z.string().optional(),
  state: z.string().optional(),
  u: z.string().optional(),
  at: instant.optional(),
  entry: z.string().optional(),
});

const apart = z.strictObject({
  water: z.enum(['on', 'off']).optional(),
  pressure: z.enum(['full', 'none']).optional(),
  power: z.enum(['on', 'off']).optional(),
  piston: z.enum(['home', 'removal']).optional(),
  bypass: z.enum(['service', 'bypass']).optional(),
  stop: z.enum(stops).optional(),
});

const settings = z.strictObject({
  backwash: quantityOf('time').optional(),
  brine: quantityOf('time').optional(),
  draw: quantityOf('time').optional(),
  'slow-rinse': quantityOf('time').optional(),
  'fast-rinse': quantityOf('time').optional(),
  refill: quantityOf('time').optional(),
  volume: quantityOf('volume').optional(),
  days: z.number().positive().optional(),
  at: z
    .string()
    .regex(/^\d{2}:\d{2}$/u)
    .optional(),
});

const gate = z.strictObject({
  /** Parts and special tools in the hand, by id of the definition; compared with the valve. */
  kit: z.array(z.string()).optional(),
  tools: z.array(z.string()).optional(),
  photographed: z.boolean().optional(),
  priceAgreed: z.boolean().optional(),
  outageAgreed: z.boolean().optional(),
  wayBack: text.optional(),
});

const operationDone = z.strictObject({
  operation: z.string(),
  instance: z.number().int().positive().optional(),
  /** Pieces counted with it, by what they are: { seal: 7, spacer: 6 }. */
  counted: z.record(z.string(), z.number().int().nonnegative()).optional(),
  at: instant.optional(),
  entry: z.string().optional(),
});

const proofReading = z.strictObject({
  check: z.string(),
  value: z.string().optional(),
  state: z.enum(['seen', 'not-seen']).optional(),
  u: z.string().optional(),
  at: instant.optional(),
  entry: z.string().optional(),
});

const acknowledged = z.strictObject({ caution: z.string(), at: instant.optional() });
const photo = z.strictObject({ file: z.string(), of: text.optional() });
const signature = z.strictObject({ name: z.string(), at: instant.optional() });
const handOver = z.strictObject({
  to: z.string().optional(),
  said: text.optional(),
  at: instant.optional(),
});
const partUsed = z.strictObject({ part: z.string(), count: z.number().int().positive() });
const stockLine = z.strictObject({ part: z.string(), count: z.number().int().nonnegative() });

const decision = z.strictObject({
  /** A fault by id, a dose with its unit, a conversion as 'feature:value'. */
  what: z.enum(['fault', 'dose', 'convert']),
  value: z.string(),
  reason: text.optional(),
});

const technician = z.strictObject({ name: z.string(), company: z.string().optional() });

/** What a visit is made of, each part by itself: entries of a journal hold one at a time. */
export const visitParts = {
  id,
  text,
  instant,
  day,
  site,
  waterAnalysis,
  demand,
  supply,
  conditioner,
  complaint,
  history,
  tellAnswer,
  reading,
  apart,
  settings,
  gate,
  acknowledged,
  photo,
  signature,
  handOver,
  operationDone,
  partUsed,
  stockLine,
  decision,
  proofReading,
  technician,
  volume: quantityOf('volume'),
} as const;

export const visitSchema = z.strictObject({
  schema: z.literal(1),
  id,
  definitions: z.string().optional(),
  date: day.optional(),
  by: technician.optional(),
  note: text.optional(),
  site,
  water: z.array(waterAnalysis).optional(),
  demand: demand.optional(),
  supply: supply.optional(),
  conditioners: z.array(conditioner).min(1),
  subject: id,
  complaint: complaint.optional(),
  history: history.optional(),
  answers: z.array(tellAnswer).optional(),
  readings: z.array(reading).optional(),
  apart: apart.optional(),
  gate: gate.optional(),
  acknowledged: z.array(acknowledged).optional(),
  photos: z.array(photo).optional(),
  signatures: z.array(signature).optional(),
  handOver: handOver.optional(),
  meterNow: quantityOf('volume').optional(),
  lastRegeneration: instant.optional(),
  done: z.array(operationDone).optional(),
  used: z.array(partUsed).optional(),
  decided: z.array(decision).optional(),
  settings: z.strictObject({ found: settings.optional(), set: settings.optional() }).optional(),
  proofs: z.array(proofReading).optional(),
  stock: z.array(stockLine).optional(),
});

export type Visit = z.output<typeof visitSchema>;
export type VisitDocument = z.input<typeof visitSchema>;
export type Conditioner = Visit['conditioners'][number];
export type Layer = NonNullable<Conditioner['media']>[number];
export type WaterAnalysis = NonNullable<Visit['water']>[number];
export type ProgramSettings = NonNullable<NonNullable<Visit['settings']>['found']>;
export type TellAnswer = NonNullable<Visit['answers']>[number];
export type Reading = NonNullable<Visit['readings']>[number];
export type OperationDone = NonNullable<Visit['done']>[number];
export type Use = (typeof uses)[number];
