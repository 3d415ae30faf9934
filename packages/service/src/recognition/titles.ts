import type { Family } from '@brinewright/equipment';
import type { Text } from '@brinewright/words';

/** A feature as the definition calls it; one it does not have, by its id. */
export const featureTitle = ({ features }: Family, id: string): Text =>
  features.find((one) => one.id === id)?.title ?? id;

export const valueTitle = ({ features }: Family, feature: string, value: string): Text =>
  features.find(({ id }) => id === feature)?.values.find(({ id }) => id === value)?.title ?? value;
