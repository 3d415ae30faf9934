import { useWord } from '../../app/words/use-word.ts';
import { Button } from './button.tsx';
import { Icon } from './icon.tsx';

export type CounterProps = {
  readonly label: string;
  readonly count: number;
  readonly of: number;
  readonly onAdd: () => void;
  readonly onTake: () => void;
};

/** Counts only what is tapped. */
export const Counter = ({ label, count, of, onAdd, onTake }: CounterProps) => {
  const word = useWord();
  return (
    <div className="counter">
      <div>
        <span className="counter-label">{label}</span>
        <output className="counter-of" aria-label={word('app.ui.counter.said', { label, count, of })}>
          <b>{count}</b> {word('app.ui.counter.of', { of })}
        </output>
        <div className="tally" aria-hidden="true">
          {boxes(count, of).map(({ place, state }) => (
            <i key={place} className={state} />
          ))}
        </div>
      </div>
      <div className="counter-keys">
        <Button more="take" name={word('app.ui.counter.take', { label })} onPress={onTake}>
          <Icon name="minus" />
        </Button>
        <Button more="add" name={word('app.ui.counter.add', { label })} onPress={onAdd}>
          <Icon name="plus" />
        </Button>
      </div>
    </div>
  );
};

type Box = { readonly place: number; readonly state: 'in' | 'next' | 'over' | 'to-come' };

export const boxes = (count: number, of: number): readonly Box[] =>
  Array.from({ length: Math.max(count, of) }, (_, place) => ({ place, state: stateAt(place, count, of) }));

const stateAt = (place: number, count: number, of: number): Box['state'] => {
  if (place >= of) return 'over';
  if (place < count) return 'in';
  return place === count ? 'next' : 'to-come';
};
