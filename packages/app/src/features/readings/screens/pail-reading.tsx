import { useWord } from '../../../app/words/use-word.ts';
import { useView } from '../../../engine/use-view.ts';
import type { QuantityAsk } from '../../../engine/views/reading-ask.ts';
import { useReader } from '../../../offline/reader.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Sheet, Timer } from '../../../ui/index.ts';
import { cleared, freshPail, isRunning, runsOf, started, stopped } from '../pail-state.ts';
import { AskHead } from '../parts/ask-head.tsx';
import { CannotDo } from '../parts/cannot-do.tsx';
import type { EditingProps } from '../parts/editing.ts';
import { Means } from '../parts/means.tsx';
import { PailActions } from '../parts/pail-actions.tsx';
import { PailResult, PailWay } from '../parts/pail-result.tsx';
import { Caught, volumesOf } from '../parts/pail-volume.tsx';
import { TakenList } from '../parts/taken-list.tsx';
import { useAwake } from '../parts/use-awake.ts';
import { type Way, WayChoice } from '../parts/way-choice.tsx';
import type { ReadingScreenProps } from './reading-screen.tsx';

type Props = ReadingScreenProps &
  EditingProps & { readonly quantity: QuantityAsk; readonly onWay: (way: Way) => void };

/** A watch over the whole screen: one tap starts it, one stops it, and the flow stands there at once. */
export const PailReading = (props: Props) => {
  const { ask, draft, onWay } = props;
  const word = useWord();
  const { system } = useReader();
  const { usual, unit } = volumesOf(system);
  const initial = freshPail(usual, unit);
  const [pail, setPail] = useDraft(`${draft} pail`, initial);
  const { view } = useView('pail', { runs: runsOf(pail) });
  useAwake(isRunning(pail));
  const doing = (
    <>
      <AskHead {...props} ask={{ ...ask, how: [...ask.how, word('app.readings.pail.how')] }} />
      <WayChoice way="pail" onWay={onWay} />
      <Timer
        state={{
          startedAt: pail.startedAt === 0 ? undefined : pail.startedAt,
          stoppedAt: pail.stoppedAt === 0 ? undefined : pail.stoppedAt,
        }}
        onStart={() => setPail(started(pail, Date.now()))}
        onStop={() => setPail(stopped(pail, Date.now()))}
        onClear={() => setPail(cleared(pail))}
      />
      <Caught pail={pail} system={system} onChange={setPail} />
      <PailResult pail={pail} view={view} onChange={setPail} />
      <CannotDo {...props} />
      <TakenList {...props} />
    </>
  );
  return (
    <Sheet
      wide={{
        doing,
        picture: <Means answers={ask.answers} title={word('app.readings.says')} />,
        ...(view?.derivation === undefined ? {} : { why: <PailWay view={view} /> }),
      }}
      actions={<PailActions {...props} pail={pail} view={view} onForget={() => setPail(initial)} />}
    >
      {doing}
      {view?.runs.length === 1 ? null : <PailWay view={view} />}
      <Means answers={ask.answers} title={word('app.readings.says')} />
    </Sheet>
  );
};
