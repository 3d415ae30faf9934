import { type Message, type MessageValue, message } from '@brinewright/words';
import type { Target } from '../recognition/recognition.ts';
import { roleTitle } from '../repair/titles.ts';
import type { Situation } from '../situation/situation.ts';
import { isReached } from './aims.ts';
import { listed } from './gate.ts';
import type { Leaving } from './leave-safe.ts';
import { isLater } from './operation-kinds.ts';
import type { Present } from './present.ts';
import type { Scope } from './scope.ts';
import { isShut } from './state.ts';
import { targetSaid } from './target-said.ts';
import { warnings } from './uses.ts';
import type { LeaveSafe, PlanStep } from './work-plan.ts';

export type LeftAs = { readonly into: LeaveSafe['into']; readonly isUnplugged: boolean };

/** What stands on the card that is left at the unit: how it stands, why it was opened, what was done, what is not. */
export const leaveCard = (leaving: Leaving, as: LeftAs): readonly Message[] => {
  const { s, present } = leaving;
  return [
    ...(as.into === 'service' ? inService(s, present) : inBypass(s, as)),
    ...calledFor(s),
    ...doneToday(present),
    ...stillToDo(leaving),
    ...(as.into === 'service' ? costOf(s) : []),
    ...(as.into === 'bypass' || isShut(present.state) ? warnings(s) : []),
  ];
};

const inService = ({ visit }: Situation, present: Present): readonly Message[] => {
  if (present.wasShut || present.steps.some(({ kind }) => kind === 'back') || present.off.length > 0)
    return [message('plan.leave.service')];
  return [message(visit.apart?.bypass === 'bypass' ? 'plan.leave.found-in-bypass' : 'plan.leave.untouched')];
};

const inBypass = ({ kind }: Situation, { isUnplugged }: LeftAs): readonly Message[] => [
  message(isUnplugged ? 'plan.leave.bypass' : 'plan.leave.bypass-powered'),
  message(kind === 'softener' ? 'plan.leave.bypass-hard' : 'plan.leave.bypass-raw'),
  message('plan.leave.bagged'),
];

const calledFor = ({ visit }: Situation): readonly Message[] =>
  visit.complaint === undefined ? [] : [message('plan.leave.called-for', { words: visit.complaint.words })];

const doneToday = ({ steps }: Present): readonly Message[] => {
  const done = steps.flatMap(doneIn);
  return done.length === 0 ? [] : [message('plan.leave.done', { what: listed(done) })];
};

/** Work in the valve, and parts that went in new; what only came off and went back is no news. */
const doneIn = (step: PlanStep): readonly MessageValue[] => {
  if (step.kind === 'operation')
    return step.done && step.operation.phase === 'work' ? [step.operation.order] : [];
  if (step.kind !== 'back' || !step.done) return [];
  return step.puts
    .filter(({ as }) => as === 'new')
    .map(({ role }) => message('plan.leave.new-part', { part: roleTitle(role) }));
};

const stillToDo = ({ scope, present, targets }: Leaving): readonly Message[] => {
  const off = new Set(present.off.map(({ operation }) => operation.id));
  const isDone = (id: string): boolean => present.done.has(id) && !off.has(id);
  const left = targets.filter((target) => !isReached(target, scope, isDone));
  const said = left.filter((target) => !isSaidBy(target, left, scope));
  if (said.length === 0) return [];
  return [message('plan.leave.still', { what: listed(said.map((target) => leftSaid(scope, target))) })];
};

/** Taking out what is renewed, or the operation that sets the program beside the settings themselves. */
const isSaidBy = (target: Target, all: readonly Target[], { operations }: Scope): boolean => {
  const operation = target.kind === 'operation' ? operations.get(target.operation) : undefined;
  if (operation === undefined) return false;
  return all.some((other) => {
    if (other.kind === 'replace') return operation.takesOut.includes(other.role);
    return other.kind === 'settings' && isLater(operation) && operation.always;
  });
};

const leftSaid = ({ family }: Scope, target: Target): MessageValue => {
  const said = targetSaid(family, target);
  return target.kind === 'replace' ? message('plan.leave.new-part', { part: said }) : said;
};

const costOf = ({ figures }: Situation): readonly Message[] => {
  const water = figures['program.leak.day'];
  const cost = figures['program.leak.cost-day'];
  if (water === undefined) return [];
  if (cost === undefined) return [message('plan.leave.leak-day', { water: water.quantity })];
  return [message('plan.leave.leak-cost-day', { water: water.quantity, cost: cost.quantity })];
};
