import '../../../steps/steps.css';
import '../work.css';
import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { WorkView } from '../../../engine/views/work/work-types.ts';
import { Button, Heading, Note, Sheet } from '../../../ui/index.ts';
import { FoundSomething } from '../parts/found.tsx';
import { OperationList } from '../parts/operation-list.tsx';
import { places } from '../parts/places.ts';
import { Remarks } from '../parts/remarks.tsx';
import { AllDone } from './all-done.tsx';
import { GateScreen } from './gate-screen.tsx';
import { OperationScreen } from './operation-screen.tsx';

/** The work: the operation in hand, the gate, the list of all, or what was found. */
export const WorkScreen = (props: StageProps<WorkView>) => {
  const { view, nav } = props;
  const shown = view.steps.some(({ id }) => id === nav.part) || nav.part === 'gate' ? nav.part : view.now;
  const step = view.steps.find(({ id }) => id === shown);
  const list = <Operations view={view} shown={shown} onShow={nav.toPart} />;
  if (nav.part === places.found)
    return <Sheet wide={{ doing: <FoundSomething {...props} at={step?.order} /> }} />;
  if (nav.part === places.list) return <ListOfAll {...props} shown={shown} />;
  if (view.state !== 'plan') return <NothingToDo {...props} />;
  if (shown === 'gate' && view.gate !== undefined)
    return <GateScreen {...props} gate={view.gate} list={list} />;
  if (step !== undefined) return <OperationScreen {...props} step={step} list={list} />;
  return <AllDone {...props} list={list} />;
};

const Operations = (props: {
  readonly view: WorkView;
  readonly shown: string | undefined;
  readonly onShow: (id: string) => void;
}) => {
  const word = useWord();
  const { steps, done, minutesLeft } = props.view;
  return (
    <>
      <div className="head-line">
        <h2>{word('app.work.operations')}</h2>
        <span className="note">
          {word('app.work.done-of', { done, of: steps.length })},{' '}
          {word('app.work.left', { time: minutesLeft })}
        </span>
      </div>
      <OperationList {...props} />
    </>
  );
};

/** The whole plan as a list, for a phone. */
const ListOfAll = (props: StageProps<WorkView> & { readonly shown: string | undefined }) => {
  const { view, nav, shown } = props;
  const word = useWord();
  return (
    <Sheet
      wide={{
        doing: (
          <>
            <Heading>{word('app.work.operations.all')}</Heading>
            <div className="buttons">
              <Button onPress={() => nav.toPart(undefined)}>{word('app.work.back')}</Button>
            </div>
            <OperationList view={view} shown={shown} onShow={nav.toPart} />
          </>
        ),
        picture: <Remarks view={view} />,
      }}
    />
  );
};

/** No target yet: what is missing, and where it is found. */
const NothingToDo = ({ view, nav }: StageProps<WorkView>) => {
  const word = useWord();
  return (
    <Sheet
      wide={{
        doing: (
          <>
            <Heading>{word('app.work.nothing')}</Heading>
            {view.gaps.map((gap) => (
              <Note key={gap}>{gap}</Note>
            ))}
            <Remarks view={view} />
          </>
        ),
      }}
      actions={
        <>
          <Button onPress={() => nav.toStage('repair')}>{word('app.work.to-repair')}</Button>
          <Button kind="main" onPress={() => nav.toStage('find')}>
            {word('app.work.to-find')}
          </Button>
        </>
      }
    />
  );
};
