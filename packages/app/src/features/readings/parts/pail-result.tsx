import { useWord } from '../../../app/words/use-word.ts';
import type { PailView } from '../../../engine/views/pail-view.ts';
import { Button, Figure, Notice, Section } from '../../../ui/index.ts';
import { type PailState, withoutRun } from '../pail-state.ts';

type Props = {
  readonly pail: PailState;
  readonly view: PailView | undefined;
  readonly onChange: (pail: PailState) => void;
};

/** Flow and how sure it is, at once; then the runs it stands on. */
export const PailResult = (props: Props) => {
  const { view } = props;
  const word = useWord();
  const keep = view?.keep;
  if (view === undefined || keep === undefined) return null;
  const count = view.runs.length;
  return (
    <div aria-live="polite">
      <dl className="pail-result">
        <div>
          <dt>
            {count === 1 ? word('app.readings.pail.flow') : word('app.readings.pail.median', { count })}
          </dt>
          <dd>
            <Figure text={keep.text} size="fig" derivation={count === 1 ? view.derivation : undefined} />
          </dd>
        </div>
        <div>
          <dt>{word('app.readings.sure')}</dt>
          <dd className="pail-sure">{keep.spread}</dd>
        </div>
      </dl>
      {count < 3 ? <p className="note">{word('app.readings.pail.three', { count })}</p> : null}
      {view.wild === undefined ? null : <Notice title={view.wild.says}>{view.wild.mend}</Notice>}
      {count === 1 ? null : <Runs {...props} view={view} />}
    </div>
  );
};

const Runs = ({ pail, view, onChange }: Props & { readonly view: PailView }) => {
  const word = useWord();
  return (
    <ol className="rows">
      {view.runs.map((run, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: runs are known by their number alone
        <li key={place} className="taken-row">
          <span>
            {word(run.isWild ? 'app.readings.pail.run.wild' : 'app.readings.pail.run', {
              number: place + 1,
              flow: run.text,
            })}
          </span>
          <Button kind="plain" onPress={() => onChange(withoutRun(pail, place))}>
            {word('app.readings.pail.drop')}
          </Button>
        </li>
      ))}
    </ol>
  );
};

/** Where the flow on the watch comes from: volume, time, and what mark and hand leave in doubt. */
export const PailWay = ({ view }: { readonly view: PailView | undefined }) => {
  const word = useWord();
  const last = view?.runs.at(-1);
  const way = view?.derivation;
  if (last === undefined || way === undefined) return null;
  return (
    <Section title={word('app.readings.comes-from', { flow: last.text })}>
      <p>{way.formula}</p>
      <dl className="pail-way">
        {[...way.inputs, ...(way.result === undefined ? [] : [way.result])].map(({ label, value }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <p className="note">{way.source}</p>
    </Section>
  );
};
