import type { Family, Fits } from '@brinewright/equipment';
import { english, type MessageKey, type MessageValue, message, type Text } from '@brinewright/words';

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

export const featureTitle = ({ features }: Family, id: string): Text =>
  features.find((one) => one.id === id)?.title ?? id;

export const valueTitle = ({ features }: Family, feature: string, value: string): Text =>
  features.find(({ id }) => id === feature)?.values.find(({ id }) => id === value)?.title ?? value;

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
