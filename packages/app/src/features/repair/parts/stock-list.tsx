import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { RepairView, StockView } from '../../../engine/views/repair/repair-types.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, Counter, Section } from '../../../ui/index.ts';
import { stockListed } from '../commands/repair-commands.ts';

type Counts = Readonly<Record<string, number>>;
type Props = Pick<StageProps<RepairView>, 'view' | 'about' | 'record' | 'isStale'>;
const nothing: Counts = {};

/** What lies in the van: counted here, kept as one list. */
export const StockList = ({ view, about, record, isStale }: Props) => {
  const word = useWord();
  const [draft, setDraft] = useDraft<Counts>(`stock ${about.visit}`, nothing);
  const lines = linesWith(view, draft);
  const keep = (): void => void record(stockListed(about, lines)).then(() => setDraft(nothing));
  return (
    <Section title={word('app.repair.van')}>
      <p className="note">{word('app.repair.van.says')}</p>
      {lines.map(({ part, name, number, count }) => (
        <Counter
          key={part}
          label={[name, number].filter((words) => words !== undefined).join(', ')}
          count={count ?? 0}
          of={wanted(view, part)}
          onAdd={() => setDraft({ ...draft, [part]: (count ?? 0) + 1 })}
          onTake={() => setDraft({ ...draft, [part]: Math.max(0, (count ?? 0) - 1) })}
        />
      ))}
      <OtherPart view={view} onChoose={(part) => setDraft({ ...draft, [part]: draft[part] ?? 1 })} />
      <div className="buttons">
        <Button
          onPress={keep}
          blocked={
            isStale
              ? word('app.work.planning')
              : draft === nothing
                ? word('app.repair.van.nothing')
                : undefined
          }
        >
          {word('app.repair.van.keep')}
        </Button>
      </div>
    </Section>
  );
};

const linesWith = ({ stock, catalogue }: RepairView, draft: Counts): readonly StockView[] => {
  const known = new Set(stock.map(({ part }) => part));
  const more = Object.keys(draft)
    .filter((part) => !known.has(part))
    .map((part): StockView => ({ part, name: catalogue.find(({ id }) => id === part)?.name ?? part }));
  return [...stock, ...more].map((line) => {
    const count = draft[line.part] ?? line.count;
    return count === undefined ? line : { ...line, count };
  });
};

/** How many the plan takes; one of anything else. */
const wanted = ({ parts, differs }: RepairView, part: string): number =>
  [...parts, ...differs.flatMap((one) => one.parts)].find(({ id }) => id === part)?.count ?? 1;

const OtherPart = ({
  view,
  onChoose,
}: {
  readonly view: RepairView;
  readonly onChoose: (part: string) => void;
}) => {
  const word = useWord();
  if (view.catalogue.length === 0) return null;
  return (
    <label className="field other-part">
      <span className="field-label">{word('app.repair.van.other')}</span>
      <span className="field-box">
        <select value="" onChange={(event) => onChoose(event.currentTarget.value)}>
          <option value="">{word('app.repair.van.choose')}</option>
          {view.catalogue.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </span>
    </label>
  );
};
