import { useWord } from '../../../app/words/use-word.ts';
import type { WindowView } from '../../../engine/views/program/window.ts';
import { Drawing, Figure, Problem, Row, Rows, Section, useWide } from '../../../ui/index.ts';

/** The backwash between too little and too much; where nothing lies between, what can be done instead. */
export const BackwashWindow = ({ window }: { readonly window: WindowView }) => {
  const word = useWord();
  const picture = useWide() ? window.drawing.wide : window.drawing.narrow;
  return (
    <Section title={word('app.program.window')}>
      <Drawing {...picture} />
      {window.state === 'empty' ? <NothingFits window={window} /> : null}
      {window.fits === undefined ? null : <p>{window.fits}</p>}
      <Rows>
        {window.edges.map(({ label, figure }) => (
          <Row key={label} title={label} at={<Figure text={figure.text} derivation={figure.derivation} />} />
        ))}
      </Rows>
      {[...window.notes, ...window.measureFirst].map((note) => (
        <p key={note} className="note lead">
          {note}
        </p>
      ))}
      <Bed window={window} />
    </Section>
  );
};

const NothingFits = ({ window: { why, choices } }: { readonly window: WindowView }) => {
  const word = useWord();
  return (
    <div className="empty-window">
      <Problem what={word('app.program.window.empty')} why={why} />
      {choices.length === 0 ? null : (
        <>
          <p className="lead">{word('app.program.window.choices')}</p>
          <ul className="dashes">
            {choices.map((choice) => (
              <li key={choice}>{choice}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
};

const Bed = ({ window: { bed } }: { readonly window: WindowView }) => {
  const word = useWord();
  const isWide = useWide();
  if (bed === undefined) return null;
  return (
    <details className="more">
      <summary>{word('app.program.bed')}</summary>
      <Drawing {...(isWide ? bed.wide : bed.narrow)} />
    </details>
  );
};
