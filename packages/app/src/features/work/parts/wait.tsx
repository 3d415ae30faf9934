import { useWord } from '../../../app/words/use-word.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, useNow } from '../../../ui/index.ts';
import { readyAt } from './waiting.ts';

const notStarted = 0;

/** A wait from a moment on the clock: it goes on when the screen sleeps, the battery dies or the app is closed. */
export const Wait = (props: { readonly id: string; readonly minutes: number; readonly text: string }) => {
  const { id, minutes, text } = props;
  const word = useWord();
  const [startedAt, setStartedAt] = useDraft(id, notStarted);
  const now = useNow(startedAt === notStarted ? undefined : 1000);
  if (startedAt === notStarted)
    return (
      <div className="wait">
        <Button onPress={() => setStartedAt(Date.now())}>
          {word('app.work.wait.start', { time: text })}
        </Button>
      </div>
    );
  const { clock, minutesLeft, isReady } = readyAt(startedAt, minutes, now);
  return (
    <div className="wait running">
      <p role="status">
        <b>{word(isReady ? 'app.work.wait.ready' : 'app.work.wait.until', { clock })}</b>
      </p>
      {isReady ? null : <p className="note">{word('app.work.wait.left', { minutes: minutesLeft })}</p>}
      <Button kind="plain" onPress={() => setStartedAt(notStarted)}>
        {word('app.work.wait.clear')}
      </Button>
    </div>
  );
};
