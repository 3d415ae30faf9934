import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { FindView } from '../../../engine/views/find-view.ts';
import { undoOf } from '../../../offline/undo.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, Heading, InHand } from '../../../ui/index.ts';

type Props = StageProps<FindView> & { readonly decided: NonNullable<FindView['decided']> };

/** The entry of the choice, while it is known on the device that wrote it. */
export const useChoiceEntry = (visit: string) => useDraft(`${visit} fault-entry`, '');

/** The fault chosen on site, and why; taken back where it was chosen on this device. */
export const Decided = ({ decided, about, record }: Props) => {
  const word = useWord();
  const [entry, setEntry] = useChoiceEntry(about.visit);
  const takeBack = async (): Promise<void> => {
    await record(undoOf(about.stream, [entry], word('app.find.chosen.taken-back')));
    setEntry('');
  };
  return (
    <InHand tag={word('app.find.chosen')}>
      <Heading>{decided.title}</Heading>
      {decided.reason === undefined ? null : <p>{decided.reason}</p>}
      {entry === '' ? null : (
        <div className="buttons">
          <Button onPress={() => void takeBack()}>{word('app.find.chosen.take-back')}</Button>
        </div>
      )}
    </InHand>
  );
};
