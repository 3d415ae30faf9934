import { useWord } from '../../../app/words/use-word.ts';
import type { ProgramView, YearRow } from '../../../engine/views/program-view.ts';
import { Figure, Section } from '../../../ui/index.ts';

/** What the found settings cost against these, a year. */
export const Year = ({ view }: { readonly view: ProgramView }) => {
  const word = useWord();
  if (view.year.length === 0) return null;
  return (
    <Section title={word('app.program.year-cost')}>
      <div className="year-line head note" aria-hidden="true">
        <span>{word('app.program.found')}</span>
        <span>{word('app.program.set')}</span>
        <span>{word('app.program.difference')}</span>
      </div>
      <ul className="settings">
        {view.year.map((row) => (
          <YearLine key={row.label} row={row} />
        ))}
      </ul>
      {view.yearDoubt === undefined ? null : <p className="note lead">{view.yearDoubt}</p>}
    </Section>
  );
};

const YearLine = ({ row }: { readonly row: YearRow }) => {
  const word = useWord();
  return (
    <li className="year-line">
      <b>{row.label}</b>
      <span>
        <span className="only-heard">{word('app.program.found')} </span>
        <Figure text={row.found.text} derivation={row.found.derivation} />
      </span>
      <span>
        <span className="only-heard">{word('app.program.set')} </span>
        <Figure text={row.set.text} derivation={row.set.derivation} />
      </span>
      <span>
        <span className="only-heard">{word('app.program.difference')} </span>
        <Figure text={row.difference.text} derivation={row.difference.derivation} />
      </span>
    </li>
  );
};
