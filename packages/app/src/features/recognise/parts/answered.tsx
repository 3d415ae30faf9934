import { useWord } from '../../../app/words/use-word.ts';
import type { RecogniseView } from '../../../engine/views/recognise-view.ts';
import { Row, Rows, Section } from '../../../ui/index.ts';

type Props = { readonly view: RecogniseView; readonly onLook: (tell: string) => void };

/** Each opens to its question, to be answered anew or taken back. */
export const Answered = ({ view: { answered, state }, onLook }: Props) => {
  const word = useWord();
  if (answered.length === 0 && state === 'single') return null;
  return (
    <Section title={word('app.recognise.answered')}>
      {answered.length === 0 ? <p className="note">{word('app.recognise.answered.none')}</p> : null}
      <Rows>
        {answered.map(({ question, title, isUnsure }) => (
          <Row
            key={question.id}
            title={question.ask}
            under={isUnsure ? word('app.recognise.answered.unsure', { answer: title }) : title}
            onPress={() => onLook(question.id)}
          />
        ))}
      </Rows>
    </Section>
  );
};
