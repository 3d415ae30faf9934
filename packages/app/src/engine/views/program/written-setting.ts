import type { ProgramSettings } from '@brinewright/service';
import { type Quantity, toUnit, writeQuantity } from '@brinewright/units';

export type SettingName = keyof ProgramSettings;

/** As an entry holds it: text with a unit, a count of days, or a time of day. */
export type Setting = string | number;

/** Seconds of one day. */
export const days = 86_400;

/** As a person would write it in the unit of the controller, where it comes out even; in full where it does not. */
export const writtenSetting = (name: SettingName, value: Quantity): Setting => {
  if (name === 'days') return even(value.si / days) ?? value.si / days;
  for (const unit of value.kind === 'volume' ? ['gal', 'L'] : ['min', 's']) {
    const figure = even(toUnit(value, unit));
    if (figure !== undefined) return `${figure} ${unit}`;
  }
  return writeQuantity(value);
};

/** A whole number that conversion left a few last bits off. */
const even = (figure: number): number | undefined =>
  Math.abs(figure - Math.round(figure)) < 1e-6 ? Math.round(figure) : undefined;
