import { useWord } from '../../../app/words/use-word.ts';
import type { RecogniseView } from '../../../engine/views/recognise-view.ts';
import { Button, Notice } from '../../../ui/index.ts';

type Props = { readonly view: RecogniseView; readonly onLook: (tell: string) => void };

/** Answers that disagree: the fewest to doubt, and the conversion that would explain them. */
export const Disagreeing = ({ view: { contradiction, doubts }, onLook }: Props) => {
  const word = useWord();
  return (
    <div className="disagreeing">
      {contradiction === undefined ? null : (
        <Notice title={word('app.recognise.contradiction')}>
          <p>{word('app.recognise.contradiction.look')}</p>
          {contradiction.doubts.map(({ title, tell }) => (
            <div key={title} className="doubt">
              <span>{title}</span>
              {tell === undefined ? null : (
                <Button onPress={() => onLook(tell)}>{word('app.recognise.contradiction.again')}</Button>
              )}
            </div>
          ))}
          {contradiction.conversions.length === 0 ? null : <p>{word('app.recognise.contradiction.or')}</p>}
          {contradiction.conversions.map((conversion) => (
            <p key={conversion}>
              <b>{conversion}</b>
            </p>
          ))}
        </Notice>
      )}
      {doubts.map(({ says, mend }) => (
        <Notice key={says} title={says}>
          {mend}
        </Notice>
      ))}
    </div>
  );
};
