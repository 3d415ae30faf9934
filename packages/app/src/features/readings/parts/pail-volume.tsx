import type { UnitSystem } from '@brinewright/units';
import { useWord } from '../../../app/words/use-word.ts';
import { Choice, QuantityField } from '../../../ui/index.ts';
import type { PailState } from '../pail-state.ts';

const cup = '8 fl oz';

type Marks = { readonly usual: string; readonly unit: string; readonly marks: readonly string[] };

/** Marks of the pails and jugs that are at hand; a cup is called by its name. */
const volumes: Readonly<Record<UnitSystem, Marks>> = {
  us: { usual: '1 gal', unit: 'gal', marks: [cup, '1 qt', '1 gal', '5 gal'] },
  metric: { usual: '1 L', unit: 'L', marks: ['250 mL', '1 L', '5 L', '10 L'] },
};

export const volumesOf = (system: UnitSystem): Marks => volumes[system];

const units = ['gal', 'qt', 'L'] as const;

type Props = {
  readonly pail: PailState;
  readonly system: UnitSystem;
  readonly onChange: (pail: PailState) => void;
};

/** What was caught: four usual marks, or one of its own. */
export const Caught = ({ pail, system, onChange }: Props) => {
  const word = useWord();
  const marks = volumes[system].marks.map((value) => ({
    value,
    label: value === cup ? word('app.readings.pail.cup') : value.replace(' ', '\u00a0'),
  }));
  const options = [...marks, { value: '', label: word('app.readings.pail.other') }];
  return (
    <div className="pail-caught">
      <Choice
        label={word('app.readings.pail.caught')}
        options={options}
        value={pail.volume}
        onChange={(volume) => onChange({ ...pail, volume })}
      />
      {pail.volume === '' ? (
        <QuantityField
          label={word('app.readings.pail.other.volume')}
          kind="volume"
          units={units}
          size="small"
          value={{ figure: pail.own, unit: pail.ownUnit, known: 'value' }}
          onChange={({ figure, unit }) => onChange({ ...pail, own: figure, ownUnit: unit })}
          mayLack={false}
        />
      ) : null}
    </div>
  );
};
