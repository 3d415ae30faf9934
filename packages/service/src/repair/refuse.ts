import { type Quantity, quantity } from '@brinewright/units';
import { type Issue, type Message, message } from '@brinewright/words';
import type { FigureId } from '../derivation/figure.ts';
import type { Situation } from '../situation/situation.ts';
import type { Billed } from './lines.ts';
import type { Bill } from './parts-for.ts';
import type { Remaining } from './repair.ts';
import { roleTitle } from './titles.ts';

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
      ? [message('repair.no-part', { role: roleTitle(role) })]
      : [];
  });

/** Refused once the cold build is at least as likely as not; above the lesser odds it is a warning. */
const refusedFrom = 0.5;
const warnedFrom = 0.02;

/** Cold-water parts fail in hot water: no part list makes that right. */
export const tooHot = (s: Situation, remaining: Remaining): readonly Message[] => {
  const { warmest, share } = tooHotShare(s, remaining);
  return warmest === undefined || share < refusedFrom
    ? []
    : [message('repair.too-hot', { warmest, odds: quantity('share', share) })];
};

/** The unit may not stand this water: the build is not certain, or the pressure is not the family's. */
export const limitIssues = (s: Situation, remaining: Remaining): readonly Issue[] => [
  ...maybeTooHot(s, remaining),
  ...pressureIssues(s),
];

const maybeTooHot = (s: Situation, remaining: Remaining): readonly Issue[] => {
  const { warmest, share } = tooHotShare(s, remaining);
  if (warmest === undefined || share < warnedFrom || share >= refusedFrom) return [];
  return [
    {
      code: 'maybe-too-hot',
      severity: 'warning',
      at: ['water'],
      message: message('repair.maybe-too-hot', { warmest, odds: quantity('share', share) }),
      mend: message('repair.maybe-too-hot-mend'),
    },
  ];
};

/** The warmest water that somebody knows, and the odds of the builds that it is too warm for. */
const tooHotShare = (s: Situation, remaining: Remaining) => {
  const warmest = known(s, 'situation.temperature.warmest');
  const limits = s.family.limits.temperature;
  const over = remaining.filter(({ variant }) => {
    const limit = limits[variant.water ?? 'any'] ?? limits.any;
    return warmest !== undefined && limit !== undefined && warmest.si > limit.si;
  });
  return { warmest, share: over.reduce((sum, { p }) => sum + p, 0) };
};

const known = ({ figures }: Situation, id: FigureId): Quantity | undefined => {
  const figure = figures[id];
  return figure === undefined || (figure.by.kind === 'given' && figure.by.how === 'assumed')
    ? undefined
    : figure.quantity;
};

const pressureIssues = (s: Situation): readonly Issue[] => {
  const pressure = known(s, 'situation.supply.pressure');
  const limits = s.family.limits.pressure;
  if (pressure === undefined || limits === undefined) return [];
  const issue = (is: 'above' | 'below', limit: Quantity): Issue => ({
    code: `pressure-${is}`,
    severity: 'warning',
    at: ['supply', 'pressure'],
    message: message(`repair.pressure-${is}`, { pressure, limit, family: s.family.title }),
    mend: message(`repair.pressure-${is}-mend`),
  });
  if (pressure.si > limits.max.si) return [issue('above', limits.max)];
  return pressure.si < limits.min.si ? [issue('below', limits.min)] : [];
};
