import { useWord } from '../../../app/words/use-word.ts';
import type { QuantityAsk } from '../../../engine/views/reading-ask.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { emptyEntry, type QuantityEntry, QuantityField, Sheet, unitShown } from '../../../ui/index.ts';
import { oddReading } from '../odd-reading.ts';
import { AskHead } from '../parts/ask-head.tsx';
import { CannotDo } from '../parts/cannot-do.tsx';
import type { Editing, EditingProps } from '../parts/editing.ts';
import { KeyedActions } from '../parts/keyed-actions.tsx';
import { Means } from '../parts/means.tsx';
import { OddNotice } from '../parts/odd-notice.tsx';
import { TakenList } from '../parts/taken-list.tsx';
import { type Way, WayChoice } from '../parts/way-choice.tsx';
import type { ReadingScreenProps } from './reading-screen.tsx';

export type KeyedProps = ReadingScreenProps &
  EditingProps & { readonly quantity: QuantityAsk; readonly onWay: (way: Way) => void };

/** A figure at arm's length with its unit beside it, and how sure it is. */
export const KeyedReading = (props: KeyedProps) => {
  const { ask, quantity, draft, editing } = props;
  const word = useWord();
  const initial = entryOf(quantity, editing);
  const [entry, setEntry] = useDraft(`${draft} ${editing?.entry ?? 'new'}`, initial);
  const doing = <Doing {...props} entry={entry} onChange={setEntry} />;
  const means =
    ask.answers.length === 0 ? undefined : <Means answers={ask.answers} title={word('app.readings.says')} />;
  return (
    <Sheet
      wide={means === undefined ? { doing } : { doing, picture: means }}
      actions={<KeyedActions {...props} entry={entry} onForget={() => setEntry(initial)} />}
    >
      {doing}
      {means}
    </Sheet>
  );
};

const entryOf = ({ units }: QuantityAsk, editing: Editing | undefined): QuantityEntry => ({
  ...emptyEntry(editing?.reading.unit ?? units[0] ?? ''),
  figure: editing?.reading.figure ?? '',
});

type DoingProps = KeyedProps & {
  readonly entry: QuantityEntry;
  readonly onChange: (entry: QuantityEntry) => void;
};

const Doing = (props: DoingProps) => {
  const { quantity, editing, onWay, entry, onChange } = props;
  const { kind, byPail } = quantity;
  return (
    <>
      <AskHead {...props} />
      {byPail && editing === undefined ? <WayChoice way="key" onWay={onWay} /> : null}
      <FigureField {...props} />
      <OddNotice
        odd={oddReading(quantity, entry)}
        kind={kind}
        figure={entry.figure.trim()}
        shown={`${entry.figure.trim()}\u00a0${unitShown(kind, entry.unit)}`}
        onUnit={(unit) => onChange({ ...entry, unit })}
      />
      {editing === undefined ? <CannotDo {...props} /> : null}
      <TakenList {...props} />
    </>
  );
};

const FigureField = ({ quantity, editing, entry, onChange }: DoingProps) => {
  const word = useWord();
  const { kind, units, spread } = quantity;
  const sure = spread.find(({ unit }) => unit === entry.unit)?.text;
  return (
    <div className="reading-figure">
      <QuantityField
        label={
          editing === undefined
            ? word('app.readings.figure')
            : word('app.readings.editing', { reading: editing.reading.text })
        }
        kind={kind}
        units={units.includes(entry.unit) ? units : [...units, entry.unit]}
        value={entry}
        onChange={onChange}
        u={sure}
        hint={sure === undefined ? undefined : word('app.readings.sure')}
        mayLack={false}
      />
    </div>
  );
};
