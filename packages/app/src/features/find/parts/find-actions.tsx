import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { FindView } from '../../../engine/views/find-view.ts';
import { Button, Icon } from '../../../ui/index.ts';

/** The test in hand while one helps; the repair once it is clear enough. */
export const FindActions = ({ view, nav }: StageProps<FindView>) => {
  const word = useWord();
  const { next, canAct } = view;
  return (
    <>
      <Button onPress={() => nav.toPart('tests')}>{word('app.find.other-tests')}</Button>
      {canAct || next === undefined ? (
        <Button kind="main" onPress={() => nav.toStage('repair')}>
          {word('app.find.on')}
          <Icon name="on" />
        </Button>
      ) : (
        <Button kind="main" onPress={() => nav.toPart(next.id)}>
          {word('app.find.take-reading')}
          <Icon name="on" />
        </Button>
      )}
    </>
  );
};
