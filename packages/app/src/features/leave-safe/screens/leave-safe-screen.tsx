import '../../../steps/steps.css';
import '../leave-safe.css';
import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { LeaveSafeView } from '../../../engine/views/leave-safe-view.ts';
import { Button, Heading, Notice, Section, Sheet, Told } from '../../../ui/index.ts';
import { CardActions } from '../parts/card-actions.tsx';
import { FirstStep } from '../parts/first-step.tsx';

/** What it takes to walk away now, and the card that stays at the unit. */
export const LeaveSafeScreen = (props: StageProps<LeaveSafeView>) => {
  const { view } = props;
  const word = useWord();
  return (
    <Sheet
      wide={{
        doing: (
          <>
            <Heading>{word('app.leave-safe.title')}</Heading>
            <p className="lead">{view.title}</p>
            {view.gaps.map((gap) => (
              <Notice key={gap}>{gap}</Notice>
            ))}
            <First {...props} />
          </>
        ),
        picture: <Card view={view} />,
      }}
      actions={<CardActions card={view.card} />}
    />
  );
};

/** Steps that come first: one in hand, the others in their order. */
const First = (props: StageProps<LeaveSafeView>) => {
  const { view, nav } = props;
  const word = useWord();
  const [first, ...rest] = view.steps;
  if (first === undefined) return <Told>{word('app.leave-safe.nothing-first')}</Told>;
  return (
    <Section title={word('app.leave-safe.first', { time: view.minutes })}>
      <p className="note">
        {word(view.into === 'service' ? 'app.leave-safe.service' : 'app.leave-safe.bypass')}
      </p>
      <FirstStep {...props} step={first} tag={word('app.leave-safe.now', { of: view.steps.length })} />
      <ol className="leave-steps">
        {rest.map(({ id, order, cautions, minutes }) => (
          <li key={id}>
            <p>
              {order} <span className="note">{minutes}</span>
            </p>
            {cautions.map((caution) => (
              <p key={caution.id} className="note">
                {caution.signal}
              </p>
            ))}
          </li>
        ))}
      </ol>
      <div className="buttons">
        <Button onPress={() => nav.toStage('work')}>{word('app.leave-safe.to-work')}</Button>
      </div>
    </Section>
  );
};

/** What the card says, as it says it. */
const Card = ({ view }: { readonly view: LeaveSafeView }) => {
  const word = useWord();
  return (
    <div className="card-shown">
      <h2>{word('app.leave-safe.card')}</h2>
      {view.steps.length === 0 ? null : <p className="note">{word('app.leave-safe.once-done')}</p>}
      {view.says.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {view.settings.length === 0 ? null : (
        <Section title={word('app.leave-safe.settings')}>
          <ul className="leave-settings">
            {view.settings.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </Section>
      )}
    </div>
  );
};
