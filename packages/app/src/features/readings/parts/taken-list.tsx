import { useWord } from '../../../app/words/use-word.ts';
import type { ReadingAsk, TakenReading } from '../../../engine/views/reading-ask.ts';
import { Button, Notice, Section } from '../../../ui/index.ts';
import type { EditingProps } from './editing.ts';

type Props = EditingProps & {
  readonly ask: ReadingAsk;
  readonly onWithdraw: (entry: string) => Promise<void>;
};

/** Readings of this so far, each to be changed or taken back. */
export const TakenList = ({ ask, onEdit, onWithdraw }: Props) => {
  const word = useWord();
  if (ask.taken.length === 0) return null;
  return (
    <Section title={word('app.readings.taken')}>
      {ask.wild === undefined ? null : <Notice title={ask.wild.says}>{ask.wild.mend}</Notice>}
      <ul className="rows taken">
        {ask.taken.map((one, place) => (
          <li key={one.entry ?? place}>
            <Taken reading={one} onEdit={onEdit} onWithdraw={onWithdraw} />
          </li>
        ))}
      </ul>
      {ask.quantity !== undefined && ask.taken.length > 1 ? (
        <p className="note">{word('app.readings.taken.again')}</p>
      ) : null}
    </Section>
  );
};

const Taken = (props: { readonly reading: TakenReading } & Pick<Props, 'onEdit' | 'onWithdraw'>) => {
  const { reading, onEdit, onWithdraw } = props;
  const word = useWord();
  const { entry, text, isWild } = reading;
  return (
    <div className="taken-row">
      <b>{isWild ? word('app.readings.taken.wild', { reading: text }) : text}</b>
      {entry === undefined ? null : (
        <span className="taken-keys">
          <Button
            kind="plain"
            name={word('app.readings.edit.of', { reading: text })}
            onPress={() => onEdit({ entry, reading })}
          >
            {word('app.readings.edit')}
          </Button>
          <Button
            kind="plain"
            name={word('app.readings.withdraw.of', { reading: text })}
            onPress={() => void onWithdraw(entry)}
          >
            {word('app.readings.withdraw')}
          </Button>
        </span>
      )}
    </div>
  );
};
