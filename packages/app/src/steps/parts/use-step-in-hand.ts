import { useWord } from '../../app/words/use-word.ts';
import type { StageProps } from '../../engine/stage-props.ts';
import type { StepView } from '../../engine/views/work/work-types.ts';
import { undoOf } from '../../offline/undo.ts';
import { useDraft } from '../../offline/use-draft.ts';
import { type Counts, cautionAcknowledged, operationDone } from '../commands/done.ts';
import { type Action, actionOf } from './action.ts';
import { counted, countsNow } from './counting.ts';

const noCounts: Counts = {};

/** What may be done with the step looked at. */
export type InHandStep = {
  readonly step: StepView;
  readonly counts: Counts;
  readonly action: Action;
  readonly isStale: boolean;
  readonly count: (is: string, by: 1 | -1) => void;
  readonly acknowledge: (caution: string) => void;
  /** Marks it done with what was counted, though it may not add up. */
  readonly finish: () => void;
  readonly takeBack: (step: StepView) => void;
};

const now = (): string => new Date().toISOString();

export const useStepInHand = (
  { about, record, isStale }: Pick<StageProps<unknown>, 'about' | 'record' | 'isStale'>,
  step: StepView,
  onDone: () => void,
): InHandStep => {
  const word = useWord();
  const [draft, setDraft] = useDraft<Counts>(`count ${about.visit} ${step.id}`, noCounts);
  const counts = countsNow(draft, step.counts);
  const full = step.counts.length === 0 ? undefined : { ...zeros(step), ...counts };
  return {
    step,
    counts,
    action: actionOf(step, counts),
    isStale,
    count: (is, by) => setDraft(counted(counts, is, by)),
    acknowledge: (caution) => void record(cautionAcknowledged(about, caution, now())),
    finish: () =>
      void record(operationDone(about, step.writes, now(), full)).then(() => {
        setDraft(noCounts);
        onDone();
      }),
    takeBack: ({ entry }) =>
      void (entry === undefined
        ? undefined
        : record(undoOf(about.stream, [entry], word('app.work.undo.why')))),
  };
};

const zeros = ({ counts }: StepView): Counts => Object.fromEntries(counts.map(({ is }) => [is, 0]));
