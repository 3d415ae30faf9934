import { useWord } from '../../../app/words/use-word.ts';
import type { FindView } from '../../../engine/views/find-view.ts';

/** The complaint in the customer's words, and what changed since it last worked. */
export const Told = ({ view }: { readonly view: FindView }) => {
  const word = useWord();
  const { complaint, before } = view;
  return (
    <div className="told">
      {complaint === undefined ? (
        <p className="note">{word('app.find.no-complaint')}</p>
      ) : (
        <>
          <p className="note">{word('app.find.customer-says')}</p>
          <p>{`“${complaint}”`}</p>
        </>
      )}
      {before.map((line) => (
        <p key={line} className="note">
          {line}
        </p>
      ))}
    </div>
  );
};
