import { useWord } from '../../../app/words/use-word.ts';
import type { TellView } from '../../../engine/views/recognise-tell.ts';
import type { RecogniseView } from '../../../engine/views/recognise-view.ts';
import { Drawing, Row, Rows, Section, useWide } from '../../../ui/index.ts';

type Props = { readonly view: RecogniseView };

/** Variants that are left, with their odds, and why it may stop or goes on. */
export const Remaining = ({ view: { remaining, why, state } }: Props) =>
  remaining.rows.length === 0 ? null : (
    <Section title={remaining.title}>
      <Rows>
        {remaining.rows.map(({ title, under, percent }) => (
          <Row
            key={`${title} ${under}`}
            title={title}
            under={under === '' ? undefined : under}
            at={percent}
          />
        ))}
      </Rows>
      {state === 'asking' ? <p className="note">{why}</p> : null}
    </Section>
  );

/** What each answer would leave, and how likely it is. */
export const Settles = ({ question }: { readonly question: TellView }) => {
  const word = useWord();
  const judged = question.answers.filter(({ leaves }) => leaves !== undefined);
  if (judged.length === 0) return null;
  return (
    <Section title={word('app.recognise.settles')}>
      <Rows>
        {judged.map(({ id, title, goesWith, leaves, share }) => (
          <Row
            key={id}
            title={goesWith === undefined ? title : `${title}: ${goesWith}`}
            under={leaves}
            at={share}
          />
        ))}
      </Rows>
      <p className="note">{word('app.recognise.why-this.trust', { trust: question.trust })}</p>
    </Section>
  );
};

export const WhyThis = ({ question, isBest }: { readonly question: TellView; readonly isBest: boolean }) => {
  const word = useWord();
  return (
    <>
      {isBest ? (
        <Section title={word('app.recognise.why-this')}>
          <p className="note">{word('app.recognise.why-this.says', { parts: question.parts })}</p>
        </Section>
      ) : null}
      <Section title={word('app.recognise.stops')}>
        <p className="note">{word('app.recognise.stops.says')}</p>
      </Section>
    </>
  );
};

/** The valve cut open as it most likely is. */
export const Likeliest = ({ view: { picture } }: Props) => {
  const isWide = useWide();
  if (picture === undefined) return null;
  return (
    <Section title={picture.title}>
      <Drawing {...(isWide ? picture.drawings.wide : picture.drawings.narrow)} />
    </Section>
  );
};
