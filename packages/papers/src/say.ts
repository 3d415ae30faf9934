import {
  catalogues,
  formatMessage,
  formatText,
  type Message,
  type MessageKey,
  type MessageValue,
  message,
  type Reader,
  type Text,
} from '@brinewright/words';

export type { Reader } from '@brinewright/words';

export const say = (reader: Reader, what: Message): string => formatMessage(what, reader);

/** A sentence straight from its key. */
export const sayKey = (
  reader: Reader,
  key: MessageKey,
  values?: Readonly<Record<string, MessageValue>>,
): string => say(reader, message(key, values));

export const sayText = (reader: Reader, text: Text): string => formatText(text, reader.language);

/** First letter large, for words that stand alone in a table or at a port. */
export const capital = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1);

/** First letter small, for a name within a sentence. */
export const small = (words: string): string => words.slice(0, 1).toLowerCase() + words.slice(1);

const isMessageKey = (key: string): key is MessageKey => Object.hasOwn(catalogues.en, key);

/** Keys put together at run time: equation, formula, symbol. Nothing when the catalogue has no such word. */
export const wordFor = (key: string, values?: Readonly<Record<string, MessageValue>>): Message | undefined =>
  isMessageKey(key) ? message(key, values) : undefined;
