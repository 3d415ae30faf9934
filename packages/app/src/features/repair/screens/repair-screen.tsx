import '../repair.css';
import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { RepairView } from '../../../engine/views/repair/repair-types.ts';
import { Button, Heading, Note, Notice, Section, Sheet, Told } from '../../../ui/index.ts';
import { Conversions, DecideFault } from '../parts/decide.tsx';
import { PartList } from '../parts/part-list.tsx';
import { Refusals, Substitutes } from '../parts/refusals.tsx';
import { StockList } from '../parts/stock-list.tsx';

/** Parts that fit what was built, and what else can be decided about the repair. */
export const RepairScreen = (props: StageProps<RepairView>) => {
  const { nav } = props;
  const word = useWord();
  return (
    <Sheet
      wide={{ doing: <ToDo {...props} />, picture: <Parts {...props} />, why: <Beside {...props} /> }}
      actions={
        <>
          <Button onPress={() => nav.toStage('find')}>{word('app.repair.to-find')}</Button>
          <Button kind="main" onPress={() => nav.toStage('work')}>
            {word('app.repair.to-work')}
          </Button>
        </>
      }
    >
      <ToDo {...props} />
      <Parts {...props} />
      <Beside {...props} />
    </Sheet>
  );
};

const ToDo = ({ view, nav }: StageProps<RepairView>) => {
  const word = useWord();
  return (
    <>
      <Heading>{word(view.targets.length === 0 ? 'app.repair.nothing' : 'app.repair.title')}</Heading>
      {view.advice.map((line) => (
        <p key={line} className="lead">
          {line}
        </p>
      ))}
      {view.gaps.map((gap) => (
        <Note key={gap}>{gap}</Note>
      ))}
      <ul className="targets">
        {view.targets.map((target) => (
          <li key={target}>{target}</li>
        ))}
      </ul>
      {view.setsProgram ? (
        <Notice
          title={word('app.repair.settings')}
          actions={<Button onPress={() => nav.toStage('program')}>{word('app.repair.to-program')}</Button>}
        />
      ) : null}
      <Refusals view={view} />
    </>
  );
};

const Parts = (props: StageProps<RepairView>) => {
  const { view } = props;
  const word = useWord();
  const isEmpty = view.parts.length === 0 && view.differs.length === 0;
  return (
    <>
      <Section title={word('app.repair.parts')} aside={view.total}>
        {isEmpty ? <Note>{word('app.repair.parts.none')}</Note> : <Covers {...props} />}
        <PartList {...props} parts={view.parts} />
      </Section>
      {view.differs.map((one) => (
        <Section key={one.when} title={word('app.repair.only-if', { build: one.when })}>
          <PartList {...props} parts={one.parts} />
        </Section>
      ))}
      <Substitutes view={view} />
      <StockList {...props} />
    </>
  );
};

/** Whether one list serves every build that may still be it. */
const Covers = ({ view, nav }: StageProps<RepairView>) => {
  const word = useWord();
  const { builds, isWhole, isDescribed } = view.covers;
  const tell = view.differs.find((one) => one.tell !== undefined)?.tell;
  if (!isDescribed) return null;
  if (isWhole) return <Told>{word('app.repair.covers', { count: builds })}</Told>;
  return (
    <Notice
      title={word('app.repair.differs', { count: builds })}
      actions={<Button onPress={() => nav.toStage('recognise')}>{word('app.repair.to-recognise')}</Button>}
    >
      {tell}
    </Notice>
  );
};

const Beside = (props: StageProps<RepairView>) => (
  <>
    <DecideFault {...props} />
    <Conversions {...props} />
  </>
);
