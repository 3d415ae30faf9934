import { useEffect, useRef } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { WorkView } from '../../../engine/views/work/work-types.ts';
import { Icon } from '../../../ui/index.ts';

type Line = { readonly id: string; readonly number: string; readonly words: string; readonly done: boolean };

/** All operations: done with a tick, the one looked at as a block of ink, the rest plain. */
export const OperationList = (props: {
  readonly view: WorkView;
  readonly shown: string | undefined;
  readonly onShow: (id: string) => void;
}) => {
  const { view, shown, onShow } = props;
  const word = useWord();
  const here = useRef<HTMLLIElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the one shown comes into sight when another is shown
  useEffect(() => {
    void here.current?.scrollIntoView({ block: 'center' });
  }, [shown]);
  return (
    <ol className="operations">
      {linesOf(view, word('app.work.gate')).map(({ id, number, words, done }) => (
        <li key={id} ref={id === shown ? here : undefined}>
          <button
            type="button"
            className={stateOf(done, id === view.now)}
            aria-current={id === shown ? 'step' : undefined}
            onClick={() => onShow(id)}
          >
            <span className="operation-number">{number}</span>
            <span>{words}</span>
            {done ? (
              <>
                <Icon name="tick" />
                <span className="only-heard">{word('app.work.done')}</span>
              </>
            ) : null}
          </button>
        </li>
      ))}
    </ol>
  );
};

const stateOf = (done: boolean, isNow: boolean): string => (done ? 'done' : isNow ? 'now' : 'waiting');

const linesOf = ({ steps, gate }: WorkView, gateName: string): readonly Line[] => {
  const lines = steps.map(({ id, number, order, done }) => ({
    id,
    number: String(number),
    words: order,
    done,
  }));
  if (gate === undefined) return lines;
  const at = lines.findIndex(({ id }) => id === gate.before);
  return lines.toSpliced(at < 0 ? lines.length : at, 0, {
    id: 'gate',
    number: '',
    words: gateName,
    done: gate.passed,
  });
};

/** The ids in the order of the list, for looking at the next or the last. */
export const orderOfList = (view: WorkView): readonly string[] => linesOf(view, '').map(({ id }) => id);
