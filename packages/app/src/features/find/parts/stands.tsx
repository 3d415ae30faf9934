import type { ReactNode } from 'react';
import type { Say } from '../../../app/words/say.ts';
import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { FindView, ReadingRow } from '../../../engine/views/find-view.ts';
import { Notice, Odds, type OddsRow, Row, Rows, Section, useWide } from '../../../ui/index.ts';

type Props = StageProps<FindView>;

/** Odds with the tick where each stood before the last reading. */
export const OddsNow = ({ view }: { readonly view: FindView }) => {
  const word = useWord();
  const isWide = useWide();
  if (view.odds.length === 0) return null;
  const hasMoved = view.odds.some(({ before }) => before !== undefined);
  return (
    <Section title={word('app.find.odds')} aside={hasMoved ? <Before /> : undefined}>
      <Odds rows={isWide ? view.odds : view.odds.map(leaderArgued)} />
      {view.canAct ? null : <p className="note">{view.says}</p>}
      <p className="note">{view.standsOn}</p>
    </Section>
  );
};

/** On a phone only what leads is argued; the rest stands on the wide sheet. */
const leaderArgued = (row: OddsRow, place: number): OddsRow =>
  place === 0 ? row : { ...row, for: undefined, against: undefined };

const Before = () => (
  <>
    <svg className="before-sign" viewBox="0 0 12 10" aria-hidden="true">
      <path d="M1 1h10L6 9z" />
    </svg>
    {useWord()('app.find.odds.before')}
  </>
);

/** Each opens to its entries: to read again, change or take back. */
export const Readings = ({ view, nav }: Props) => {
  const word = useWord();
  return (
    <Section title={word('app.find.readings')}>
      {view.readings.length === 0 ? <p className="note">{word('app.find.readings.none')}</p> : null}
      <Rows>
        {view.readings.map((reading) => (
          <Row
            key={reading.test}
            title={titleOf(reading, word)}
            under={reading.isWords ? <b>{reading.text}</b> : undefined}
            at={reading.isWords ? undefined : <Value reading={reading} />}
            onPress={() => nav.toPart(reading.test)}
          />
        ))}
      </Rows>
      {view.doubts.map(({ says, mend }) => (
        <Notice key={says} title={says}>
          {mend}
        </Notice>
      ))}
    </Section>
  );
};

const titleOf = ({ title, count, isWild }: ReadingRow, word: Say): string => {
  if (count === 1) return title;
  return word(isWild ? 'app.find.repeats.wild' : 'app.find.repeats', { title, count });
};

const Value = ({ reading: { text, spread } }: { readonly reading: ReadingRow }): ReactNode => (
  <>
    {text}
    {spread === undefined ? null : <small className="spread">{` ${spread}`}</small>}
  </>
);

const mostTests = 5;

/** The next few after the best; the rest stand on a sheet of their own. */
export const TestList = ({ view, nav }: Props) => {
  const word = useWord();
  if (view.others.length === 0 || view.canAct) return null;
  return (
    <Section title={word('app.find.tests')}>
      <Rows>
        {view.others.slice(0, mostTests).map(({ id, title, takes, under }) => (
          <Row key={id} title={title} under={under} at={takes} onPress={() => nav.toPart(id)} />
        ))}
      </Rows>
    </Section>
  );
};

/** What is missing to judge a reading or a test. */
export const Gaps = ({ view }: { readonly view: FindView }) =>
  view.gaps.map((gap) => <Notice key={gap}>{gap}</Notice>);
