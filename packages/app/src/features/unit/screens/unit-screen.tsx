import { useWord } from '../../../app/words/use-word.ts';
import type { RecordEntries } from '../../../engine/stage-props.ts';
import type { UnitView } from '../../../engine/views/unit-view.ts';
import { ButtonLink, Heading, Row, Rows, Section, Sheet, Told } from '../../../ui/index.ts';
import type { UnitPlace } from '../commands/say-fact.ts';
import { FactGroups } from '../parts/fact-rows.tsx';
import { Undo } from '../parts/undo.tsx';
import '../unit.css';

export type UnitScreenProps = {
  readonly view: UnitView;
  readonly place: UnitPlace;
  readonly record: RecordEntries;
  /** Address of the unit. */
  readonly at: string;
  readonly onEdit: (key: string) => void;
};

export const UnitScreen = (props: UnitScreenProps) => {
  const { view, place } = props;
  const word = useWord();
  const groups = (...ids: readonly string[]) => view.groups.filter(({ id }) => ids.includes(id));
  return (
    <Sheet
      title={{ name: view.site, under: view.unit }}
      back={{ to: '/', name: word('app.record.back') }}
      wide={{
        doing: (
          <>
            <Heading>{view.unit}</Heading>
            <p className="note lead">
              {view.family}. {word('app.unit.code', { code: view.code })}
            </p>
            <Undo {...props} />
            <Due view={view} />
            <FactGroups groups={groups('is', 'fitted', 'bed')} onEdit={props.onEdit} />
          </>
        ),
        picture: (
          <FactGroups groups={groups('rates', 'water', 'demand', 'supply', 'prices')} onEdit={props.onEdit} />
        ),
        why: (
          <>
            <SetNow view={view} />
            <Build view={view} />
            <History view={view} stream={place.stream} />
          </>
        ),
      }}
      actions={<Actions {...props} />}
    />
  );
};

const Due = ({ view }: { readonly view: UnitView }) => {
  const word = useWord();
  if (view.due.length + view.gaps.length === 0)
    return (
      <div className="lead">
        <Told>{word('app.unit.due.none')}</Told>
      </div>
    );
  return (
    <>
      <Lines title={word('app.unit.gaps')} lines={view.gaps} />
      <Lines title={word('app.unit.due')} lines={view.due} />
    </>
  );
};

const Lines = ({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) =>
  lines.length === 0 ? null : (
    <Section title={title}>
      <ul className="due">
        {lines.map((says) => (
          <li key={says}>{says}</li>
        ))}
      </ul>
    </Section>
  );

const SetNow = ({ view }: { readonly view: UnitView }) => {
  const word = useWord();
  return (
    <Section title={word('app.unit.set')}>
      {view.set.length === 0 ? (
        <p className="note">{word('app.unit.set.none')}</p>
      ) : (
        <Rows>
          {view.set.map(({ says, value }) => (
            <Row key={says} title={says} at={value} />
          ))}
        </Rows>
      )}
    </Section>
  );
};

const Build = ({ view }: { readonly view: UnitView }) => {
  const word = useWord();
  return view.build.length === 0 ? null : (
    <Section title={word('app.unit.build')}>
      <Rows>
        {view.build.map(({ name, value, sure }) => (
          <Row key={name} title={name} under={word('app.unit.build.sure', { sure })} at={value} />
        ))}
      </Rows>
    </Section>
  );
};

const History = ({ view, stream }: { readonly view: UnitView; readonly stream: string }) => {
  const word = useWord();
  return (
    <Section title={word('app.unit.history')}>
      {view.history.length === 0 ? <p className="note">{word('app.unit.history.none')}</p> : null}
      <Rows>
        {view.history.map(({ visit, title, complaint, parts, isHandedOver }) => (
          <Row
            key={visit}
            title={title}
            under={[complaint, ...parts].filter((text) => text !== undefined).join('. ')}
            at={
              <span className="note">
                {word(isHandedOver ? 'app.unit.history.handed' : 'app.unit.history.open')}
              </span>
            }
            to={`/visit/${stream}/${visit}/${isHandedOver ? 'hand-over' : ''}`}
          />
        ))}
      </Rows>
    </Section>
  );
};

const Actions = ({ view, place }: UnitScreenProps) => {
  const word = useWord();
  const { stream, conditioner } = place;
  return (
    <>
      <ButtonLink to={`/what-if?${view.whatIf}`}>{word('app.unit.what-if')}</ButtonLink>
      {view.visit === undefined ? null : (
        <ButtonLink to={`/visit/${stream}/${view.visit}/cutaway`}>{word('app.unit.cutaway')}</ButtonLink>
      )}
      <ButtonLink kind="main" to={`/new/${stream}/${conditioner}`}>
        {word('app.unit.new-visit')}
      </ButtonLink>
    </>
  );
};
