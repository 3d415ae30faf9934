import { ReadingScreen } from '../../../app/reading-entry.ts';
import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { FindView } from '../../../engine/views/find-view.ts';
import { undoOf } from '../../../offline/undo.ts';
import { correctReading, takeReading } from '../commands/take-reading.ts';
import { linesOf } from '../parts/lines-of.ts';
import { ChooseFault } from './choose-fault.tsx';
import { FindSheet } from './find-sheet.tsx';
import { OtherTests } from './other-tests.tsx';
import '../find.css';

type Props = StageProps<FindView>;

/** Finding the fault: the next test and the odds; one test; the other tests; or the fault chosen on site. */
export const FindScreen = (props: Props) => {
  const { view, nav } = props;
  if (nav.part === 'choose') return <ChooseFault {...props} />;
  if (nav.part === 'tests') return <OtherTests {...props} />;
  return nav.part === undefined || view.test === undefined ? (
    <FindSheet {...props} />
  ) : (
    <OneTest {...props} test={view.test} />
  );
};

const OneTest = ({ about, record, nav, test }: Props & { readonly test: NonNullable<FindView['test']> }) => {
  const word = useWord();
  const now = (): string => new Date().toISOString();
  return (
    <ReadingScreen
      key={test.id}
      ask={test}
      lines={linesOf(test, word)}
      cautions={test.cautions}
      draft={`${about.visit} reading ${test.id}`}
      mayFail={true}
      onTake={async (readings) => {
        await record(takeReading(about, test.id, readings, now()));
        nav.toPart(undefined);
      }}
      onCorrect={async (entry, reading) => {
        await record(correctReading(about, entry, test.id, reading, now()));
      }}
      onWithdraw={async (entry) => {
        await record(undoOf(about.stream, [entry], word('app.readings.withdrawn')));
      }}
      onLeave={() => nav.toPart(undefined)}
    />
  );
};
