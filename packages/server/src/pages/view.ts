import { dated } from '@brinewright/papers';
import { formatText, type MessageKey, type MessageValue, type Reader, type Text } from '@brinewright/words';
import { wordOf } from '../http/reader.ts';

/** Who reads a page, and what to call things there. */
export type View = {
  readonly reader: Reader;
  readonly word: (key: MessageKey, values?: Readonly<Record<string, MessageValue>>) => string;
  readonly text: (text: Text) => string;
  /** '25 Nov 2026' for '2026-11-25'. */
  readonly day: (day: string) => string;
  /** '25 Nov 2026, 14:05' by the clock of the place where it was. */
  readonly moment: (at: string, zone?: string) => string;
  /** The address asked for, for links that change the language only. */
  readonly address: string;
};

export const viewFor = (reader: Reader, address: string): View => {
  const word: View['word'] = (key, values) => wordOf(reader, key, values);
  const day = (text: string): string => dated({ word }, text);
  return {
    reader,
    word,
    text: (text) => formatText(text, reader.language),
    day,
    moment: (at, zone) => momentText(at, zone, day),
    address,
  };
};

const momentText = (at: string, zone: string | undefined, day: View['day']): string => {
  const time = new Date(at);
  if (Number.isNaN(time.getTime())) return at;
  const parts = new Map(
    clockOf(zone)
      .formatToParts(time)
      .map(({ type, value }) => [type, value]),
  );
  const [year, month, date] = (['year', 'month', 'day'] as const).map((part) => parts.get(part) ?? '');
  return `${day(`${year}-${month}-${date}`)}, ${parts.get('hour') ?? ''}:${parts.get('minute') ?? ''}`;
};

/** A zone comes from a device and may be anything. */
const clockOf = (timeZone: string | undefined): Intl.DateTimeFormat => {
  try {
    return new Intl.DateTimeFormat('en-US', { ...parts, ...(timeZone === undefined ? {} : { timeZone }) });
  } catch {
    return new Intl.DateTimeFormat('en-US', { ...parts, timeZone: 'UTC' });
  }
};

const parts: Intl.DateTimeFormatOptions = {
  year: 'numeric',
  month: '2-digit',
  day: '2-digit',
  hour: '2-digit',
  minute: '2-digit',
  hourCycle: 'h23',
};
