import { useWord } from '../../../app/words/use-word.ts';
import type { ProgramView } from '../../../engine/views/program-view.ts';
import { ButtonLink, Figure, Notice, Section } from '../../../ui/index.ts';

/** What the settings stand on: notes, what is missing, and every figure with its way. */
export const Notes = ({ view }: { readonly view: ProgramView }) => {
  const word = useWord();
  const { notes, doubts } = view;
  if (notes.length + doubts.length === 0) return null;
  return (
    <Section title={word('app.program.notes')}>
      {[...notes, ...doubts].map((note) => (
        <p key={note} className="lead">
          {note}
        </p>
      ))}
    </Section>
  );
};

/** What is missing, and the way to where it is said. */
export const Gaps = ({ view, to }: { readonly view: ProgramView; readonly to?: string | undefined }) => {
  const word = useWord();
  return view.gaps.length === 0 ? null : (
    <Notice
      title={word(view.isBlocked ? 'app.program.gaps' : 'app.program.gaps.more')}
      actions={to === undefined ? undefined : <ButtonLink to={to}>{word('app.program.to-unit')}</ButtonLink>}
    >
      <ul className="dashes">
        {view.gaps.map((gap) => (
          <li key={gap}>{gap}</li>
        ))}
      </ul>
    </Notice>
  );
};

export const Ways = ({ view }: { readonly view: ProgramView }) => {
  const word = useWord();
  if (view.figures.length === 0) return null;
  return (
    <details className="more section">
      <summary>{word('app.program.figures', { count: view.figures.length })}</summary>
      <ul className="ways">
        {view.figures.map(({ id, title, text, derivation }) => (
          <li key={id}>
            <span>{title}</span>
            <Figure text={text} derivation={derivation} />
          </li>
        ))}
      </ul>
    </details>
  );
};
