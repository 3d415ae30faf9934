import type { Draft } from '@brinewright/journal';
import { aboutVisit, type Place } from '../../../offline/draft-about.ts';

type Agreed = 'photographed' | 'priceAgreed' | 'outageAgreed';

export const gateAgreed = (place: Place, what: Agreed, is: boolean): readonly Draft[] => [
  aboutVisit(place, 'gate-checked', { [what]: is }),
];

export const wayBackSaid = (place: Place, wayBack: string): readonly Draft[] => [
  aboutVisit(place, 'gate-checked', { wayBack }),
];

/** The list is written whole: one taken up or laid down. */
export const handChanged = (
  place: Place,
  of: 'kit' | 'tools',
  hand: readonly string[],
  id: string,
): readonly Draft[] => [
  aboutVisit(place, 'gate-checked', {
    [of]: hand.includes(id) ? hand.filter((one) => one !== id) : [...hand, id],
  }),
];
