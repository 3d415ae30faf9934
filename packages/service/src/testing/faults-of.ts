import { english, formatMessage, type Message, missingValues, type Reader } from '@brinewright/words';
import type { Assessment } from '../assessment.ts';
import type { Figure, Figures } from '../derivation/figure.ts';

/** What must hold of every assessment; whatever does not, named for the message of a test. */
export const faultsOf = (assessment: Assessment): readonly string[] => [
  ...Object.values(assessment.figures).flatMap((figure) => faultsOfFigure(figure, assessment.figures)),
  ...walked(assessment, '', new Set()),
];

const faultsOfFigure = (figure: Figure, figures: Figures): readonly string[] => {
  const numbers = [figure.quantity.si, figure.u ?? 0, ...Object.values(figure.spread ?? {})];
  const strangers = [...Object.values(figure.inputs), ...Object.keys(figure.spread ?? {})].filter(
    (id) => !Object.hasOwn(figures, id),
  );
  return [
    ...(numbers.every(Number.isFinite) ? [] : [`${figure.id}: not finite`]),
    ...(figure.u === undefined || figure.u > 0 ? [] : [`${figure.id}: u is ${figure.u}`]),
    ...strangers.map((id) => `${figure.id}: no figure ${id}`),
    ...(figure.by.kind === 'choice' && !Object.hasOwn(english, `derivation.rule.${figure.by.rule}`)
      ? [`${figure.id}: no words for the rule ${figure.by.rule}`]
      : []),
  ];
};

const isMessage = (value: object): value is Message =>
  'key' in value &&
  typeof value.key === 'string' &&
  Object.keys(value).every((name) => name === 'key' || name === 'values');

const readers: readonly Reader[] = [
  { language: 'en', system: 'us' },
  { language: 'es', system: 'metric' },
];

const faultsOfMessage = (message: Message): readonly string[] => {
  const missing = missingValues(message);
  if (missing.length > 0) return missing;
  return readers.flatMap((reader) => {
    try {
      return formatMessage(message, reader) === '' ? [`${message.key}: says nothing`] : [];
    } catch (error) {
      return [`${message.key}: ${String(error)}`];
    }
  });
};

/** The situation holds the definitions it was read against just as the caller gave them. */
const given: readonly string[] = ['equipment', 'family'].map((name) => `stages.situation.value.${name}`);

/**
 * Every object once: its messages say something, and it is plain JSON but for belief, whose odds are a Float64Array: no
 * map, no function, no number that JSON has not.
 */
const walked = (value: unknown, at: string, seen: Set<object>): readonly string[] => {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${at}: ${value}`];
  if (typeof value === 'function' || typeof value === 'bigint' || typeof value === 'symbol')
    return [`${at}: a ${typeof value}`];
  if (typeof value !== 'object' || value === null || value instanceof Float64Array) return [];
  if (given.includes(at) || seen.has(value)) return [];
  seen.add(value);
  if (!Array.isArray(value) && Object.getPrototypeOf(value) !== Object.prototype)
    return [`${at}: not a plain object`];
  const said = isMessage(value) ? faultsOfMessage(value) : [];
  const inside = Object.entries(value).flatMap(([name, inner]) =>
    walked(inner, at === '' ? name : `${at}.${name}`, seen),
  );
  return [...said, ...inside];
};
