import type { ReactNode } from 'react';
import { useWord } from '../../app/words/use-word.ts';

export const Answers = ({ name, children }: { readonly name: string; readonly children: ReactNode }) => (
  <fieldset className="answers" aria-label={name}>
    {children}
  </fieldset>
);

export type AnswerProps = {
  readonly title: string;
  /** What it leaves, or what it does. */
  readonly under?: string | undefined;
  readonly drawing?: ReactNode;
  readonly chosen?: boolean;
  readonly onPress: () => void;
};

/** A chosen answer says how to take it back. */
export const Answer = ({ title, under, drawing, chosen = false, onPress }: AnswerProps) => {
  const word = useWord();
  const note = chosen ? word('app.ui.answer.undo') : under;
  return (
    <button type="button" className="answer" aria-pressed={chosen} onClick={onPress}>
      {drawing === undefined ? null : <span className="answer-drawing">{drawing}</span>}
      <span className="answer-words">
        {title}
        {note === undefined ? null : <small>{note}</small>}
      </span>
    </button>
  );
};
