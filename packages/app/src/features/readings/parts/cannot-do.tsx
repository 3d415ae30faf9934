import { useWord } from '../../../app/words/use-word.ts';
import { Button } from '../../../ui/index.ts';
import type { ReadingScreenProps } from '../screens/reading-screen.tsx';

type Props = Pick<ReadingScreenProps, 'mayFail' | 'onTake'>;

/** Given up here and now; another test is asked for instead. */
export const CannotDo = ({ mayFail, onTake }: Props) => {
  const word = useWord();
  if (!mayFail) return null;
  return (
    <div className="buttons">
      <Button onPress={() => void onTake([{ state: 'cannot-do' }])}>{word('app.readings.cannot')}</Button>
    </div>
  );
};
