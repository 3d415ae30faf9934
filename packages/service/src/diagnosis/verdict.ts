import { quantity } from '@brinewright/units';
import { type Message, message, type Text } from '@brinewright/words';
import type { Situation } from '../situation/situation.ts';
import { type ActionGroup, type NextTest, noneOfThese } from './diagnosis.ts';

/** From these odds on, acting is cheaper than knowing more; ours. */
const actFrom = 0.8;

export type Found = {
  readonly groups: readonly ActionGroup[];
  readonly next: readonly NextTest[];
  /** Something was told, seen or measured. */
  readonly heard: boolean;
};

export type Verdict = { readonly act?: ActionGroup; readonly decided: boolean; readonly says: Message };

/**
 * Whether to act, and the sentence that says so: what the technician decided stands first; then a group clear
 * enough; then, with no test left that helps, the leading one, named with what it cannot be told from.
 */
export const verdict = (s: Situation, { groups, next, heard }: Found): Verdict => {
  const chosen = decidedFault(s, groups);
  if (chosen !== undefined)
    return {
      act: chosen.group,
      decided: true,
      says: message('diagnosis.says.decided', { fault: titleOf(s, chosen.fault) }),
    };
  const [lead, second] = groups;
  const [test] = next;
  if (lead === undefined) return { decided: false, says: message('diagnosis.says.none-fits') };
  if (!heard) return { decided: false, says: notBegun(test) };
  if (lead.key === noneOfThese) return { decided: false, says: noneLeads(test) };
  if (lead.p >= actFrom) return { act: lead, decided: false, says: clear(s, lead) };
  if (test !== undefined) return { decided: false, says: testNext(s, lead, test) };
  return { act: lead, decided: false, says: cannotTell(s, lead, second) };
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

const clear = (s: Situation, lead: ActionGroup): Message => {
  const [first, other] = lead.named;
  const values = { fault: titleOf(s, first), odds: stated(lead.p) };
  return other === undefined
    ? message('diagnosis.says.act', values)
    : message('diagnosis.says.act-alike', { ...values, other: titleOf(s, other) });
};

const testNext = (s: Situation, lead: ActionGroup, { test }: NextTest): Message =>
  message('diagnosis.says.test', {
    fault: titleOf(s, lead.faults[0]),
    odds: stated(lead.p),
    test: test.ask,
  });

const cannotTell = (s: Situation, lead: ActionGroup, second: ActionGroup | undefined): Message => {
  const first = titleOf(s, lead.faults[0]);
  const odds = stated(lead.p);
  return second === undefined
    ? message('diagnosis.says.act', { fault: first, odds })
    : message('diagnosis.says.cannot-tell', { first, second: titleOf(s, second.faults[0]), odds });
};

const titleOf = ({ family }: Situation, fault: string | undefined): Text | Message =>
  fault === undefined || fault === noneOfThese
    ? message('diagnosis.none-of-these')
    : (family.faults.find(({ id }) => id === fault)?.title ?? fault);

/** Odds that rest on stated odds are said to the nearest 5 %, never as certain and never as impossible. */
const stated = (p: number) => quantity('share', Math.min(0.95, Math.max(0.05, Math.round(p * 20) / 20)));

/** The first questions always: what changed, and who worked on it last. */
export const firstQuestions = ({ visit: { history } }: Situation): readonly Message[] => [
  ...(history?.changed === undefined && history?.changes === undefined
    ? [message('diagnosis.ask.changed')]
    : []),
  ...(history?.lastWork === undefined ? [message('diagnosis.ask.last-work')] : []),
];
