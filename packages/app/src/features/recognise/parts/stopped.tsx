import type { AppWord } from '../../../app/words/say.ts';
import { useWord } from '../../../app/words/use-word.ts';
import type { TellView } from '../../../engine/views/recognise-tell.ts';
import type { RecogniseView } from '../../../engine/views/recognise-view.ts';
import { Heading, Notice, Row, Rows, Section } from '../../../ui/index.ts';

type Props = { readonly view: RecogniseView; readonly onLook: (tell: string) => void };

const titles: Readonly<Record<RecogniseView['state'], AppWord>> = {
  asking: 'app.recognise.settled',
  settled: 'app.recognise.settled',
  'not-needed': 'app.recognise.not-needed',
  single: 'app.recognise.single',
  'no-tell': 'app.recognise.no-tell',
  blocked: 'app.recognise.blocked',
};

/** Nothing to ask: why it stops, what is known of the valve, and tells that could still be looked at. */
export const Stopped = ({ view, onLook }: Props) => {
  const word = useWord();
  return (
    <>
      <Heading>{word(titles[view.state])}</Heading>
      <p className="look-how">{view.why}</p>
      {view.gaps.map((gap) => (
        <Notice key={gap}>{gap}</Notice>
      ))}
      <Known view={view} />
      <LookMore tells={[...view.questions, ...view.others]} onLook={onLook} />
    </>
  );
};

const LookMore = ({ tells, onLook }: { readonly tells: readonly TellView[] } & Pick<Props, 'onLook'>) => {
  const word = useWord();
  if (tells.length === 0) return null;
  return (
    <Section title={word('app.recognise.look-more')}>
      <Rows>
        {tells.map(({ id, ask, takes, opens }) => (
          <Row key={id} title={ask} under={opens} at={takes} onPress={() => onLook(id)} />
        ))}
      </Rows>
    </Section>
  );
};

const Known = ({ view: { features } }: { readonly view: RecogniseView }) => {
  const word = useWord();
  if (features.length === 0) return null;
  return (
    <Section title={word('app.recognise.known')}>
      <Rows>
        {features.map(({ title, value, isSettled }) => (
          <Row
            key={title}
            title={title}
            under={isSettled ? undefined : value}
            at={isSettled ? value : word('app.recognise.known.open')}
          />
        ))}
      </Rows>
    </Section>
  );
};
