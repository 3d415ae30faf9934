import { minutesName, orderOf, type Sheet, type WorkStep } from '@brinewright/papers';
import type { PlanStep, Stage, WorkPlan } from '@brinewright/service';
import type { Made } from '../made.ts';
import { sheetOf } from './figure-view.ts';
import { apartView } from './work/apart-view.ts';
import { foundView } from './work/found-view.ts';
import { gateView } from './work/gate-view.ts';
import { stepViews } from './work/step-views.ts';
import type { WorkView } from './work/work-types.ts';

export type { WorkView } from './work/work-types.ts';

/**
 * The work from where it stands: each step as it is done, the gate, what is apart, and what may be found on the way.
 * `part` is the step looked at; only that one is drawn.
 */
export const workView = (made: Made, part?: string): WorkView => {
  const sheet = sheetOf(made);
  const { plan } = made.assessment.stages;
  const { language } = made.speech.reader;
  const gaps = plan.gaps.map(({ message }) => sheet.say(message));
  if (plan.state === 'blocked') return { ...nothing(sheet, language), state: 'blocked', gaps };
  return { ...planned(sheet, plan, part), gaps, language };
};

const nothing = (sheet: Sheet, language: WorkView['language']): WorkView => ({
  state: 'nothing',
  gaps: [],
  steps: [],
  done: 0,
  minutesLeft: '',
  outage: '',
  building: '',
  says: [],
  remarks: [],
  apart: { states: [], off: [] },
  found: foundView(sheet),
  language,
});

type Planned = Extract<Stage<WorkPlan>, { state: 'done' }>;

const planned = (
  sheet: Sheet,
  { value: plan, issues }: Planned,
  part: string | undefined,
): Omit<WorkView, 'gaps' | 'language'> => {
  const now = inHand(plan.steps);
  const steps = stepViews(sheet, plan, part ?? now);
  const gate = gateView(sheet, plan.steps);
  return {
    state: steps.length === 0 ? 'nothing' : 'plan',
    steps,
    ...(gate === undefined ? {} : { gate }),
    ...(now === undefined ? {} : { now }),
    done: steps.filter(({ done }) => done).length,
    minutesLeft: minutesName(sheet, plan.minutes),
    outage: plan.outageMinutes === 0 ? '' : minutesName(sheet, plan.outageMinutes),
    building: sheet.word(`plan.building.${plan.building}`),
    ...(plan.stopped === undefined ? {} : { stopped: stoppedSaid(sheet, plan.stopped) }),
    says: plan.says.map(sheet.say),
    remarks: issues.map(({ message, mend }) => ({
      says: sheet.say(message),
      ...(mend === undefined ? {} : { mend: sheet.say(mend) }),
    })),
    apart: apartView(sheet, plan),
    found: foundView(sheet),
    ...wayIn(sheet, plan),
  };
};

/** The first step not done, or the gate before it; a miscount is counted anew before all else. */
const inHand = (plan: readonly PlanStep[]): string | undefined => {
  if (plan.every((step) => step.kind === 'gate' || step.done)) return undefined;
  return plan.find((step) => (step.kind === 'gate' ? !step.passed : !step.done))?.id;
};

const stoppedSaid = (sheet: Sheet, { at, why, mend }: NonNullable<WorkPlan['stopped']>) => ({
  at,
  why: sheet.say(why),
  mend: sheet.say(mend),
});

const isWork = (step: PlanStep): step is WorkStep => step.kind !== 'gate';

const wayIn = (sheet: Sheet, { ifOpened }: WorkPlan): Pick<WorkView, 'wayIn'> =>
  ifOpened === undefined
    ? {}
    : {
        wayIn: {
          minutes: minutesName(sheet, ifOpened.minutes),
          outage: minutesName(sheet, ifOpened.outageMinutes),
          orders: ifOpened.steps.filter(isWork).map((step) => orderOf(sheet, step)),
        },
      };
