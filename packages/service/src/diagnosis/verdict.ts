import { quantity } from '@brinewright/units';
import { type Message, message, type Text } from '@brinewright/words';
import type { Situation } from '../situation/situation.ts';
import { type ActionGroup, type NextTest, noneOfThese } from './diagnosis.ts';

/** From these odds on, acting is cheaper than knowing more; ours. */
const actFrom = 0.8;

/** Faults less likely than this are not counted beside the leading one; ours. */
const leastCounted = 0.01;

export type Found = {
  readonly groups: readonly ActionGroup[];
  readonly next: readonly NextTest[];
  /** Something was told, seen or measured. */
  readonly heard: boolean;
  readonly oddsOf: (fault: string) => number;
};

/** `chosen` is the fault that the technician decided on. */
export type Verdict = { readonly act?: ActionGroup; readonly chosen?: string; readonly says: Message };

/**
 * Whether to act, and the sentence that says so: what the technician decided stands first; then a group clear
 * enough; then, with no test left that helps, the leading one, named with what it cannot be told from.
 */
export const verdict = (s: Situation, found: Found): Verdict => {
  const { groups, next, heard } = found;
  const chosen = decidedFault(s, groups);
  if (chosen !== undefined)
    return {
      act: chosen.group,
      chosen: chosen.fault,
      says: message('diagnosis.says.decided', { fault: titleOf(s, chosen.fault) }),
    };
  const [lead, second] = groups;
  const [test] = next;
  if (lead === undefined) return { says: message('diagnosis.says.none-fits') };
  if (!heard) return { says: notBegun(test) };
  if (lead.key === noneOfThese) return { says: noneLeads(test) };
  if (lead.p >= actFrom) return { act: lead, says: clear(s, lead, found) };
  if (test !== undefined) return { says: testNext(s, lead, test, found) };
  return { act: lead, says: cannotTell(s, lead, second, found) };
};

/** The last fault the technician decided on, if the family knows it. */
const decidedFault = (s: Situation, groups: readonly ActionGroup[]) => {
  const fault = s.visit.decided?.findLast(({ what }) => what === 'fault')?.value;
  const group = groups.find(({ faults }) => fault !== undefined && faults.includes(fault));
  return fault === undefined || group === undefined || group.key === noneOfThese
    ? undefined
    : { fault, group };
};

const notBegun = (test: NextTest | undefined): Message =>
  test === undefined
    ? message('diagnosis.says.nothing-told')
    : message('diagnosis.says.begin', { test: test.test.ask });

const noneLeads = (test: NextTest | undefined): Message =>
  test === undefined
    ? message('diagnosis.says.none-fits')
    : message('diagnosis.says.none-leads', { test: test.test.ask });

const clear = (s: Situation, lead: ActionGroup, found: Found): Message => {
  const [first, other] = lead.named;
  const odds = stated(lead.p);
  return other === undefined || lead.named.length > 2
    ? message('diagnosis.says.act', { fault: leadTitle(s, lead, found), odds })
    : message('diagnosis.says.act-alike', { fault: titleOf(s, first), other: titleOf(s, other), odds });
};

const testNext = (s: Situation, lead: ActionGroup, { test }: NextTest, found: Found): Message =>
  message('diagnosis.says.test', {
    fault: leadTitle(s, lead, found),
    odds: stated(lead.p),
    test: test.ask,
  });

const cannotTell = (
  s: Situation,
  lead: ActionGroup,
  second: ActionGroup | undefined,
  found: Found,
): Message => {
  const first = leadTitle(s, lead, found);
  const odds = stated(lead.p);
  return second === undefined
    ? message('diagnosis.says.act', { fault: first, odds })
    : message('diagnosis.says.cannot-tell', { first, second: titleOf(s, second.faults[0]), odds });
};

const titleOf = ({ family }: Situation, fault: string | undefined): Text | Message =>
  fault === undefined || fault === noneOfThese
    ? message('diagnosis.none-of-these')
    : (family.faults.find(({ id }) => id === fault)?.title ?? fault);

/** Odds are said of a repair: where its likeliest fault does not hold them alone, the others are counted. */
const leadTitle = (s: Situation, lead: ActionGroup, { oddsOf }: Found): Text | Message => {
  const [first, ...others] = lead.faults;
  const fault = titleOf(s, first);
  const alone = first !== undefined && stated(oddsOf(first)).si === stated(lead.p).si;
  const count = others.filter((other) => oddsOf(other) >= leastCounted).length;
  return alone || count === 0 ? fault : message('diagnosis.with-others', { fault, count });
};

/** Odds that rest on stated odds are said to the nearest 5 %, never as certain and never as impossible. */
const stated = (p: number) => quantity('share', Math.min(0.95, Math.max(0.05, Math.round(p * 20) / 20)));

/** The first questions always: what changed, and who worked on it last. */
export const firstQuestions = ({ visit: { history } }: Situation): readonly Message[] => [
  ...(history?.changed === undefined && history?.changes === undefined
    ? [message('diagnosis.ask.changed')]
    : []),
  ...(history?.lastWork === undefined ? [message('diagnosis.ask.last-work')] : []),
];
