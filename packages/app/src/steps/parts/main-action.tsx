import type { Say } from '../../app/words/say.ts';
import { useWord } from '../../app/words/use-word.ts';
import { Button } from '../../ui/index.ts';
import type { Difference } from './counting.ts';
import type { InHandStep } from './use-step-in-hand.ts';

/** The one button of a step: the fact seen, what is missing, or done. */
export const MainAction = ({
  hand,
  onGo,
}: {
  readonly hand: InHandStep;
  readonly onGo: (id: string) => void;
}) => {
  const word = useWord();
  const { action, isStale, step } = hand;
  const busy = isStale ? word('app.work.planning') : undefined;
  switch (action.kind) {
    case 'was-done':
      return step.entry === undefined ? null : (
        <Button onPress={() => hand.takeBack(step)} blocked={busy}>
          {word('app.work.undo')}
        </Button>
      );
    case 'blocked':
      return (
        <Button kind="main" onPress={() => onGo(action.at)}>
          {word('app.work.first', { why: action.why })}
        </Button>
      );
    case 'fact':
      return (
        <Button kind="main" onPress={() => hand.acknowledge(action.caution.id)} blocked={busy}>
          {action.caution.fact}
        </Button>
      );
    case 'count':
      if (isStale)
        return (
          <Button kind="main" blocked={word('app.work.planning')}>
            {word('app.work.mark-done')}
          </Button>
        );
      return (
        <Button
          kind="main"
          blocked={word(isShort(action.differences) ? 'app.work.count.blocked' : 'app.work.count.again')}
        >
          {missingSaid(word, action.differences)}
        </Button>
      );
    case 'done':
      return (
        <Button kind="main" onPress={hand.finish} blocked={busy}>
          {word('app.work.mark-done')}
        </Button>
      );
  }
};

/** '3 seals, 1 ring'; too many are said beside the counter, and what is over here. */
const missingSaid = (word: Say, differences: readonly Difference[]): string => {
  const missing = differences.filter((one) => one.missing > 0);
  const [over] = differences;
  if (missing.length === 0 && over !== undefined)
    return word('app.work.count.too-many', { count: -over.missing, name: nameOf(over) });
  return missing.map((one) => `${one.missing}\u00a0${nameOf(one)}`).join(', ');
};

const isShort = (differences: readonly Difference[]): boolean =>
  differences.some(({ missing }) => missing > 0);

const nameOf = ({ missing, one, name }: Difference): string =>
  Math.abs(missing) === 1 ? one : name.toLowerCase();
