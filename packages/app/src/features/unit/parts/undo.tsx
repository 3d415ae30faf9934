import { useWord } from '../../../app/words/use-word.ts';
import type { RecordEntries } from '../../../engine/stage-props.ts';
import { undoOf } from '../../../offline/undo.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, Notice } from '../../../ui/index.ts';
import type { UnitPlace } from '../commands/say-fact.ts';

/** What was said last on this unit, so that it can be taken back from the unit's own place. */
export const useLastSaid = ({ stream, conditioner }: UnitPlace) =>
  useDraft<LastSaid>(`${stream} ${conditioner} said`, nothing);

export type LastSaid = { readonly ids: readonly string[]; readonly label: string };
export const nothing: LastSaid = { ids: [], label: '' };

export const Undo = ({ place, record }: { readonly place: UnitPlace; readonly record: RecordEntries }) => {
  const word = useWord();
  const [last, setLast] = useLastSaid(place);
  if (last.ids.length === 0) return null;
  const undo = async (): Promise<void> => {
    await record(undoOf(place.stream, last.ids, word('app.unit.undo')));
    setLast(nothing);
  };
  return (
    <Notice
      title={word('app.unit.kept', { label: last.label })}
      actions={<Button onPress={() => void undo()}>{word('app.unit.undo')}</Button>}
    />
  );
};
