import { type DiagnosisTest, type Equipment, type Family, stops, type Tell } from '@brinewright/equipment';
import fc from 'fast-check';
import { uses, type VisitDocument } from '../visit/schema.ts';
import {
  knownText,
  type Mood,
  moods,
  oddText,
  orAbsurd,
  quantityText,
  siText,
  textIn,
} from './arbitrary-quantity.ts';
import { arbitraryConditioner, idFrom } from './arbitrary-unit.ts';

const day = fc.constantFrom('2026-11-25', '2026-09-30', '1994-06-16', '2999-12-31', '2027-01-02');
const instant = fc.constantFrom('2026-11-25T09:30:00Z', '1970-01-01T00:00:00-08:00');

const milligrams = (mood: Mood, max: number) =>
  knownText(mood, quantityText(mood, 'concentration', 'mg/L', [0, max]));
const degrees = (mood: Mood, from: number, to: number) =>
  knownText(mood, quantityText(mood, 'temperature', 'degF', [from, to]));
const flow = (mood: Mood, max: number) => knownText(mood, quantityText(mood, 'flow', 'gpm', [0.5, max]));

const water = (mood: Mood) =>
  fc.record(
    {
      of: fc.constantFrom('raw', 'raw', 'treated', 'blended'),
      source: textIn(mood),
      date: day,
      hardness: knownText(mood, quantityText(mood, 'hardness', 'gpg', [1, 60])),
      calcium: milligrams(mood, 200),
      magnesium: milligrams(mood, 80),
      sodium: milligrams(mood, 100),
      potassium: milligrams(mood, 10),
      iron: milligrams(mood, 6),
      manganese: milligrams(mood, 1),
      barium: milligrams(mood, 1),
      strontium: milligrams(mood, 5),
      ammoniaNitrogen: milligrams(mood, 1),
      alkalinity: knownText(mood, quantityText(mood, 'equivalent-concentration', 'mg/L CaCO3', [10, 400])),
      sulfate: milligrams(mood, 300),
      chloride: milligrams(mood, 200),
      nitrateNitrogen: milligrams(mood, 10),
      fluoride: milligrams(mood, 2),
      ph: knownText(mood, quantityText(mood, 'ph', '', [5, 10])),
      conductivity: knownText(mood, quantityText(mood, 'conductivity', 'uS/cm', [50, 2000])),
      solids: milligrams(mood, 800),
      chlorine: milligrams(mood, 4),
      temperature: degrees(mood, 40, 130),
      coldest: degrees(mood, 35, 60),
      warmest: degrees(mood, 60, 150),
    },
    { requiredKeys: mood === 'sane' ? ['of', 'hardness'] : ['of'] },
  );

const site = (mood: Mood) =>
  fc.record(
    {
      name: oddText(mood),
      address: oddText(mood),
      zone: oddText(mood),
      access: textIn(mood),
      uses: fc.subarray([...uses]),
      prices: fc.record(
        {
          currency: oddText(mood),
          salt: fc.constantFrom('7.50 per 40 lb', '0 per lb', '1e300 per kg'),
          water: fc.constantFrom('9 per 1000 gal', '0 per L', '1e200 per m3'),
          sewer: fc.constantFrom('11 per 1000 gal', '0 per L'),
          labour: fc.constantFrom('95 per h', '0 per h'),
        },
        { requiredKeys: ['currency'] },
      ),
    },
    { requiredKeys: ['name'] },
  );

const answerOf = (mood: Mood, tell: Tell): fc.Arbitrary<string> => {
  const silent = ['cannot-see', 'unsure'];
  if (tell.kind === 'seen') return idFrom(mood, [...tell.answers.map(({ id }) => id), ...silent]);
  const sizes = Object.values(tell.expected).map(({ si }) => siText('length', si));
  return orAbsurd(
    mood,
    fc.constantFrom(...sizes, ...silent),
    fc.oneof(quantityText('absurd', 'length', 'mm', [1, 100]), oddText(mood)),
  );
};

/** A family that is described to the last tell lends its own to one that is not: answers of the wrong family. */
const tellsFor = (family: Family, equipment: Equipment): readonly Tell[] =>
  family.tells.length > 0 ? family.tells : [...equipment.families.values()].flatMap(({ tells }) => tells);

const answer = (mood: Mood, tells: readonly Tell[], of: fc.Arbitrary<string>) =>
  fc.constantFrom(...tells).chain((tell) =>
    fc.record(
      {
        tell: orAbsurd(mood, fc.constant(tell.id), oddText(mood)),
        conditioner: of,
        answer: answerOf(mood, tell),
        unsure: fc.boolean(),
        entry: oddText(mood),
      },
      { requiredKeys: ['tell', 'answer'] },
    ),
  );

/** Text for a reading of the test: between its plausible ends, or absurd. */
const readingText = (mood: Mood, { reading }: DiagnosisTest): fc.Arbitrary<string> => {
  if (reading === undefined) return oddText(mood);
  const { min, max } = reading.plausible;
  const plausible = fc
    .integer({ min: 0, max: 100 })
    .map((step) => siText(reading.kind, min.si + ((max.si - min.si) * step) / 100));
  return orAbsurd(mood, plausible, fc.oneof(quantityText('absurd', reading.kind, '', [0, 1]), oddText(mood)));
};

const reading = (mood: Mood, family: Family, of: fc.Arbitrary<string>) =>
  fc.constantFrom(...family.tests).chain((test) =>
    fc.record(
      {
        test: orAbsurd(mood, fc.constant(test.id), oddText(mood)),
        conditioner: of,
        value: readingText(mood, test),
        state: idFrom(mood, [...test.outcomes.map(({ id }) => id), 'cannot-do']),
        u: readingText(mood, test),
        at: instant,
        entry: oddText(mood),
      },
      {
        requiredKeys: mood === 'sane' ? ['test', test.reading === undefined ? 'state' : 'value'] : ['test'],
      },
    ),
  );

const minutes = (mood: Mood, max: number) => quantityText(mood, 'time', 'min', [1, max]);

const settings = (mood: Mood) =>
  fc.record(
    {
      backwash: minutes(mood, 20),
      brine: minutes(mood, 90),
      draw: minutes(mood, 40),
      'slow-rinse': minutes(mood, 60),
      'fast-rinse': minutes(mood, 15),
      refill: minutes(mood, 30),
      volume: quantityText(mood, 'volume', 'gal', [100, 9000]),
      days: fc.constantFrom(1, 3, 7, 0.001, 1e9, 1e300),
      at: fc.constantFrom('02:00', '99:99'),
    },
    { requiredKeys: [] },
  );

const operationDone = (mood: Mood, family: Family) =>
  fc.record(
    {
      operation: idFrom(
        mood,
        family.operations.map(({ id }) => id),
      ),
      instance: fc.integer({ min: 1, max: 9 }),
      counted: fc.dictionary(fc.constantFrom('seal', 'spacer', 'ring', 'plug', 'constructor'), fc.nat(20)),
      at: instant,
      entry: oddText(mood),
    },
    { requiredKeys: ['operation'] },
  );

const decided = (mood: Mood, family: Family) =>
  fc.oneof(
    fc.record({
      what: fc.constant('fault' as const),
      value: idFrom(
        mood,
        family.faults.map(({ id }) => id),
      ),
    }),
    fc.record({
      what: fc.constant('convert' as const),
      value: idFrom(
        mood,
        family.features.flatMap(({ id, values }) => values.map((value) => `${id}:${value.id}`)),
      ),
    }),
    fc.record(
      {
        what: fc.constant('dose' as const),
        value: idFrom(mood, ['6 lb/ft3', '120 g/L', '10.5 lb/ft3', '8', '0 lb/ft3', '1e300 lb/ft3']),
        reason: textIn(mood),
      },
      { requiredKeys: ['what', 'value'] },
    ),
  );

const proofChecks = [
  'outlet-hardness',
  'drain-in-service',
  'backwash-flow',
  'brine-draw',
  'refill-water',
  'air-gap',
  'no-leaks',
  'clock-right',
  'hardness-at-the-end',
  'nothing-known',
] as const;

const proof = (mood: Mood) =>
  fc.record(
    {
      check: fc.constantFrom(...proofChecks),
      value: fc.oneof(
        quantityText(mood, 'flow', 'gpm', [0, 8]),
        quantityText(mood, 'hardness', 'gpg', [0, 3]),
        quantityText(mood, 'volume', 'gal', [1, 12]),
        quantityText(mood, 'length', 'in', [0, 3]),
        oddText(mood),
      ),
      state: fc.constantFrom('seen', 'not-seen'),
      u: quantityText(mood, 'flow', 'gpm', [0, 1]),
      at: instant,
      entry: oddText(mood),
    },
    { requiredKeys: ['check'] },
  );

const ids = ['s1', 'f1', 'twin', 's1'] as const;

const visitOf = (mood: Mood, equipment: Equipment, family: Family): fc.Arbitrary<VisitDocument> => {
  const conditionerId = fc.constantFrom(...ids);
  const of = fc.oneof(
    { weight: 12, arbitrary: fc.constant('s1') },
    { weight: 1, arbitrary: fc.constantFrom('f1', 'elsewhere') },
  );
  const partIds = idFrom(
    mood,
    family.parts.map(({ id }) => id),
  );
  const toolIds = idFrom(
    mood,
    family.tools.map(({ id }) => id),
  );
  const list = <T>(one: fc.Arbitrary<T>, maxLength: number): fc.Arbitrary<T[]> =>
    fc.array(one, { maxLength });
  const conditioners = fc
    .tuple(
      arbitraryConditioner(mood, equipment, family, 's1'),
      list(
        conditionerId.chain((id) => arbitraryConditioner(mood, equipment, family, id)),
        2,
      ),
    )
    .map(([first, others]) => [first, ...others]);
  return fc.record(
    {
      schema: fc.constant(1),
      id: fc.constantFrom('v1', '0', 'a-b-c'),
      definitions: oddText(mood),
      date: day,
      by: fc.record({ name: oddText(mood), company: oddText(mood) }, { requiredKeys: ['name'] }),
      note: textIn(mood),
      site: site(mood),
      water: list(water(mood), 3),
      demand: fc.record(
        {
          daily: knownText(mood, quantityText(mood, 'volume', 'gal', [20, 4000])),
          peak: flow(mood, 30),
          usual: flow(mood, 15),
        },
        { requiredKeys: [] },
      ),
      supply: fc.record(
        {
          pressure: knownText(mood, quantityText(mood, 'pressure', 'psi', [15, 120])),
          flow: flow(mood, 30),
          drain: flow(mood, 20),
          drainPipe: quantityText(mood, 'length', 'in', [0.5, 2]),
        },
        { requiredKeys: [] },
      ),
      conditioners,
      subject: of,
      complaint: fc.record(
        {
          words: textIn(mood),
          kinds: list(
            idFrom(
              mood,
              family.complaints.map(({ id }) => id),
            ),
            3,
          ),
          since: textIn(mood),
        },
        { requiredKeys: ['words'] },
      ),
      history: fc.record(
        {
          changed: textIn(mood),
          changes: list(
            idFrom(
              mood,
              family.changes.map(({ id }) => id),
            ),
            3,
          ),
          lastWork: fc.record({ by: oddText(mood), when: day, what: textIn(mood) }, { requiredKeys: [] }),
        },
        { requiredKeys: [] },
      ),
      answers: list(answer(mood, tellsFor(family, equipment), of), 8),
      readings: list(reading(mood, family, of), 10),
      apart: fc.record(
        {
          water: fc.constantFrom('on', 'off'),
          pressure: fc.constantFrom('full', 'none'),
          power: fc.constantFrom('on', 'off'),
          piston: fc.constantFrom('home', 'removal'),
          bypass: fc.constantFrom('service', 'bypass'),
          stop: fc.constantFrom(...stops),
        },
        { requiredKeys: [] },
      ),
      gate: fc.record(
        {
          kit: list(partIds, 3),
          tools: list(toolIds, 4),
          photographed: fc.boolean(),
          priceAgreed: fc.boolean(),
          outageAgreed: fc.boolean(),
          wayBack: textIn(mood),
        },
        { requiredKeys: [] },
      ),
      acknowledged: list(
        fc.record(
          {
            caution: idFrom(
              mood,
              family.cautions.map(({ id }) => id),
            ),
            at: instant,
          },
          { requiredKeys: ['caution'] },
        ),
        3,
      ),
      photos: list(fc.record({ file: oddText(mood), of: textIn(mood) }, { requiredKeys: ['file'] }), 2),
      signatures: list(fc.record({ name: oddText(mood), at: instant }, { requiredKeys: ['name'] }), 2),
      handOver: fc.record({ to: oddText(mood), said: textIn(mood), at: instant }, { requiredKeys: [] }),
      meterNow: quantityText(mood, 'volume', 'gal', [0, 9000]),
      lastRegeneration: instant,
      done: list(operationDone(mood, family), 25),
      used: list(fc.record({ part: partIds, count: fc.integer({ min: 1, max: 9 }) }), 4),
      decided: list(decided(mood, family), 3),
      settings: fc.record({ found: settings(mood), set: settings(mood) }, { requiredKeys: [] }),
      proofs: list(proof(mood), 8),
      stock: list(fc.record({ part: partIds, count: fc.nat(20) }), 5),
    },
    { requiredKeys: ['schema', 'id', 'site', 'conditioners', 'subject'] },
  );
};

/**
 * Visit documents that the schema takes, from what a technician writes to what only a fuzzer does: anything may be
 * missing, zero, huge, of no known id or of the wrong family.
 */
export const arbitraryVisit = (equipment: Equipment): fc.Arbitrary<VisitDocument> => {
  const families = [...equipment.families.values()];
  const moodNames: readonly Mood[] = ['sane', 'odd', 'absurd'];
  const made = moodNames
    .filter((mood) => mood in moods)
    .flatMap((mood) => families.map((family) => visitOf(mood, equipment, family)));
  return fc.oneof(...made);
};
