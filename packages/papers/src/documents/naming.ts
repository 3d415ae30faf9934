import type { Fits } from '@brinewright/equipment';
import { quantity } from '@brinewright/units';
import { formatQuantity, type Text } from '@brinewright/words';
import { wordFor } from '../say.ts';
import type { Sheet } from './sheet.ts';

/** What the definitions call their things; an id that they do not know stands as it is. */
const titled = (sheet: Sheet, id: string, title: Text | undefined): string =>
  title === undefined ? id : sheet.text(title);

const featureOf = ({ family }: Sheet, feature: string) => family?.features.find(({ id }) => id === feature);

export const featureName = (sheet: Sheet, feature: string): string =>
  titled(sheet, feature, featureOf(sheet, feature)?.title);

export const valueName = (sheet: Sheet, feature: string, value: string): string =>
  titled(sheet, value, featureOf(sheet, feature)?.values.find(({ id }) => id === value)?.title);

/** 'Water it is made for: hot'. */
export const fitsName = (sheet: Sheet, fits: Fits): string =>
  Object.entries(fits)
    .map(([feature, allowed]) => {
      const values = allowed.map((value) => valueName(sheet, feature, value)).join(', ');
      return `${featureName(sheet, feature)}: ${values}`;
    })
    .join('; ');

export const toolName = (sheet: Sheet, id: string): string =>
  titled(sheet, id, sheet.family?.tools.find((one) => one.id === id)?.title);

export const faultName = (sheet: Sheet, id: string): string =>
  titled(sheet, id, sheet.family?.faults.find((one) => one.id === id)?.title);

export const operationName = (sheet: Sheet, id: string): string =>
  titled(sheet, id, sheet.family?.operations.find((one) => one.id === id)?.order);

export const tellName = (sheet: Sheet, id: string): string =>
  titled(sheet, id, sheet.family?.tells.find((one) => one.id === id)?.ask);

/** Words that are put together at run time from an id: a role, a side. */
export const wordOf = (sheet: Sheet, area: 'role' | 'side', id: string): string => {
  const word = wordFor(`cli.${area}.${id}`);
  return word === undefined ? id : sheet.say(word);
};

/** In minutes however many, so that times of one plan can be compared. */
export const minutesName = (sheet: Sheet, minutes: number): string =>
  formatQuantity(quantity('time', minutes * 60), { ...sheet.reader, unit: 'min' }).text;

/** Hands, and what runs by itself meanwhile. */
export const effortName = (
  sheet: Sheet,
  { hands, waiting }: { readonly hands: number; readonly waiting: number },
): string =>
  waiting === 0
    ? minutesName(sheet, hands)
    : sheet.word('cli.minutes-and-waiting', {
        hands: minutesName(sheet, hands),
        waiting: minutesName(sheet, waiting),
      });
