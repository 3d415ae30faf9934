import type { Family, Fits } from '@brinewright/equipment';
import { english, type MessageKey, type MessageValue, message } from '@brinewright/words';
import { featureTitle, valueTitle } from '../recognition/titles.ts';

export { featureTitle, valueTitle };

/** Features and values as the definition calls them, one after the other: a sentence part in the reader's language. */
export const fitsTitled = (family: Family, fits: Fits): MessageValue =>
  joined(
    'repair.features',
    Object.entries(fits).map(([id, allowed]) =>
      message('repair.feature', {
        feature: featureTitle(family, id),
        values: joined(
          'repair.either',
          allowed.map((value) => valueTitle(family, id, value)),
        ),
      }),
    ),
  );

const joined = (
  by: 'repair.features' | 'repair.either',
  [first, ...rest]: readonly MessageValue[],
): MessageValue => {
  if (first === undefined) return '';
  return rest.length === 0 ? first : message(by, { first, rest: joined(by, rest) });
};

const isKey = (key: string): key is MessageKey => Object.hasOwn(english, key);

/** A role as the trade calls it; a role that only a definition knows, by its id. */
export const roleTitle = (role: string): MessageValue => {
  const key = `cli.role.${role}`;
  return isKey(key) ? message(key) : role;
};
