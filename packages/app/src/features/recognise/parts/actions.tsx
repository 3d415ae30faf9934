import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { RecogniseView } from '../../../engine/views/recognise-view.ts';
import { Button, Icon } from '../../../ui/index.ts';

type Props = StageProps<RecogniseView> & {
  /** A tell that the address names is in hand, not the best one. */
  readonly isAside: boolean;
  readonly onUndo: () => Promise<void>;
};

export const Actions = ({ view, nav, isAside, onUndo }: Props) => {
  const word = useWord();
  if (isAside)
    return <Button onPress={() => nav.toPart(undefined)}>{word('app.recognise.back-to-question')}</Button>;
  return (
    <>
      {view.last === undefined ? null : (
        <Button onPress={() => void onUndo()}>{word('app.recognise.undo')}</Button>
      )}
      <Button kind={view.state === 'asking' ? 'usual' : 'main'} onPress={() => nav.toStage('find')}>
        {word('app.recognise.on')}
        <Icon name="on" />
      </Button>
    </>
  );
};
