import type { QuantityKind } from '@brinewright/units';
import { useId } from 'react';
import { useWord } from '../../app/words/use-word.ts';
import { type QuantityEntry, readEntry, unitShown } from './quantity-entry.ts';

export type QuantityFieldProps = {
  readonly label: string;
  readonly kind: QuantityKind;
  /** Symbols of the table of units, the usual one first. */
  readonly units: readonly string[];
  readonly value: QuantityEntry;
  readonly onChange: (value: QuantityEntry) => void;
  /** How far off it may be, as words: '± 0.3 gpg'. */
  readonly u?: string | undefined;
  readonly hint?: string | undefined;
  readonly size?: 'arm' | 'small';
  /** Whether it may be left unseen or unsure; yes, unless said. */
  readonly mayLack?: boolean;
};

/** A figure with its unit as a choice, and the two answers that are always there. */
export const QuantityField = (props: QuantityFieldProps) => {
  const { label, kind, value, onChange, u, hint, size = 'arm', mayLack = true } = props;
  const word = useWord();
  const id = useId();
  const isUnseen = value.known === 'cannot-see';
  const wrong = readEntry(kind, value)?.ok === false ? word('app.ui.quantity.no-number') : undefined;
  const said = [wrong ?? hint, wrong === undefined ? u : undefined].filter((text) => text !== undefined);
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <div className={['quantity-box', size, isUnseen ? 'unknown' : ''].join(' ').trim()}>
        <input
          id={id}
          inputMode="decimal"
          autoComplete="off"
          value={isUnseen ? '' : value.figure}
          aria-invalid={wrong !== undefined || undefined}
          aria-describedby={said.length === 0 ? undefined : `${id}-said`}
          onChange={(event) =>
            onChange({ ...value, figure: event.currentTarget.value, known: isUnseen ? 'value' : value.known })
          }
        />
        <Units {...props} />
      </div>
      {said.length === 0 ? null : (
        <p id={`${id}-said`} className={wrong === undefined ? 'hint' : 'hint wrong'}>
          {said.join(' ')}
        </p>
      )}
      {mayLack ? <Known value={value} onChange={onChange} /> : null}
    </div>
  );
};

const Units = ({ label, kind, units, value, onChange, size }: QuantityFieldProps) => {
  const word = useWord();
  const name = useId();
  const [only] = units;
  if (only !== undefined && units.length === 1)
    return <span className="quantity-unit">{unitShown(kind, only)}</span>;
  return (
    <fieldset
      className={size === 'small' ? 'quantity-units level' : 'quantity-units'}
      aria-label={word('app.ui.quantity.unit-of', { label })}
    >
      {units.map((unit) => (
        <label key={unit}>
          <input
            type="radio"
            name={name}
            checked={unit === value.unit}
            onChange={() => onChange({ ...value, unit })}
          />
          {unitShown(kind, unit)}
        </label>
      ))}
    </fieldset>
  );
};

const Known = ({ value, onChange }: Pick<QuantityFieldProps, 'value' | 'onChange'>) => {
  const word = useWord();
  const toggle = (known: 'cannot-see' | 'unsure') => ({
    'aria-pressed': value.known === known,
    onClick: () => onChange({ ...value, known: value.known === known ? 'value' : known }),
  });
  return (
    <div className="known-row">
      <button type="button" className="toggle" {...toggle('cannot-see')}>
        {word('app.ui.quantity.cannot-see')}
      </button>
      <button type="button" className="toggle" {...toggle('unsure')}>
        {word('app.ui.quantity.unsure')}
      </button>
    </div>
  );
};
