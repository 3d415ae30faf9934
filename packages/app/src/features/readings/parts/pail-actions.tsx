import { useWord } from '../../../app/words/use-word.ts';
import type { PailView } from '../../../engine/views/pail-view.ts';
import { Button } from '../../../ui/index.ts';
import { isRunning, type PailState } from '../pail-state.ts';
import type { ReadingScreenProps } from '../screens/reading-screen.tsx';

type Props = Pick<ReadingScreenProps, 'onTake' | 'onLeave'> & {
  readonly pail: PailState;
  readonly view: PailView | undefined;
  readonly onForget: () => void;
};

/** Every run is kept as a reading of its own; the engine takes them together. */
export const PailActions = ({ pail, view, onTake, onLeave, onForget }: Props) => {
  const word = useWord();
  const keep = async (): Promise<void> => {
    await onTake((view?.runs ?? []).map(({ value, u }) => ({ value, u })));
    onForget();
  };
  const reading = view?.keep?.text;
  return (
    <>
      <Button onPress={onLeave}>{word('app.readings.cancel')}</Button>
      {reading === undefined || isRunning(pail) ? (
        <Button
          kind="main"
          blocked={word(isRunning(pail) ? 'app.readings.pail.running' : 'app.readings.pail.not-yet')}
        >
          {word('app.readings.keep.blank')}
        </Button>
      ) : (
        <Button kind="main" onPress={() => void keep()}>
          {word('app.readings.keep', { reading })}
        </Button>
      )}
    </>
  );
};
