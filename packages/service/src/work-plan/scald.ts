import type { Variant } from '@brinewright/equipment';
import type { Situation } from '../situation/situation.ts';

/** 110 °F: skin stands it, hotter scalds sooner or later. Common practice, no source. */
const scalding = 316.483;

/** The water may come hot enough to scald, by the highest temperature given. Where nothing is known it counts as cold. */
export const isScalding = ({ figures }: Situation): boolean =>
  ['coldest', 'mean', 'warmest'].some(
    (which) => (figures[`situation.temperature.${which}`]?.quantity.si ?? 0) > scalding,
  );

/** A unit that has to cool before it is vented: hot water, or a build for hot water of whose water nothing was said. */
export const mayScald = (s: Situation, variants: readonly Variant[]): boolean =>
  isScalding(s) || (!isTemperatureGiven(s) && variants.some(({ water }) => water === 'hot'));

const isTemperatureGiven = ({ figures }: Situation): boolean =>
  ['mean', 'warmest'].some((which) => {
    const by = figures[`situation.temperature.${which}`]?.by;
    return by?.kind === 'given' && by.how !== 'assumed';
  });
