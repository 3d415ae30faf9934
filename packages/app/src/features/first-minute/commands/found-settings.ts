import type { Draft, Json } from '@brinewright/journal';
import { parseQuantity } from '@brinewright/units';
import type { FoundSetting } from '../../../engine/views/first-minute-view.ts';
import { aboutVisit, type Place } from '../../../offline/draft-about.ts';

/** What was typed for one setting; the unit counts for times and volumes only. */
export type SettingTyped = { readonly figure: string; readonly unit: string };

export type SettingRead =
  | { readonly state: 'empty' }
  | { readonly state: 'wrong' }
  | { readonly state: 'read'; readonly value: Json };

export const readSetting = (
  { kind }: Pick<FoundSetting, 'kind'>,
  typed: SettingTyped | undefined,
): SettingRead => {
  const figure = typed?.figure.trim() ?? '';
  if (figure === '') return { state: 'empty' };
  switch (kind) {
    case 'clock':
      return readClock(figure);
    case 'days': {
      const days = Number(figure);
      return Number.isInteger(days) && days > 0 ? { state: 'read', value: days } : { state: 'wrong' };
    }
    case 'time':
    case 'volume': {
      const text = `${figure} ${typed?.unit ?? ''}`;
      return parseQuantity(text, kind).ok ? { state: 'read', value: text } : { state: 'wrong' };
    }
  }
};

/** '2:00', '02:00' or '0200', as it stands on the clock. */
const readClock = (figure: string): SettingRead => {
  const [, hours, minutes] = /^(\d{1,2})[:.]?(\d{2})$/u.exec(figure) ?? [];
  if (hours === undefined || minutes === undefined) return { state: 'wrong' };
  if (Number(hours) > 23 || Number(minutes) > 59) return { state: 'wrong' };
  return { state: 'read', value: `${hours.padStart(2, '0')}:${minutes}` };
};

/** Only what was typed is said; the rest stays as it was. */
export const settingsFound = (
  about: Place,
  read: Readonly<Record<string, SettingRead>>,
): readonly Draft[] => {
  const said = Object.entries(read).flatMap(([id, one]) =>
    one.state === 'read' ? [[id, one.value] as const] : [],
  );
  return said.length === 0 ? [] : [aboutVisit(about, 'setting-found', Object.fromEntries(said))];
};
