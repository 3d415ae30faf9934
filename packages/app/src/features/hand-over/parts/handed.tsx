import { useWord } from '../../../app/words/use-word.ts';
import type { HandedView } from '../../../engine/views/hand-over-view.ts';
import { Row, Rows, Section } from '../../../ui/index.ts';

/** To whom, by whom, what was said; and the figures as they went out of hand. */
export const Handed = (props: { readonly handed: HandedView; readonly signed: readonly string[] }) => {
  const { handed, signed } = props;
  const word = useWord();
  const lines = [
    [word('app.hand-over.handed.when'), handed.when],
    [word('app.hand-over.handed.by'), handed.by],
    [word('app.hand-over.handed.to'), handed.to],
    [word('app.hand-over.handed.said'), handed.said],
    [word('app.hand-over.signatures'), signed.length === 0 ? undefined : signed.join(', ')],
  ] as const;
  return (
    <Rows>
      {lines.map(([label, value]) =>
        value === undefined ? null : <Row key={label} over={label} title={<b>{value}</b>} />,
      )}
    </Rows>
  );
};

export const KeptFigures = ({ handed }: { readonly handed: HandedView }) => {
  const word = useWord();
  if (handed.figures.length === 0) return null;
  return (
    <Section title={word('app.hand-over.kept')}>
      {handed.made === undefined ? null : <p className="note">{handed.made}</p>}
      {handed.isOtherNow ? <p className="lead">{word('app.hand-over.kept.other')}</p> : null}
      <KeptRows figures={handed.figures.filter(({ now }) => now !== undefined)} />
      <details className="more">
        <summary>{word('app.hand-over.kept.all', { count: handed.figures.length })}</summary>
        <KeptRows figures={handed.figures} />
      </details>
    </Section>
  );
};

const KeptRows = ({ figures }: Pick<HandedView, 'figures'>) => {
  const word = useWord();
  return (
    <Rows>
      {figures.map(({ id, title, text, now }) => (
        <Row
          key={id}
          title={title}
          under={now === undefined ? undefined : word('app.hand-over.kept.now', { value: now })}
          at={text}
        />
      ))}
    </Rows>
  );
};
