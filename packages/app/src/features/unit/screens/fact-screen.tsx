import { useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { FactForm, FactView } from '../../../engine/views/unit/fact.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, Choice, Field, Heading, QuantityField, Sheet } from '../../../ui/index.ts';
import { sayFact, type TypedFact } from '../commands/say-fact.ts';
import { useLastSaid } from '../parts/undo.tsx';
import type { UnitScreenProps } from './unit-screen.tsx';
import '../unit.css';

export type FactScreenProps = Omit<UnitScreenProps, 'onEdit'> & {
  readonly fact: FactView;
  readonly onLeave: () => void;
};

/** One value said anew; the old one stays in the journal. */
export const FactScreen = ({ view, place, record, at, fact, onLeave }: FactScreenProps) => {
  const word = useWord();
  const initial = initialOf(fact);
  const [kept, setKept] = useDraft(`${place.stream} ${place.conditioner} ${fact.key}`, untouched);
  const [, setLast] = useLastSaid(place);
  const [isTold, setTold] = useState(false);
  const typed = kept === untouched ? initial : kept;
  const drafts = sayFact(place, fact, typed);
  const keep = async (): Promise<void> => {
    setTold(true);
    if (drafts.length === 0) return;
    setLast({ ids: await record(drafts), label: fact.label });
    setKept(untouched);
    onLeave();
  };
  return (
    <Sheet
      title={{ name: view.site, under: view.unit }}
      back={{ to: at, name: word('app.unit.leave') }}
      wide={{
        doing: (
          <div className="stack">
            <Heading>{fact.label}</Heading>
            {fact.value === undefined ? null : (
              <p className="note">{word('app.unit.was', { value: fact.value })}</p>
            )}
            <FactField
              label={fact.label}
              form={fact.form}
              typed={typed}
              wrong={isTold && drafts.length === 0 ? word('app.unit.wrong') : undefined}
              onChange={setKept}
            />
            {fact.edit.kind === 'water-analysed' ? (
              <p className="note">{word('app.unit.water-note')}</p>
            ) : null}
          </div>
        ),
      }}
      actions={
        <>
          <Button onPress={onLeave}>{word('app.unit.leave')}</Button>
          <Button kind="main" onPress={() => void keep()}>
            {word('app.unit.keep')}
          </Button>
        </>
      }
    />
  );
};

const untouched: TypedFact = { figure: '', unit: '', how: 'measured' };

/** A form begins with what stands there now. */
const initialOf = ({ form, how }: FactView): TypedFact => {
  const known = how?.id ?? 'measured';
  switch (form.kind) {
    case 'quantity':
      return { figure: form.figure, unit: form.unit, how: known };
    case 'choice':
      return { figure: form.chosen ?? '', unit: '', how: known };
    default:
      return { figure: form.text, unit: '', how: known };
  }
};

type FieldProps = {
  readonly label: string;
  readonly form: FactForm;
  readonly typed: TypedFact;
  readonly wrong: string | undefined;
  readonly onChange: (typed: TypedFact) => void;
};

const FactField = ({ label, form, typed, wrong, onChange }: FieldProps) => {
  const word = useWord();
  const set = (figure: string): void => onChange({ ...typed, figure });
  if (form.kind === 'choice')
    return (
      <Choice
        label={label}
        look="list"
        options={form.options}
        value={typed.figure === '' ? undefined : typed.figure}
        onChange={set}
      />
    );
  if (form.kind !== 'quantity')
    return (
      <Field
        label={label}
        value={typed.figure}
        hint={form.kind === 'range' ? word('app.unit.range-hint', { example: form.example }) : undefined}
        wrong={wrong}
        onChange={set}
      />
    );
  return (
    <>
      <QuantityField
        label={label}
        kind={form.quantity}
        units={form.units}
        value={{ figure: typed.figure, unit: typed.unit, known: 'value' }}
        onChange={({ figure, unit }) => onChange({ ...typed, figure, unit })}
        hint={wrong}
        mayLack={false}
      />
      {form.asksHow ? <How typed={typed} onChange={onChange} /> : null}
    </>
  );
};

const ways = ['measured', 'read', 'told', 'assumed'] as const;

const How = ({ typed, onChange }: Pick<FieldProps, 'typed' | 'onChange'>) => {
  const word = useWord();
  return (
    <Choice
      label={word('app.unit.how')}
      options={ways.map((value) => ({ value, label: word(`app.unit.how.${value}`) }))}
      value={typed.how}
      onChange={(how) => onChange({ ...typed, how })}
    />
  );
};
