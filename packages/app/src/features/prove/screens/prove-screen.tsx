import { ReadingScreen } from '../../../app/reading-entry.ts';
import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { CheckView, ProveView } from '../../../engine/views/prove-view.ts';
import { undoOf } from '../../../offline/undo.ts';
import { correctCheck, readCheck } from '../commands/read-check.ts';
import { ProveSheet } from './prove-sheet.tsx';
import '../prove.css';

type Props = StageProps<ProveView>;

const now = (): string => new Date().toISOString();

/** All checks with their verdicts, or the reading of one of them. */
export const ProveScreen = (props: Props) => {
  const { view, about, record, nav } = props;
  const check = [...view.now, ...view.tomorrow].find(({ id }) => id === nav.part);
  if (check !== undefined && !check.isSeen) return <OneCheck {...props} check={check} />;
  return (
    <ProveSheet
      {...props}
      onSeen={async (id, state) => {
        await record(readCheck(about, id, [{ state }], now()));
      }}
    />
  );
};

const OneCheck = ({ about, record, nav, check }: Props & { readonly check: CheckView }) => {
  const word = useWord();
  return (
    <ReadingScreen
      key={check.id}
      ask={check.ask}
      lines={
        check.predicted === undefined
          ? []
          : [word('app.prove.predicted.of', { figure: check.predicted.text })]
      }
      cautions={[]}
      draft={`${about.visit} check ${check.id}`}
      mayFail={false}
      onTake={async (readings) => {
        await record(readCheck(about, check.id, readings, now()));
        nav.toPart(undefined);
      }}
      onCorrect={async (entry, reading) => {
        await record(correctCheck(about, entry, check.id, reading, now()));
      }}
      onWithdraw={async (entry) => {
        await record(undoOf(about.stream, [entry], word('app.prove.undone')));
      }}
      onLeave={() => nav.toPart(undefined)}
    />
  );
};
