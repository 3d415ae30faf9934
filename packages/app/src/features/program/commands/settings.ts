import type { Draft, Json } from '@brinewright/journal';
import { parseQuantity } from '@brinewright/units';
import type { SettingField } from '../../../engine/views/program/fields.ts';
import type { SettingRow } from '../../../engine/views/program/settings.ts';
import { aboutVisit, type Place } from '../../../offline/draft-about.ts';

/** What stands in one field of the form. */
export type Typed = { readonly figure: string; readonly unit: string };
export type TypedSettings = Readonly<Record<string, Typed>>;

/** All as advised: what the main action says was keyed in. */
export const setAsAdvised = (about: Place, rows: readonly SettingRow[]): readonly Draft[] => {
  const settings = rows.flatMap(({ name, advised }) =>
    advised === undefined ? [] : [[name, advised] as const],
  );
  return settings.length === 0 ? [] : [aboutVisit(about, 'setting-set', Object.fromEntries(settings))];
};

/** The settings written down in the form, found or really set; an empty field says nothing. */
export const settingsWritten = (
  about: Place,
  kind: 'setting-found' | 'setting-set',
  fields: readonly SettingField[],
  typed: TypedSettings,
): readonly Draft[] => {
  const settings = fields.flatMap(({ name, ...field }) => {
    const value = typedValue(field, typed[name]);
    return value === undefined ? [] : [[name, value] as const];
  });
  return settings.length === 0 ? [] : [aboutVisit(about, kind, Object.fromEntries(settings))];
};

/** Whether a field holds something that cannot be read. */
export const isWrong = (field: SettingField, typed: Typed | undefined): boolean =>
  typed !== undefined && typed.figure.trim() !== '' && typedValue(field, typed) === undefined;

const typedValue = ({ kind }: Pick<SettingField, 'kind'>, typed: Typed | undefined): Json | undefined => {
  const figure = typed?.figure.trim().replace(',', '.') ?? '';
  if (typed === undefined || figure === '') return undefined;
  if (kind === 'hour') return hourOf(typed.figure.trim());
  if (kind === 'count') return Number(figure) > 0 ? Number(figure) : undefined;
  const text = `${figure} ${typed.unit}`;
  return parseQuantity(text, kind).ok ? text : undefined;
};

/** '2:00' and '2' are both two in the night. */
const hourOf = (text: string): string | undefined => {
  const [, hour = '', minute = '00'] = /^(\d{1,2})(?:[:.](\d{2}))?$/u.exec(text) ?? [];
  const isTime = hour !== '' && Number(hour) < 24 && Number(minute) < 60;
  return isTime ? `${hour.padStart(2, '0')}:${minute}` : undefined;
};
