import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { TestView } from '../../../engine/views/find-tests.ts';
import type { FindView } from '../../../engine/views/find-view.ts';
import { Facts, Heading, InHand, Row, Rows } from '../../../ui/index.ts';
import { Decided } from './decided.tsx';

type Props = StageProps<FindView>;

/** What is in hand: the question to ask first, the test that tells most, or the fault that is clear enough. */
export const NextTest = (props: Props) => {
  const { view } = props;
  const { next, says = '', canAct, askFirst } = view;
  const word = useWord();
  if (view.decided !== undefined) return <Decided {...props} decided={view.decided} />;
  if (canAct || next === undefined)
    return (
      <InHand tag={word(canAct ? 'app.find.clear' : 'app.find.nothing')}>
        <Heading>{says === '' ? word('app.find.nothing') : says}</Heading>
        {view.standsOn === undefined ? null : <p>{view.standsOn}</p>}
      </InHand>
    );
  return (
    <>
      {askFirst.length === 0 ? null : (
        <ul className="ask-first" aria-label={word('app.find.ask-first')}>
          {askFirst.map((question) => (
            <li key={question}>{question}</li>
          ))}
        </ul>
      )}
      <InHand tag={word('app.find.best-next')}>
        <Heading>{next.title}</Heading>
        {next.how.map((line) => (
          <p key={line}>{line}</p>
        ))}
        <Outcomes test={next} />
        <Cautions test={next} />
        <Cost test={next} />
      </InHand>
      <Meanwhile {...props} />
    </>
  );
};

const Outcomes = ({ test }: { readonly test: TestView }) => {
  const word = useWord();
  return (
    <ul className="outcomes" aria-label={word('app.find.means')}>
      {test.answers
        .filter(({ leads }) => leads !== undefined)
        .map(({ id, title, band, leads, share }) => (
          <li key={id}>
            <span>
              <b>{title}</b>
              {band === undefined ? '' : `, ${band}`}
              <small>{leads}</small>
            </span>
            <b className="percent">{share}</b>
          </li>
        ))}
    </ul>
  );
};

const Cautions = ({ test }: { readonly test: TestView }) =>
  test.cautions.map(({ signal, title }) => (
    <p key={title} className="test-caution">
      <b>{signal}</b> {title}
    </p>
  ));

const Cost = ({ test }: { readonly test: TestView }) => {
  const word = useWord();
  return (
    <Facts
      items={[
        { label: word('app.find.takes'), value: test.takes },
        { label: word('app.find.open'), value: test.opens ?? word('app.find.open.nothing') },
        { label: word('app.find.with'), value: test.tools ?? word('app.find.with.nothing') },
      ]}
    />
  );
};

/** While it runs by itself the hands are free. */
const Meanwhile = ({ view: { meanwhile }, nav }: Props) => {
  const word = useWord();
  if (meanwhile.length === 0) return null;
  return (
    <div className="meanwhile">
      <p className="note">{word('app.find.meanwhile')}</p>
      <Rows>
        {meanwhile.map(({ id, title, takes }) => (
          <Row key={id} title={title} at={takes} onPress={() => nav.toPart(id)} />
        ))}
      </Rows>
    </div>
  );
};
