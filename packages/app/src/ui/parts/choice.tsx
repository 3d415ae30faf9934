import { useId } from 'react';

export type Option<V extends string> = {
  readonly value: V;
  readonly label: string;
  readonly under?: string | undefined;
};

export type ChoiceProps<V extends string> = {
  readonly label: string;
  readonly options: readonly Option<V>[];
  readonly value: V | undefined;
  readonly onChange: (value: V) => void;
  /** A row for a few short words, a list for sentences. */
  readonly look?: 'row' | 'list';
};

/** One of a few. */
export const Choice = <V extends string>({
  label,
  options,
  value,
  onChange,
  look = 'row',
}: ChoiceProps<V>) => {
  const name = useId();
  return (
    <fieldset className="choice">
      <legend>{label}</legend>
      <div className={`choice-${look}`}>
        {options.map((option) => (
          <label key={option.value}>
            <input
              type="radio"
              name={name}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            {option.label}
            {option.under === undefined ? null : <small>{option.under}</small>}
          </label>
        ))}
      </div>
    </fieldset>
  );
};
