import type { Quantity, UnitSystem } from '@brinewright/units';
import {
  formatMessage,
  formatQuantity,
  formatText,
  type Language,
  type Message,
  type MessageKey,
  type MessageValue,
  message,
  type Text,
} from '@brinewright/words';

/** How the reader wants to be spoken to. */
export type ReaderChoice = { readonly language: Language; readonly system: UnitSystem };

/** Words in the reader's language and units; only the worker speaks, screens show what it said. */
export type Speech = {
  readonly reader: ReaderChoice & { readonly currency?: string | undefined };
  readonly say: (what: Message) => string;
  readonly word: (key: MessageKey, values?: Readonly<Record<string, MessageValue>>) => string;
  readonly text: (text: Text) => string;
  readonly quantity: (quantity: Quantity) => string;
};

export const speechFor = (reader: Speech['reader']): Speech => ({
  reader,
  say: (what) => formatMessage(what, reader),
  word: (key, values) => formatMessage(message(key, values), reader),
  text: (text) => formatText(text, reader.language),
  quantity: (quantity) => formatQuantity(quantity, reader).text,
});
