import { type ReactNode, useId } from 'react';

export type FieldProps = {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: string | undefined;
  readonly wrong?: string | undefined;
  readonly lines?: boolean;
  readonly type?: 'text' | 'search' | 'date' | 'password';
  readonly mode?: 'text' | 'decimal' | 'numeric' | 'search';
  readonly hold?: string | undefined;
  readonly icon?: ReactNode;
};

/** Words typed in; what is wrong with them stands under the field. */
export const Field = (props: FieldProps) => {
  const { label, value, onChange, hint, wrong, lines = false, type = 'text', mode, hold, icon } = props;
  const id = useId();
  const said = wrong ?? hint;
  const shared = {
    id,
    value,
    'aria-invalid': wrong !== undefined || undefined,
    'aria-describedby': said === undefined ? undefined : `${id}-said`,
    placeholder: hold,
  };
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <div className={wrong === undefined ? 'field-box' : 'field-box wrong'}>
        {icon}
        {lines ? (
          <textarea {...shared} onChange={(event) => onChange(event.currentTarget.value)} />
        ) : (
          <input
            {...shared}
            type={type}
            inputMode={mode}
            autoComplete="off"
            onChange={(event) => onChange(event.currentTarget.value)}
          />
        )}
      </div>
      {said === undefined ? null : (
        <p id={`${id}-said`} className={wrong === undefined ? 'hint' : 'hint wrong'}>
          {said}
        </p>
      )}
    </div>
  );
};
