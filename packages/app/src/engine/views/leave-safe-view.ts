import { minutesName, type Sheet } from '@brinewright/papers';
import type { LeaveSafe, WorkPlan } from '@brinewright/service';
import type { Made } from '../made.ts';
import { sheetOf } from './figure-view.ts';
import { type PaperView, paperView } from './paper-view.ts';
import { stepViews } from './work/step-views.ts';
import type { StepView } from './work/work-types.ts';

export type LeaveSafeView = {
  readonly state: 'blocked' | 'done';
  readonly gaps: readonly string[];
  readonly into: LeaveSafe['into'];
  /** How it stands, or that it is not safe yet. */
  readonly title: string;
  /** Steps that come first; none when it may be left as it is. */
  readonly steps: readonly StepView[];
  readonly minutes: string;
  readonly says: readonly string[];
  readonly settings: readonly string[];
  /** The card as one file, to be printed or sent. */
  readonly card: PaperView;
};

/** From where the work stands to a unit one may walk away from, and the card that stays with it. */
export const leaveSafeView = (made: Made): LeaveSafeView => {
  const sheet = sheetOf(made);
  const { plan } = made.assessment.stages;
  const shared = {
    gaps: plan.gaps.map(({ message }) => sheet.say(message)),
    card: paperView(made, 'leave-safe-card', made.speech.reader),
  };
  if (plan.state === 'blocked') return { ...shared, ...notKnown(sheet) };
  return { ...shared, ...left(sheet, plan.value) };
};

type Left = Omit<LeaveSafeView, 'gaps' | 'card'>;

const notKnown = (sheet: Sheet): Left => ({
  state: 'blocked',
  into: 'bypass',
  title: sheet.word('papers.card'),
  steps: [],
  minutes: '',
  says: [],
  settings: [],
});

const left = (
  sheet: Sheet,
  { leaveSafe: { into, steps, minutes, card, settings }, building }: WorkPlan,
): Left => ({
  state: 'done',
  into,
  title: sheet.word(
    steps.length > 0
      ? 'papers.card.pending'
      : into === 'service'
        ? 'papers.card.service'
        : 'papers.card.bypass',
  ),
  steps: stepViews(sheet, { steps, building }, steps[0]?.id),
  minutes: minutesName(sheet, minutes),
  says: card.map(sheet.say),
  settings: settings.map(sheet.say),
});
