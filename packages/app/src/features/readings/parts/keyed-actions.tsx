import { useWord } from '../../../app/words/use-word.ts';
import { Button, type QuantityEntry, readEntry, unitShown } from '../../../ui/index.ts';
import type { KeyedProps } from '../screens/keyed-reading.tsx';

type Props = KeyedProps & { readonly entry: QuantityEntry; readonly onForget: () => void };

/** The main action says the figure. */
export const KeyedActions = (props: Props) => {
  const { quantity, editing, entry, onLeave, onEdit } = props;
  const word = useWord();
  const figure = entry.figure.trim().replace(',', '.');
  const reading = `${figure}\u00a0${unitShown(quantity.kind, entry.unit)}`;
  return (
    <>
      <Button onPress={editing === undefined ? onLeave : () => onEdit(undefined)}>
        {word('app.readings.cancel')}
      </Button>
      <Keep {...props} reading={reading} value={`${figure} ${entry.unit}`.trim()} />
    </>
  );
};

const Keep = (props: Props & { readonly reading: string; readonly value: string }) => {
  const { quantity, editing, entry, reading, value, onTake, onCorrect, onForget, onEdit } = props;
  const word = useWord();
  const read = readEntry(quantity.kind, entry);
  if (read === undefined)
    return (
      <Button kind="main" blocked={word('app.readings.keep.missing')}>
        {word('app.readings.keep.blank')}
      </Button>
    );
  if (!read.ok)
    return (
      <Button kind="main" blocked={word('app.readings.keep.wrong')}>
        {word('app.readings.keep.blank')}
      </Button>
    );
  const keep = async (): Promise<void> => {
    if (editing === undefined) await onTake([{ value }]);
    else await onCorrect(editing.entry, { value });
    onForget();
    onEdit(undefined);
  };
  return (
    <Button kind="main" onPress={() => void keep()}>
      {word(editing === undefined ? 'app.readings.keep' : 'app.readings.change', { reading })}
    </Button>
  );
};
