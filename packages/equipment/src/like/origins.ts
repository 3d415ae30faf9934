import type { Path, Place } from '@brinewright/words';
import type { Origins } from '../model/family.ts';
import type { Resolved } from './resolve.ts';

/** Where each line of a merged family stands, by dotted path: in its own file, else in the stock's. */
export const originsOf = ({ written, placeOf }: Pick<Resolved, 'written' | 'placeOf'>): Origins => {
  const places = new Map<string, Place>();
  const walk = (value: unknown, path: Path): void => {
    const place = placeOf(path, 'key');
    if (place !== undefined) places.set(path.join('.'), place);
    if (typeof value !== 'object' || value === null) return;
    for (const [key, inner] of Object.entries(value)) walk(inner, [...path, key]);
  };
  walk(written, []);
  return places;
};
