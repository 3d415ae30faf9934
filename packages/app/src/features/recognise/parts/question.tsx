import { useRef, useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { TellAnswerView, TellView } from '../../../engine/views/recognise-tell.ts';
import type { AnsweredTell } from '../../../engine/views/recognise-view.ts';
import { Answer, Answers, Heading, Picture } from '../../../ui/index.ts';
import { Measured } from './measured.tsx';

export type QuestionProps = {
  readonly question: TellView;
  readonly answered: AnsweredTell | undefined;
  readonly draft: string;
  readonly onAnswer: (answer: string, isUnsure: boolean) => Promise<void>;
  readonly onTakeBack: () => Promise<void>;
};

/** How to look, what must come off, and answers in equal frames; not seen and not sure are answers like the others. */
export const Question = (given: QuestionProps) => {
  const { question } = given;
  const [isUnsure, setUnsure] = useState(false);
  const props = useOneTap(given);
  return (
    <>
      <Heading>{question.ask}</Heading>
      <HowToLook question={question} />
      {isUnsure ? <UnsureHint /> : null}
      {question.measure === undefined ? null : (
        <Measured {...props} measure={question.measure} isUnsure={isUnsure} />
      )}
      <AnswerFrames {...props} isUnsure={isUnsure} onUnsure={setUnsure} />
    </>
  );
};

/** A finger that bounces must not answer the next question, which stands where the last one stood. */
const useOneTap = (props: QuestionProps): QuestionProps => {
  const shownAt = useRef(Date.now());
  const isBounce = (): boolean => Date.now() - shownAt.current < bounce;
  return {
    ...props,
    onAnswer: async (...answer) => (isBounce() ? undefined : props.onAnswer(...answer)),
    onTakeBack: async () => (isBounce() ? undefined : props.onTakeBack()),
  };
};

/** Milliseconds; no one reads a question in less. */
const bounce = 350;

const HowToLook = ({ question: { how, opens, takes } }: { readonly question: TellView }) => {
  const word = useWord();
  const off =
    opens === undefined ? word('app.recognise.nothing-off') : word('app.recognise.first', { what: opens });
  return (
    <>
      {how === undefined ? null : <p className="look-how">{how}</p>}
      <p className="look-how">{`${off} ${word('app.recognise.takes', { minutes: takes })}`}</p>
    </>
  );
};

const UnsureHint = () => <p className="unsure-hint">{useWord()('app.recognise.unsure.which')}</p>;

type FrameProps = QuestionProps & {
  readonly isUnsure: boolean;
  readonly onUnsure: (isUnsure: boolean) => void;
};

const AnswerFrames = (props: FrameProps) => {
  const { question, isUnsure, onUnsure, onAnswer } = props;
  const word = useWord();
  return (
    <Answers name={question.ask}>
      {question.measure === undefined
        ? question.answers.map((answer) => <Frame key={answer.id} {...props} answer={answer} />)
        : null}
      <Given
        {...props}
        answer="cannot-see"
        title={word('app.recognise.cannot-see')}
        under={word('app.recognise.cannot-see.under')}
      />
      {isUnsure ? (
        <Answer
          title={word('app.recognise.unsure.none')}
          chosen={false}
          onPress={() => void onAnswer('unsure', false)}
        />
      ) : (
        <Answer
          title={word('app.recognise.unsure')}
          under={word('app.recognise.unsure.under')}
          onPress={() => onUnsure(true)}
        />
      )}
    </Answers>
  );
};

const Frame = (props: FrameProps & { readonly answer: TellAnswerView }) => {
  const { id, title, drawing } = props.answer;
  const under = [props.answer.leaves, props.answer.goesWith].filter((part) => part !== undefined).join(', ');
  return (
    <Given
      {...props}
      answer={id}
      title={title}
      under={under === '' ? undefined : under}
      drawing={drawing === undefined ? undefined : <Picture svg={drawing} />}
    />
  );
};

type GivenProps = Pick<FrameProps, 'answered' | 'isUnsure' | 'onAnswer' | 'onTakeBack'> & {
  readonly answer: string;
  readonly title: string;
  readonly under?: string | undefined;
  readonly drawing?: Parameters<typeof Answer>[0]['drawing'];
};

/** Chosen, it is taken back at another tap. */
const Given = ({ answered, isUnsure, onAnswer, onTakeBack, answer, ...frame }: GivenProps) => {
  const isChosen = answered?.answer === answer;
  return (
    <Answer
      {...frame}
      chosen={isChosen}
      onPress={() => void (isChosen && !isUnsure ? onTakeBack() : onAnswer(answer, isUnsure))}
    />
  );
};
