import { useEffect, useState } from 'react';
import { useWord } from '../../app/words/use-word.ts';
import { Button } from './button.tsx';
import { clockText, elapsed, type TimerState } from './timer-state.ts';

export type TimerProps = {
  readonly state: TimerState;
  readonly onStart: () => void;
  readonly onStop: () => void;
  readonly onClear: () => void;
};

/** Counts from a moment on the clock, so that it goes on when the screen sleeps or the battery dies. */
export const Timer = ({ state, onStart, onStop, onClear }: TimerProps) => {
  const word = useWord();
  const isRunning = state.startedAt !== undefined && state.stoppedAt === undefined;
  const { whole, part } = clockText(elapsed(state, useNow(isRunning ? 100 : undefined)));
  return (
    <div>
      <p className="watch" role="timer">
        {whole}
        <small>{part}</small>
      </p>
      <div className="watch-keys">
        <Button onPress={onClear}>{word('app.ui.timer.clear')}</Button>
        {isRunning ? (
          <Button more="stop" onPress={onStop}>
            {word('app.ui.timer.stop')}
          </Button>
        ) : (
          <Button more="stop" onPress={onStart}>
            {word('app.ui.timer.start')}
          </Button>
        )}
      </div>
    </div>
  );
};

/** The clock of the device, read every so many milliseconds while something depends on it. */
export const useNow = (every: number | undefined): number => {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    setNow(Date.now());
    if (every === undefined) return undefined;
    const timer = setInterval(() => setNow(Date.now()), every);
    return () => clearInterval(timer);
  }, [every]);
  return now;
};
