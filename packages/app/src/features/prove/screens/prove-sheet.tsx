import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { ProveView } from '../../../engine/views/prove-view.ts';
import { Button, Empty, Heading, Icon, Notice, Section, Sheet } from '../../../ui/index.ts';
import { Check, type CheckProps } from '../parts/check.tsx';

type Props = StageProps<ProveView> & Pick<CheckProps, 'onSeen'>;

/** What can be read now first, what fails at its head; then what only a regeneration shows. */
export const ProveSheet = (props: Props) => {
  const { view, isStale } = props;
  const word = useWord();
  const measured = view.now.filter(({ isSeen }) => !isSeen);
  const looked = view.now.filter(({ isSeen }) => isSeen);
  const head = (
    <>
      <Heading>{view.title}</Heading>
      <p className="ask-how">{view.says}</p>
      <Doubts view={view} />
    </>
  );
  const busy = { className: isStale ? 'stale' : undefined, 'aria-busy': isStale };
  return (
    <Sheet
      wide={{
        doing: (
          <div {...busy}>
            {head}
            <Checks {...props} checks={measured} />
            <MeasureFirst view={view} />
          </div>
        ),
        picture: (
          <Section title={word('app.prove.now')}>
            <Checks {...props} checks={looked} />
            <HowToRead />
          </Section>
        ),
        why: <Tomorrow {...props} />,
      }}
      actions={<Actions {...props} />}
    >
      <div {...busy}>
        {head}
        <Checks {...props} checks={view.now} />
        <MeasureFirst view={view} />
        <Tomorrow {...props} />
        <HowToRead />
      </div>
    </Sheet>
  );
};

const Checks = ({ checks, nav, onSeen }: Props & { readonly checks: ProveView['now'] }) => (
  <ul className="checks">
    {checks.map((check) => (
      <li key={check.id}>
        <Check check={check} onSeen={onSeen} onRead={() => nav.toPart(check.id)} />
      </li>
    ))}
  </ul>
);

/** What is missing, and what is odd about the readings. */
const Doubts = ({ view }: { readonly view: ProveView }) => (
  <>
    {view.now.length === 0 && view.gaps.length === 0 ? <Nothing /> : null}
    {view.gaps.map((gap) => (
      <Notice key={gap}>{gap}</Notice>
    ))}
    {view.doubts.map(({ says, mend }) => (
      <Notice key={says} title={says}>
        {mend}
      </Notice>
    ))}
  </>
);

/** Assumptions that most of the doubt in limits and predictions comes from. */
const MeasureFirst = ({ view }: { readonly view: ProveView }) =>
  view.measureFirst.map((line) => <Notice key={line}>{line}</Notice>);

const Nothing = () => <Empty title={useWord()('app.prove.nothing')} />;

const Tomorrow = (props: Props) => {
  const word = useWord();
  if (props.view.tomorrow.length === 0) return null;
  return (
    <Section title={word('app.prove.tomorrow')}>
      <p className="note">{word('app.prove.tomorrow.how')}</p>
      <Checks {...props} checks={props.view.tomorrow} />
    </Section>
  );
};

const HowToRead = () => {
  const word = useWord();
  return (
    <p className="note how-to-read">
      <b>{word('app.prove.how')}</b> {word('app.prove.how.says')}
    </p>
  );
};

const Actions = ({ view, nav }: Props) => {
  const word = useWord();
  const next = view.now.find(({ id }) => id === view.next);
  const isDone = view.now.length > 0 && view.now.every(({ verdict }) => verdict === 'pass');
  return (
    <>
      <Button kind={isDone ? 'main' : 'usual'} onPress={() => nav.toStage('hand-over')}>
        {word('app.prove.hand-over')}
      </Button>
      {next === undefined || next.isSeen ? null : (
        <Button kind="main" more="beside" onPress={() => nav.toPart(next.id)}>
          <span>
            {word('app.prove.take')}
            <small>{next.title}</small>
          </span>
          <Icon name="on" />
        </Button>
      )}
    </>
  );
};
