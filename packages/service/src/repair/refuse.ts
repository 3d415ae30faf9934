import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { Situation } from '../situation/situation.ts';
import type { Billed } from './lines.ts';
import type { Bill } from './parts-for.ts';
import type { Remaining } from './repair.ts';

/** A role that some remaining variant needs and no part serves: nothing is adapted. */
export const refusals = (s: Situation, bills: Billed, roles: readonly string[]): readonly Message[] =>
  roles.flatMap((role) => {
    const served = (bill: Bill): boolean =>
      [...bill.keys()].some((id) => {
        const part = s.family.parts.find((candidate) => candidate.id === id);
        return (
          part?.is === role ||
          Object.keys(part?.holds ?? {}).some(
            (held) => s.family.parts.find((p) => p.id === held)?.is === role,
          )
        );
      });
    return bills.length > 0 && !bills.every(({ bill }) => served(bill))
      ? [message('repair.no-part', { role })]
      : [];
  });

/** Said once the cold build is the likelier one; below that the next tell decides. */
const doubtful = 0.5;

/** Cold-water parts fail in hot water: no part list makes that right. */
export const tooHot = (s: Situation, remaining: Remaining): readonly Message[] => {
  const warmest = s.figures['situation.temperature.warmest'];
  if (warmest === undefined || warmest.by.kind !== 'given' || warmest.by.how === 'assumed') return [];
  const limits = s.family.limits.temperature;
  const over = remaining.filter(({ variant }) => {
    const limit = limits[variant.water ?? 'any'] ?? limits.any;
    return limit !== undefined && warmest.quantity.si > limit.si;
  });
  const share = over.reduce((sum, { p }) => sum + p, 0);
  return share > doubtful
    ? [message('repair.too-hot', { warmest: warmest.quantity, odds: quantity('share', share) })]
    : [];
};
