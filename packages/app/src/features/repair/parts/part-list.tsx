import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { PartView, RepairView } from '../../../engine/views/repair/repair-types.ts';
import { Button } from '../../../ui/index.ts';
import { inHandChanged, partUsed } from '../commands/repair-commands.ts';

type Props = Pick<StageProps<RepairView>, 'view' | 'about' | 'record'> & {
  readonly parts: readonly PartView[];
};

/** Line by line: what it is, how many, what for, and where it is. */
export const PartList = ({ view, parts, about, record }: Props) => (
  <ul className="parts">
    {parts.map((part) => (
      <PartLine
        key={part.id}
        part={part}
        onHand={() => void record(inHandChanged(about, view.kit, part.id))}
        onUse={(count) => void record(partUsed(about, part.id, count))}
      />
    ))}
  </ul>
);

type LineProps = {
  readonly part: PartView;
  readonly onHand: () => void;
  readonly onUse: (count: number) => void;
};

const PartLine = ({ part, onHand, onUse }: LineProps) => {
  const word = useWord();
  const { name, number, count, why, odds, price, used, where } = part;
  return (
    <li data-where={where}>
      <div className="part-line">
        <b className="part-count">{word('app.repair.count', { count })}</b>
        <div className="part-words">
          <p className="part-name">
            {name}
            {odds === undefined ? null : <span className="note"> {odds}</span>}
          </p>
          <p className="note">
            {[number, why === '' ? undefined : word('app.repair.why', { why })]
              .filter((words) => words !== undefined)
              .join(' · ')}
          </p>
        </div>
        <span className="part-price">{price}</span>
      </div>
      <p className="part-where">{whereSaid(word, part)}</p>
      <div className="buttons">
        <button type="button" className="toggle" aria-pressed={where === 'in-hand'} onClick={onHand}>
          {word('app.repair.in-hand')}
        </button>
        <Button
          onPress={() => onUse(count)}
          blocked={used >= count ? word('app.repair.used', { count: used }) : undefined}
        >
          {word('app.repair.use', { count })}
        </Button>
      </div>
    </li>
  );
};

const whereSaid = (word: ReturnType<typeof useWord>, { where, order }: PartView): string =>
  where === 'missing'
    ? word('app.repair.where.missing', { count: order })
    : word(`app.repair.where.${where}`);
