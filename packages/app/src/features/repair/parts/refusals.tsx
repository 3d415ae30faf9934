import { useWord } from '../../../app/words/use-word.ts';
import type { RepairView } from '../../../engine/views/repair/repair-types.ts';
import { Notice, Problem, Section } from '../../../ui/index.ts';

/** Look-alikes and wrong tools in the hand, what nobody makes, and what else does not fit. */
export const Refusals = ({ view }: { readonly view: RepairView }) => {
  const word = useWord();
  const { wrong, refused, remarks } = view;
  return (
    <>
      {wrong.length === 0 ? null : (
        <div className="problem">
          <b>{word('app.repair.wrong')}</b>
          <ul className="wrong-lines">
            {wrong.map(({ id, says }) => (
              <li key={id}>{says}</li>
            ))}
          </ul>
        </div>
      )}
      {refused.map((says) => (
        <Problem key={says} what={word('app.repair.refused')} why={says} />
      ))}
      {remarks.map(({ says, mend }) => (
        <Notice key={says} title={says}>
          {mend}
        </Notice>
      ))}
    </>
  );
};

/** Other parts that serve, and what they ask. */
export const Substitutes = ({ view }: { readonly view: RepairView }) => {
  const word = useWord();
  if (view.substitutes.length === 0) return null;
  return (
    <Section title={word('app.repair.substitutes')}>
      {view.substitutes.map((says) => (
        <p key={says} className="lead">
          {says}
        </p>
      ))}
    </Section>
  );
};
