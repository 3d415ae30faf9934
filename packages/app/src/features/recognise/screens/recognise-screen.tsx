import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { RecogniseView } from '../../../engine/views/recognise-view.ts';
import { undoOf } from '../../../offline/undo.ts';
import { Sheet } from '../../../ui/index.ts';
import { answerTell } from '../commands/answer-tell.ts';
import { Actions } from '../parts/actions.tsx';
import { Answered } from '../parts/answered.tsx';
import { Disagreeing } from '../parts/disagreeing.tsx';
import { inHand } from '../parts/in-hand.ts';
import { Question } from '../parts/question.tsx';
import { Likeliest, Remaining, Settles, WhyThis } from '../parts/remaining.tsx';
import { Stopped } from '../parts/stopped.tsx';
import '../recognise.css';

type Props = StageProps<RecogniseView>;

/** One question; under each answer what it leaves; beside it what remains and why. */
export const RecogniseScreen = (props: Props) => {
  const { view, isStale, about, nav } = props;
  const { question, answered } = inHand(view, nav.part);
  const write = useWriting(props);
  const doing = (
    <div className={isStale ? 'stale' : undefined} aria-busy={isStale}>
      <Disagreeing view={view} onLook={nav.toPart} />
      {question === undefined ? (
        <Stopped view={view} onLook={nav.toPart} />
      ) : (
        <Question
          key={question.id}
          question={question}
          answered={answered}
          draft={`${about.visit} tell ${question.id}`}
          onAnswer={(answer, isUnsure) =>
            write.answer({ tell: question.id, answer, isUnsure }, answered?.entry)
          }
          onTakeBack={() => write.takeBack(answered?.entry)}
        />
      )}
    </div>
  );
  const settles = question === undefined ? null : <Settles question={question} />;
  const isBest = question !== undefined && question.id === view.questions[0]?.id;
  const why = (
    <>
      <Remaining view={view} />
      {question === undefined ? null : <WhyThis question={question} isBest={isBest} />}
      <Answered view={view} onLook={nav.toPart} />
    </>
  );
  return (
    <Sheet
      wide={{
        doing,
        picture: (
          <>
            {settles}
            <Likeliest view={view} />
          </>
        ),
        why,
      }}
      actions={
        <Actions {...props} isAside={nav.part !== undefined} onUndo={() => write.takeBack(view.last)} />
      }
    >
      {doing}
      {why}
      <Likeliest view={view} />
    </Sheet>
  );
};

/** An answer is written at one tap, and taken back at another; then the next question stands there. */
const useWriting = ({ about, record, nav }: Props) => {
  const word = useWord();
  return {
    answer: async (...[input, before]: Tail<Parameters<typeof answerTell>>): Promise<void> => {
      await record(answerTell(about, input, before));
      nav.toPart(undefined);
    },
    takeBack: async (entry: string | undefined): Promise<void> => {
      if (entry === undefined) return;
      await record(undoOf(about.stream, [entry], word('app.recognise.undone')));
      nav.toPart(undefined);
    },
  };
};

type Tail<T extends readonly unknown[]> = T extends readonly [unknown, ...infer Rest] ? Rest : never;
