import { useWord } from '../../app/words/use-word.ts';
import type { CautionView } from '../../engine/views/work/work-types.ts';
import { Caution } from '../../ui/index.ts';

/** Cautions of a step: the one to be acknowledged in full, what was seen as a line each, all others as one line. */
export const StepCautions = ({ cautions }: { readonly cautions: readonly CautionView[] }) => {
  const seen = cautions.filter((one) => one.seen !== undefined && one.fact !== undefined);
  const due = cautions.filter((one) => one.isDue && one.seen === undefined);
  const standing = cautions.filter((one) => !seen.includes(one) && !due.includes(one));
  return (
    <>
      {due.map((caution) => (
        <Caution
          key={caution.id}
          signal={caution.signal}
          text={
            <>
              <p>{caution.does}</p>
              <Acts act={caution.act} />
            </>
          }
        />
      ))}
      {seen.map((caution) => (
        <Seen key={caution.id} caution={caution} />
      ))}
      {standing.length === 0 ? null : <Standing cautions={standing} />}
    </>
  );
};

const Seen = ({ caution: { signal, fact = '', seen } }: { readonly caution: CautionView }) => {
  const word = useWord();
  const at = seen?.at;
  const done = at === undefined ? `${signal} ${fact}.` : word('app.work.seen', { signal, fact, at });
  return <Caution signal={signal} done={done} />;
};

const Standing = ({ cautions }: { readonly cautions: readonly CautionView[] }) => (
  <details className="standing">
    <summary>
      <b>{cautions.map(({ signal }) => signal).join(' ')}</b>
    </summary>
    {cautions.map(({ id, signal, does, act }) => (
      <div key={id} className="standing-one">
        <p>
          <b>{signal}</b> {does}
        </p>
        <Acts act={act} />
      </div>
    ))}
  </details>
);

const Acts = ({ act }: { readonly act: readonly string[] }) => (
  <ol className="acts">
    {act.map((line) => (
      <li key={line}>{line}</li>
    ))}
  </ol>
);
