import { useWord } from '../../app/words/use-word.ts';
import type { StepView } from '../../engine/views/work/work-types.ts';

/** How it is done, what goes back, and what to look over before it counts as done. */
export const StepHow = ({ step }: { readonly step: StepView }) => {
  const word = useWord();
  return (
    <>
      {step.how.length === 0 ? null : (
        <ol className="acts">
          {step.how.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ol>
      )}
      {step.consumables.length === 0 ? null : (
        <p className="lead">{word('app.work.with', { what: step.consumables.join('. ') })}</p>
      )}
      {step.puts.map((line) => (
        <p key={line} className="lead">
          {line}
        </p>
      ))}
      {step.lookOvers.length === 0 ? null : (
        <>
          <h2 className="mind">{word('app.work.mind')}</h2>
          <ul className="lines">
            {step.lookOvers.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
};
