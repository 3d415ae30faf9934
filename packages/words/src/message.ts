import type { Quantity } from '@brinewright/units';
import type { MessageKey } from './catalogue.ts';

export type Language = 'en' | 'es';

/** A value inside a sentence: a word, a number, a quantity, or another sentence. */
export type MessageValue = string | number | Quantity | Message | Text;

/** A sentence is data until it is shown. */
export type Message = {
  readonly key: MessageKey;
  readonly values?: Readonly<Record<string, MessageValue>>;
};

/** Words of the people who write definitions and visits, plain or by language. */
export type Text = string | { readonly en: string; readonly es?: string | undefined };

export const message = (key: MessageKey, values?: Readonly<Record<string, MessageValue>>): Message =>
  values === undefined ? { key } : { key, values };
