import { useWord } from '../../app/words/use-word.ts';
import { Button, Counter, Problem } from '../../ui/index.ts';
import { differences } from './counting.ts';
import type { InHandStep } from './use-step-in-hand.ts';

/** Pieces counted by hand; too many is said at once, and a piece that cannot be found is recorded as missing. */
export const Counters = ({ hand }: { readonly hand: InHandStep }) => {
  const { step, counts, count, action } = hand;
  const word = useWord();
  const over = differences(counts, step.counts).filter(({ missing }) => missing < 0);
  const way = step.kind === 'back' ? 'app.work.count.in' : 'app.work.count.out';
  return (
    <div className="counters">
      {step.counts.map(({ is, name, of }) => (
        <Counter
          key={is}
          label={word(way, { name })}
          count={counts[is] ?? 0}
          of={of}
          onAdd={() => count(is, 1)}
          onTake={() => count(is, -1)}
        />
      ))}
      {over.map(({ is, name, missing }) => (
        <Problem
          key={is}
          what={word('app.work.count.over', { name, count: -missing })}
          why={word('app.work.count.over.mend')}
        />
      ))}
      {action.kind === 'count' && Object.keys(counts).length > 0 ? <Short hand={hand} /> : null}
    </div>
  );
};

const Short = ({ hand }: { readonly hand: InHandStep }) => {
  const word = useWord();
  return (
    <details className="standing plain">
      <summary>{word('app.work.count.short')}</summary>
      <p>{word('app.work.count.short.says')}</p>
      <div className="buttons">
        <Button onPress={hand.finish} blocked={hand.isStale ? word('app.work.planning') : undefined}>
          {word('app.work.count.short.record')}
        </Button>
      </div>
    </details>
  );
};
