import { useWord } from '../../../app/words/use-word.ts';
import type { WorkView } from '../../../engine/views/work/work-types.ts';
import { Notice, Problem, Section } from '../../../ui/index.ts';

/** Why the plan stands still. */
export const Stopped = ({ view: { stopped } }: { readonly view: WorkView }) =>
  stopped === undefined || stopped.at === 'gate' ? null : <Problem what={stopped.why} why={stopped.mend} />;

/** What the plan says besides its steps: whom to warn, what does not fit, the way in. */
export const Remarks = ({ view }: { readonly view: WorkView }) => {
  const word = useWord();
  const { says, remarks, outage, building, wayIn } = view;
  return (
    <>
      {outage === '' && says.length === 0 ? null : (
        <Section title={word(outage === '' ? 'app.work.to-know' : 'app.work.outage')}>
          {outage === '' ? null : <p>{word('app.work.outage.says', { time: outage, building })}</p>}
          {says.map((line) => (
            <p key={line} className="note lead">
              {line}
            </p>
          ))}
        </Section>
      )}
      {remarks.map((remark) => (
        <Notice key={remark.says} title={remark.says}>
          {remark.mend}
        </Notice>
      ))}
      {wayIn === undefined ? null : (
        <details className="standing plain">
          <summary>{word('app.work.way-in', { time: wayIn.minutes, outage: wayIn.outage })}</summary>
          <ol className="acts">
            {wayIn.orders.map((order, place) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: an order may stand twice, and the list is only shown
              <li key={place}>{order}</li>
            ))}
          </ol>
        </details>
      )}
    </>
  );
};
