import { useWord } from '../../../app/words/use-word.ts';
import type { QuantityAsk } from '../../../engine/views/reading-ask.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, emptyEntry, QuantityField, Row, Rows, readEntry, unitShown } from '../../../ui/index.ts';
import type { QuestionProps } from './question.tsx';

type Props = QuestionProps & { readonly measure: QuantityAsk; readonly isUnsure: boolean };

/** A size to be measured, with the sizes that would be found beneath it. */
export const Measured = ({ question, measure, draft, isUnsure, onAnswer }: Props) => {
  const word = useWord();
  const initial = emptyEntry(measure.units[0] ?? '');
  const [entry, setEntry] = useDraft(draft, initial);
  const read = readEntry(measure.kind, entry);
  const figure = entry.figure.trim().replace(',', '.');
  const keep = async (): Promise<void> => {
    await onAnswer(`${figure} ${entry.unit}`, isUnsure);
    setEntry(initial);
  };
  return (
    <div className="measured">
      <QuantityField
        label={word('app.recognise.measure')}
        kind={measure.kind}
        units={measure.units}
        value={entry}
        onChange={setEntry}
        u={measure.spread.find(({ unit }) => unit === entry.unit)?.text}
        mayLack={false}
      />
      {read?.ok === true ? (
        <Button kind="main" onPress={() => void keep()}>
          {word('app.recognise.keep', { size: `${figure}\u00a0${unitShown(measure.kind, entry.unit)}` })}
        </Button>
      ) : (
        <Button kind="main" blocked={word('app.recognise.keep.missing')}>
          {word('app.recognise.keep.blank')}
        </Button>
      )}
      <Rows>
        {question.answers.map(({ id, title, goesWith, leaves, share }) => (
          <Row
            key={id}
            title={goesWith === undefined ? title : `${title}: ${goesWith}`}
            under={leaves}
            at={share}
          />
        ))}
      </Rows>
    </div>
  );
};
