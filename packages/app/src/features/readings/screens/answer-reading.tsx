import { useWord } from '../../../app/words/use-word.ts';
import type { StateAnswer } from '../../../engine/views/reading-ask.ts';
import { Answer, Answers, Button, Sheet } from '../../../ui/index.ts';
import { AskHead } from '../parts/ask-head.tsx';
import type { EditingProps } from '../parts/editing.ts';
import { Means } from '../parts/means.tsx';
import { TakenList } from '../parts/taken-list.tsx';
import type { ReadingScreenProps } from './reading-screen.tsx';

type Props = ReadingScreenProps & EditingProps;

/** Something looked at: one tap on what was seen. */
export const AnswerReading = (props: Props) => {
  const { ask, onLeave, editing, onEdit } = props;
  const word = useWord();
  const doing = (
    <>
      <AskHead {...props} />
      <Seen {...props} />
      <TakenList {...props} />
    </>
  );
  const isJudged = ask.answers.some(({ leads }) => leads !== undefined);
  const means = isJudged ? <Means answers={ask.answers} title={word('app.readings.says')} /> : undefined;
  return (
    <Sheet
      wide={means === undefined ? { doing } : { doing, picture: means }}
      actions={
        <Button onPress={editing === undefined ? onLeave : () => onEdit(undefined)}>
          {word('app.readings.cancel')}
        </Button>
      }
    >
      {doing}
    </Sheet>
  );
};

const Seen = ({ ask, editing, mayFail, onTake, onCorrect, onEdit }: Props) => {
  const word = useWord();
  const choose = async (state: string): Promise<void> => {
    if (editing === undefined) await onTake([{ state }]);
    else await onCorrect(editing.entry, { state });
    onEdit(undefined);
  };
  return (
    <Answers name={ask.title}>
      {ask.answers.map((answer) => (
        <Answer
          key={answer.id}
          title={answer.title}
          under={underOf(answer, word('app.readings.points-to'))}
          chosen={editing?.reading.state === answer.id}
          onPress={() => void choose(answer.id)}
        />
      ))}
      {mayFail ? (
        <Answer
          title={word('app.readings.cannot')}
          under={word('app.readings.cannot.under')}
          chosen={editing?.reading.state === 'cannot-do'}
          onPress={() => void choose('cannot-do')}
        />
      ) : null}
    </Answers>
  );
};

const underOf = ({ leads }: StateAnswer, pointsTo: string): string | undefined =>
  leads === undefined ? undefined : `${pointsTo} ${leads}`;
