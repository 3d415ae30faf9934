import { type Equipment, type Family, steps } from '@brinewright/equipment';
import fc from 'fast-check';
import { knownText, type Mood, oddText, orAbsurd, quantityText } from './arbitrary-quantity.ts';

/** One of the ids that the definitions have, or one they do not have. */
export const idFrom = (mood: Mood, ids: readonly string[]): fc.Arbitrary<string> =>
  ids.length === 0 ? oddText(mood) : orAbsurd(mood, fc.constantFrom(...ids), oddText(mood));

const idsOf = (list: readonly { readonly id: string }[]): readonly string[] => list.map(({ id }) => id);

const flow = (mood: Mood, max: number) => knownText(mood, quantityText(mood, 'flow', 'gpm', [0.1, max]));
const inches = (mood: Mood, from: number, to: number) =>
  knownText(mood, quantityText(mood, 'length', 'in', [from, to]));
const degrees = (mood: Mood, from: number, to: number) =>
  quantityText(mood, 'temperature', 'degF', [from, to]);

const fitted = (mood: Mood, family: Family) =>
  fc.record(
    {
      controller: idFrom(mood, idsOf(family.controllers)),
      injector: idFrom(mood, idsOf(family.injectors)),
      drain: idFrom(mood, idsOf(family.controls.drain)),
      refill: idFrom(mood, idsOf(family.controls.refill)),
      meter: idFrom(mood, idsOf(family.meters)),
    },
    { requiredKeys: [] },
  );

const measured = (mood: Mood) =>
  fc.record(
    {
      backwash: flow(mood, 12),
      draw: flow(mood, 0.8),
      'slow-rinse': flow(mood, 2),
      'fast-rinse': flow(mood, 12),
      refill: flow(mood, 1.5),
      at: knownText(mood, quantityText(mood, 'pressure', 'psi', [20, 100])),
    },
    { requiredKeys: [] },
  );

const timedSteps = [...steps, 'brine'] as const;

const controller = (mood: Mood) =>
  fc.record(
    {
      holds: orAbsurd(
        mood,
        fc
          .constantFrom(
            [...steps],
            ['backwash', 'brine', 'fast-rinse', 'refill'] as const,
            ['backwash'] as const,
          )
          .map((holds): (typeof timedSteps)[number][] => [...holds]),
        fc.array(fc.constantFrom(...timedSteps), { minLength: 1, maxLength: 8 }),
      ),
      times: fc.constantFrom(
        '1 min to 99 min by 1 min',
        '0 s to 5 h',
        '7 min to 7 min',
        '1 s to 1e9 d by 1 s',
      ),
      starts: fc.subarray<'clock' | 'metered'>(['clock', 'metered']),
      volumes: fc.constantFrom('10 gal to 9990 gal by 10 gal', '0 L to 1 L', '1 m3 to 1e12 m3'),
      days: fc.constantFrom('1 to 12 by 1', '0 to 0', '3 to 1e9'),
    },
    { requiredKeys: ['holds'] },
  );

const layer = (mood: Mood, equipment: Equipment) =>
  fc.record(
    {
      medium: idFrom(mood, ['gel-cation', ...equipment.media.keys()]),
      depth: inches(mood, 18, 48),
      volume: knownText(mood, quantityText(mood, 'volume', 'ft3', [0.5, 15])),
      free: inches(mood, 6, 30),
      age: knownText(mood, quantityText(mood, 'time', 'yr', [0, 15])),
      bead: knownText(mood, quantityText(mood, 'length', 'mm', [0.4, 1])),
      density: knownText(mood, quantityText(mood, 'density', 'kg/m3', [1100, 2700])),
    },
    { requiredKeys: mood === 'sane' ? ['medium', 'depth', 'free'] : ['medium'] },
  );

const tank = (mood: Mood) =>
  fc.record(
    {
      girth: inches(mood, 25, 80),
      wall: inches(mood, 0.1, 0.4),
      diameter: inches(mood, 8, 24),
      height: inches(mood, 44, 72),
    },
    { requiredKeys: mood === 'sane' ? ['girth'] : [] },
  );

const believed = (mood: Mood, family: Family) =>
  fc.dictionary(
    idFrom(mood, idsOf(family.features)),
    idFrom(
      mood,
      family.features.flatMap(({ values }) => idsOf(values)),
    ),
    { maxKeys: 4 },
  );

/** A softener or a filter as it may stand anywhere, of any family or none. */
export const arbitraryConditioner = (mood: Mood, equipment: Equipment, family: Family, id: string) =>
  fc.record(
    {
      id: fc.constant(id),
      name: oddText(mood),
      family: fc.oneof(
        { weight: 15, arbitrary: fc.constant(family.id) },
        { weight: 1, arbitrary: fc.constantFrom('nobody', 'constructor', '') },
      ),
      kind: fc.constantFrom('softener', 'softener', 'filter'),
      believed: believed(mood, family),
      tank: tank(mood),
      media: fc.array(layer(mood, equipment), { maxLength: 3 }),
      fitted: fitted(mood, family),
      measured: measured(mood),
      controller: controller(mood),
      salt: fc.constantFrom('sodium', 'potassium'),
      brineTank: fc.record(
        {
          temperature: knownText(mood, degrees(mood, 40, 90)),
          diameter: inches(mood, 12, 40),
          level: inches(mood, 1, 40),
        },
        { requiredKeys: [] },
      ),
      bedNow: fc.constantFrom('in-use', 'exhausted'),
      pail: fc.record({
        seen: fc.constantFrom('nothing', 'fines', 'beads'),
        rate: quantityText(mood, 'flow', 'gpm', [1, 12]),
        temperature: degrees(mood, 40, 130),
      }),
    },
    {
      requiredKeys:
        mood === 'sane' ? ['id', 'family', 'kind', 'tank', 'media', 'fitted'] : ['id', 'family', 'kind'],
    },
  );
