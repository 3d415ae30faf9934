import type { ReactNode } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { GateView, WorkView } from '../../../engine/views/work/work-types.ts';
import { Button, Heading, Sheet, useWide } from '../../../ui/index.ts';
import { GateAsks } from '../parts/gate.tsx';
import { places } from '../parts/places.ts';
import { Remarks } from '../parts/remarks.tsx';

type Props = StageProps<WorkView> & { readonly gate: GateView; readonly list: ReactNode };

/** Nothing is shut or opened until all of it holds. */
export const GateScreen = (props: Props) => {
  const { view, gate, list, nav } = props;
  const word = useWord();
  const isWide = useWide();
  const open = gate.asks.filter(({ met }) => !met).length;
  const main = (
    <Button
      kind="main"
      blocked={open === 0 ? undefined : word('app.work.gate.left', { count: open })}
      onPress={() => nav.toPart(gate.before)}
    >
      {word('app.work.gate.pass')}
    </Button>
  );
  const asks = (
    <>
      <p className="step-place note">
        <span>{word('app.work.gate.before')}</span>
        <span>{word('app.work.left', { time: view.minutesLeft })}</span>
      </p>
      <Heading>{word('app.work.gate.title')}</Heading>
      <p className="note lead">{word('app.work.gate.says')}</p>
      <GateAsks {...props} />
    </>
  );
  if (isWide)
    return (
      <Sheet
        wide={{
          doing: list,
          picture: asks,
          why: (
            <div className="work-side">
              <div>
                <Remarks view={view} />
              </div>
              <div className="work-actions">{main}</div>
            </div>
          ),
        }}
      />
    );
  return (
    <Sheet actions={main}>
      {asks}
      <div className="buttons">
        <Button onPress={() => nav.toPart(places.list)}>{word('app.work.operations.all')}</Button>
      </div>
      <Remarks view={view} />
    </Sheet>
  );
};
