import { formatNumber } from './format-number.ts';
import { formatQuantity, type Reader } from './format-quantity.ts';
import type { Language, Message, MessageValue, Text } from './message.ts';
import { type Pattern, type Placeholder, patternOf } from './pattern.ts';

/** Words of a definition in the reader's language; English where there are no others. */
export const formatText = (text: Text, language: Language): string =>
  typeof text === 'string' ? text : (text[language] ?? text.en);

/**
 * A message as a sentence. Quantities, texts and messages inside it are formatted first.
 *
 * A value that was not given shows as ‹name›, a key that is not known as ‹key›: the rest of the sentence is
 * still worth reading. Tests look for them with `missingValues`.
 */
export const formatMessage = (message: Message, reader: Reader): string => {
  const pattern = patternOf(reader.language, message.key);
  if (pattern === undefined) return `‹${message.key}›`;
  const uncounted = missingFrom(message, pattern).find(({ use }) => use === 'counted');
  if (uncounted !== undefined) return `‹${message.key}: ${uncounted.name}›`;
  const values = byCountLast(pattern.placeholders).map(({ name, use }) => [
    name,
    filled(message.values?.[name], name, use, reader),
  ]);
  return String(pattern.format.format(Object.fromEntries(values)));
};

/** A name that is both counted and shown must reach the plural as a number. */
const byCountLast = (placeholders: readonly Placeholder[]): readonly Placeholder[] => [
  ...placeholders.filter(({ use }) => use !== 'counted'),
  ...placeholders.filter(({ use }) => use === 'counted'),
];

/** Values that a message, or a message inside it, needs and does not have, as 'key: name'. */
export const missingValues = (message: Message): readonly string[] => {
  const pattern = patternOf('en', message.key);
  if (pattern === undefined) return [`${message.key}: no such key`];
  const inside = Object.values(message.values ?? {})
    .filter(isMessage)
    .flatMap(missingValues);
  return [...missingFrom(message, pattern).map(({ name }) => `${message.key}: ${name}`), ...inside];
};

const missingFrom = (message: Message, pattern: Pattern): readonly Placeholder[] =>
  pattern.placeholders.filter(({ name }) => message.values?.[name] === undefined);

const isMessage = (value: MessageValue): value is Message => typeof value === 'object' && 'key' in value;

const filled = (
  value: MessageValue | undefined,
  name: string,
  use: Placeholder['use'],
  reader: Reader,
): string | number => {
  if (value === undefined) return `‹${name}›`;
  if (use === 'counted') return countOf(value);
  return shown(value, reader);
};

const countOf = (value: MessageValue): number => {
  const count = typeof value === 'object' && 'si' in value ? value.si : Number(value);
  if (!Number.isFinite(count)) throw new RangeError(`${JSON.stringify(value)} cannot be counted`);
  return count;
};

const shown = (value: MessageValue, reader: Reader): string => {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return formatNumber(value);
  if (isMessage(value)) return formatMessage(value, reader);
  return 'si' in value ? formatQuantity(value, reader).text : formatText(value, reader.language);
};
