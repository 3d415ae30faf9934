import type { ReactNode } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { StepView, WorkView } from '../../../engine/views/work/work-types.ts';
import { StepCautions } from '../../../steps/parts/cautions.tsx';
import { Counters } from '../../../steps/parts/counters.tsx';
import { MainAction } from '../../../steps/parts/main-action.tsx';
import { StepHow } from '../../../steps/parts/step-how.tsx';
import { StepPicture } from '../../../steps/parts/step-picture.tsx';
import { type InHandStep, useStepInHand } from '../../../steps/parts/use-step-in-hand.ts';
import { Button, Icon, Sheet, Told, useWide } from '../../../ui/index.ts';
import { Apart } from '../parts/apart.tsx';
import { orderOfList } from '../parts/operation-list.tsx';
import { places } from '../parts/places.ts';
import { Remarks, Stopped } from '../parts/remarks.tsx';
import { ReadAloud, StepHead } from '../parts/step-parts.tsx';
import { useWorkKeys } from '../parts/use-work-keys.ts';
import { Wait } from '../parts/wait.tsx';

type Props = StageProps<WorkView> & { readonly step: StepView; readonly list: ReactNode };

/** One operation at a time on the phone; beside the list of all and the counts on the wide sheet. */
export const OperationScreen = (props: Props) => {
  const { view, step, list, nav } = props;
  const hand = useStepInHand(props, step, () => nav.toPart(undefined));
  const isWide = useWide();
  useWorkKeys(keyed(hand), (by) => nav.toPart(neighbour(view, step.id, by)));
  const actions = <Actions hand={hand} nav={nav} />;
  const head = (
    <>
      <StepHead view={view} step={step} />
      <Stopped view={view} />
      <StepCautions cautions={step.cautions} />
      <StepPicture step={step} counts={hand.counts} />
    </>
  );
  const rest = <Rest {...props} hand={hand} />;
  if (isWide)
    return (
      <Sheet
        wide={{
          doing: list,
          picture: (
            <>
              {head}
              <StepHow step={step} />
            </>
          ),
          why: (
            <div className="work-side">
              <div>
                <Counters hand={hand} />
                {rest}
                <KeysHint />
              </div>
              <div className="work-actions">{actions}</div>
            </div>
          ),
        }}
      />
    );
  return (
    <Sheet actions={actions}>
      {head}
      <Counters hand={hand} />
      <StepHow step={step} />
      {rest}
    </Sheet>
  );
};

const Rest = (props: Props & { readonly hand: InHandStep }) => {
  const { view, step, about, nav } = props;
  const word = useWord();
  const isWide = useWide();
  return (
    <>
      {step.done ? <Told>{doneSaid(word, step)}</Told> : null}
      {step.waiting === undefined ? null : (
        <Wait id={`wait ${about.visit} ${step.id}`} minutes={step.waiting.minutes} text={step.waiting.text} />
      )}
      <div className="more-buttons">
        <ReadAloud words={step.aloud} language={view.language} />
        <Button onPress={() => nav.toStage('leave-safe')}>{word('app.work.leave-safe')}</Button>
        {isWide ? null : (
          <Button onPress={() => nav.toPart(places.list)}>{word('app.work.operations.all')}</Button>
        )}
      </div>
      <LastDone {...props} />
      <Apart {...props} />
      <Remarks view={view} />
    </>
  );
};

const doneSaid = (word: ReturnType<typeof useWord>, { doneAt }: StepView): string =>
  doneAt === undefined ? word('app.work.done') : word('app.work.done-at', { at: doneAt });

/** What was marked done before this one, to be taken back where it was a slip. */
const LastDone = ({ view, step, hand }: Props & { readonly hand: InHandStep }) => {
  const word = useWord();
  const last = view.steps[step.number - 2];
  if (last === undefined || !last.done || last.entry === undefined || step.done) return null;
  return (
    <div className="last-done">
      <p>
        <span className="note">{word('app.work.last')}</span> {last.order}
      </p>
      <Button
        kind="plain"
        onPress={() => hand.takeBack(last)}
        blocked={hand.isStale ? word('app.work.planning') : undefined}
      >
        {word('app.work.undo')}
      </Button>
    </div>
  );
};

const Actions = ({ hand, nav }: { readonly hand: InHandStep; readonly nav: Props['nav'] }) => {
  const word = useWord();
  return (
    <>
      <Button name={word('app.work.found')} onPress={() => nav.toPart(places.found)} more="found-button">
        <Icon name="photo" />
        <span>{word('app.work.found.short')}</span>
      </Button>
      <MainAction hand={hand} onGo={nav.toPart} />
    </>
  );
};

const KeysHint = () => {
  const word = useWord();
  return <p className="note keys-hint">{word('app.work.keys')}</p>;
};

/** What Control and Enter do: the same as the main button, where it may be pressed. */
const keyed = ({ action, isStale, acknowledge, finish }: InHandStep): (() => void) | undefined => {
  if (isStale) return undefined;
  if (action.kind === 'fact') return () => acknowledge(action.caution.id);
  return action.kind === 'done' ? finish : undefined;
};

const neighbour = (view: WorkView, id: string, by: 1 | -1): string => {
  const order = orderOfList(view);
  return order[order.indexOf(id) + by] ?? id;
};
