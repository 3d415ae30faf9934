import { parseQuantity, type QuantityKind, unitsOf } from '@brinewright/units';
import fc from 'fast-check';

/** How far a visit strays from what a technician would write: the share of values that are absurd. */
export const moods = { sane: 0, odd: 0.1, absurd: 0.5 } as const;
export type Mood = keyof typeof moods;

/** Mostly the one, now and then the other. */
export const orAbsurd = <T>(mood: Mood, sane: fc.Arbitrary<T>, absurd: fc.Arbitrary<T>): fc.Arbitrary<T> => {
  const share = Math.round(moods[mood] * 100);
  return fc.oneof({ weight: 100 - share, arbitrary: sane }, { weight: share, arbitrary: absurd });
};

const figure = (value: number): string => String(Number(value.toPrecision(4)));

const absurdFigures = ['0', '1e-300', '1e-12', '0.001', '1', '77', '1e6', '1e12', '1e30', '1e150', '1e300'];

/** Any figure in any unit of the kind that still can be read; else the sane text. */
const absurdText = (kind: QuantityKind, otherwise: string): fc.Arbitrary<string> =>
  fc
    .tuple(fc.constantFrom(...absurdFigures), fc.constantFrom(...unitsOf(kind).map(({ symbol }) => symbol)))
    .map(([value, unit]) => `${value} ${unit}`.trim())
    .map((text) => (parseQuantity(text, kind).ok ? text : otherwise));

/** A quantity as text: between two figures in one unit, or absurd. */
export const quantityText = (
  mood: Mood,
  kind: QuantityKind,
  unit: string,
  [min, max]: readonly [number, number],
): fc.Arbitrary<string> => {
  const written = (share: number): string => `${figure(min + (max - min) * share)} ${unit}`.trim();
  const sane = fc.integer({ min: 0, max: 200 }).map((step) => written(step / 200));
  return orAbsurd(mood, sane, absurdText(kind, written(0.5)));
};

/** The plain text, or `{ value, how, u }`. */
export const knownText = (mood: Mood, text: fc.Arbitrary<string>) =>
  fc.oneof(
    { weight: 3, arbitrary: text },
    {
      weight: 1,
      arbitrary: fc.record(
        {
          value: text,
          how: fc.constantFrom('measured', 'read', 'told', 'assumed'),
          u: text,
          entry: oddText(mood),
        },
        { requiredKeys: ['value'] },
      ),
    },
  );

/** An SI value in the first unit of its kind. */
export const siText = (kind: QuantityKind, si: number): string => {
  const row = unitsOf(kind)[0];
  if (row === undefined) throw new Error(`no unit of ${kind}`);
  return `${figure((si - row.offset) / row.factor)} ${row.symbol}`.trim();
};

const strangeTexts = [
  '',
  ' ',
  'yes',
  'null',
  '~',
  '5',
  '1e3',
  '0x1F',
  '2026-11-25',
  '- x',
  '#x',
  'a: b',
  '"',
  "'",
  'a\nb\n',
  ' lead',
  'trail ',
  '\t',
  '\u0000',
  '\u0085\u2028',
  '{name}',
  '💧 ñandú',
  'constructor',
  'x'.repeat(3000),
] as const;

/** Words as people write them, and what only a fuzzer writes. */
export const oddText = (mood: Mood): fc.Arbitrary<string> =>
  orAbsurd(
    mood,
    fc.constantFrom('Hard since summer', 'Agua dura', 'Tom', 'changed the refill', 'salty'),
    fc.oneof(fc.constantFrom(...strangeTexts), fc.string({ unit: 'binary', maxLength: 30 })),
  );

/** Text, plain or by language. */
export const textIn = (mood: Mood) =>
  fc.oneof(oddText(mood), fc.record({ en: oddText(mood), es: oddText(mood) }, { requiredKeys: ['en'] }));
