import { quantity } from '@brinewright/units';
import { type Message, type MessageKey, message } from '@brinewright/words';
import type { Situation } from '../situation/situation.ts';
import type { Work } from '../stage/work.ts';
import type { ProgramSettings } from '../visit/schema.ts';
import type { Present } from './present.ts';
import { type PutBackProblem, putBack } from './put-back.ts';
import type { Scope } from './scope.ts';
import type { Sequencer } from './sequencer.ts';
import { isShut } from './state.ts';
import { minutesOf } from './totals.ts';
import { warnings } from './uses.ts';
import type { LeaveSafe, PlanStep } from './work-plan.ts';

/**
 * From where the work stands to a unit one may walk away from: put back as it was and in service, or, when a piece
 * of it is missing, closed and led round.
 */
export function* leaveSafeFrom(
  s: Situation,
  scope: Scope,
  present: Present,
  missingAt: string | undefined,
  sequencer: Sequencer,
): Work<LeaveSafe> {
  const into = missingAt === undefined ? 'service' : 'bypass';
  const problem = problemOf(scope, present);
  const { steps } = yield* putBack(problem, sequencer);
  const taken = into === 'service' ? steps : steps.filter((step) => isClosing(step, missingAt));
  return {
    into,
    steps: taken,
    minutes: minutesOf(taken, scope),
    settings: settingsBack(s),
    card: [
      ...stateOfWater(s, into),
      ...costOf(s),
      ...(into === 'bypass' || isShut(present.state) ? warnings(s) : []),
    ],
  };
}

const problemOf = (scope: Scope, present: Present): PutBackProblem => ({
  scope,
  present,
  off: present.off,
  state: present.state,
  ahead: [],
  asked: [],
  newRoles: new Set(),
  shuts: present.wasShut || isShut(present.state),
  extent: 'least',
});

/** The body is closed and the bench is empty; no water, and the pieces that do not add up stay out. */
const isClosing = (step: PlanStep, missingAt: string | undefined): boolean => {
  if (step.kind === 'sweep') return true;
  return step.kind === 'back' && step.of.phase !== 'isolate' && step.of.id !== missingAt;
};

const stateOfWater = (s: Situation, into: LeaveSafe['into']): readonly Message[] => {
  if (into === 'service') return [message('plan.leave.service')];
  const water = s.kind === 'softener' ? 'plan.leave.bypass-hard' : 'plan.leave.bypass-raw';
  return [message('plan.leave.bypass'), message(water), message('plan.leave.bagged')];
};

const costOf = (s: Situation): readonly Message[] => {
  const cost = s.figures['program.leak.day'];
  return cost === undefined ? [] : [message('plan.leave.cost-day', { cost: cost.quantity })];
};

const settingKeys: Readonly<Record<keyof ProgramSettings, MessageKey>> = {
  backwash: 'plan.setting.backwash',
  brine: 'plan.setting.brine',
  draw: 'plan.setting.draw',
  'slow-rinse': 'plan.setting.slow-rinse',
  'fast-rinse': 'plan.setting.fast-rinse',
  refill: 'plan.setting.refill',
  volume: 'plan.setting.volume',
  days: 'plan.setting.days',
  at: 'plan.setting.at',
};

const settingIds = [
  'backwash',
  'brine',
  'draw',
  'slow-rinse',
  'fast-rinse',
  'refill',
  'volume',
  'days',
  'at',
] as const;

/** The old values of everything that was set anew; a program that was not touched stays as it is. */
const settingsBack = (s: Situation): readonly Message[] => {
  const set = s.visit.settings?.set ?? {};
  return settingIds.flatMap((id) => {
    const old = settingValue(s.found, id);
    const now = settingValue(set, id);
    if (old === undefined || now === undefined || isSame(old, now)) return [];
    return [message('plan.leave.setting', { setting: message(settingKeys[id]), value: old, now })];
  });
};

const settingValue = (settings: ProgramSettings, id: keyof ProgramSettings) => {
  const value = settings[id];
  return typeof value === 'number' ? quantity('count', value) : value;
};

type SettingValue = NonNullable<ReturnType<typeof settingValue>>;

const isSame = (a: SettingValue, b: SettingValue): boolean =>
  typeof a === 'string' || typeof b === 'string' ? a === b : a.si === b.si;
