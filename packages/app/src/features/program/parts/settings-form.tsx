import { useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { SettingField } from '../../../engine/views/program/fields.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, Field, Heading, QuantityField, Sheet } from '../../../ui/index.ts';
import { isWrong, type Typed, type TypedSettings } from '../commands/settings.ts';

export type SettingsFormProps = {
  readonly draft: string;
  readonly title: string;
  readonly under: string;
  readonly keep: string;
  readonly fields: readonly SettingField[];
  readonly initial: TypedSettings;
  readonly onKeep: (typed: TypedSettings) => Promise<void>;
  readonly onLeave: () => void;
};

/** The controller on the wall, field by field. */
export const SettingsForm = (props: SettingsFormProps) => {
  const { fields, initial, onKeep, onLeave } = props;
  const word = useWord();
  const [kept, setKept] = useDraft<TypedSettings>(props.draft, none);
  const [isTold, setTold] = useState(false);
  const typed = { ...initial, ...kept };
  const keep = async (): Promise<void> => {
    setTold(true);
    if (fields.some((field) => isWrong(field, typed[field.name]))) return;
    await onKeep(typed);
    setKept(none);
    onLeave();
  };
  return (
    <Sheet
      wide={{
        doing: (
          <>
            <Heading>{props.title}</Heading>
            <p className="note lead">{props.under}</p>
            <div className="stack lead">
              {fields.map((field) => (
                <SettingInput
                  key={field.name}
                  field={field}
                  typed={typed[field.name]}
                  wrong={isTold && isWrong(field, typed[field.name]) ? word('app.program.wrong') : undefined}
                  onChange={(value) => setKept({ ...kept, [field.name]: value })}
                />
              ))}
            </div>
          </>
        ),
      }}
      actions={
        <>
          <Button onPress={onLeave}>{word('app.program.leave')}</Button>
          <Button kind="main" onPress={() => void keep()}>
            {props.keep}
          </Button>
        </>
      }
    />
  );
};

const none: TypedSettings = {};

const SettingInput = (props: {
  readonly field: SettingField;
  readonly typed: Typed | undefined;
  readonly wrong: string | undefined;
  readonly onChange: (typed: Typed) => void;
}) => {
  const { field, typed, wrong, onChange } = props;
  const word = useWord();
  const figure = typed?.figure ?? '';
  const unit = typed?.unit ?? field.units[0] ?? '';
  if (field.kind === 'hour' || field.kind === 'count')
    return (
      <Field
        label={field.label}
        value={figure}
        mode={field.kind === 'count' ? 'decimal' : 'text'}
        hint={field.kind === 'hour' ? word('app.program.hour-hint') : undefined}
        wrong={wrong}
        onChange={(value) => onChange({ figure: value, unit })}
      />
    );
  return (
    <QuantityField
      label={field.label}
      kind={field.kind}
      units={field.units}
      value={{ figure, unit, known: 'value' }}
      onChange={(entry) => onChange({ figure: entry.figure, unit: entry.unit })}
      hint={wrong}
      size="small"
      mayLack={false}
    />
  );
};
