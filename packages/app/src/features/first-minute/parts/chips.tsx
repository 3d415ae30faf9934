import type { Chip } from '../../../engine/views/first-minute-view.ts';

export type ChipsProps = {
  readonly name: string;
  /** Word for those beyond the first few. */
  readonly more: string;
  readonly all: readonly Chip[];
  readonly chosen: readonly string[];
  readonly onChange: (chosen: readonly string[]) => void;
};

const first = 6;

/** Any number of a few words; the usual ones first, the rest a tap away. */
export const Chips = (props: ChipsProps) => {
  const { name, more, all, chosen } = props;
  const shown = all.filter(({ id }, place) => place < first || chosen.includes(id));
  const others = all.filter((chip) => !shown.includes(chip));
  return (
    <fieldset aria-label={name}>
      <ChipRow {...props} all={shown} />
      {others.length === 0 ? null : (
        <details className="more">
          <summary>{more}</summary>
          <ChipRow {...props} all={others} />
        </details>
      )}
    </fieldset>
  );
};

const ChipRow = ({ all, chosen, onChange }: ChipsProps) => (
  <div className="known-row">
    {all.map(({ id, title }) => {
      const isChosen = chosen.includes(id);
      return (
        <button
          key={id}
          type="button"
          className="toggle"
          aria-pressed={isChosen}
          onClick={() => onChange(isChosen ? chosen.filter((one) => one !== id) : [...chosen, id])}
        >
          {title}
        </button>
      );
    })}
  </div>
);
