import { useEffect, useRef } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { StepView, WorkView } from '../../../engine/views/work/work-types.ts';
import { Button, Heading } from '../../../ui/index.ts';
import { canSpeak, readAloud } from './aloud.ts';

/** The order with its tools and side. */
export const StepHead = ({ view, step }: { readonly view: WorkView; readonly step: StepView }) => {
  const word = useWord();
  const facts = [
    { label: word('app.work.tool'), value: step.tools },
    { label: word('app.work.side'), value: step.side },
  ].filter(({ value }) => value !== '');
  const top = useRef<HTMLParagraphElement>(null);
  const { id } = step;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another step begins at its top, wherever the last one ended
  useEffect(() => {
    void top.current?.scrollIntoView({ block: 'nearest' });
  }, [id]);
  return (
    <>
      <p className="only-heard" role="status">
        {step.order}
      </p>
      <p className="step-place note" ref={top}>
        <span>{word('app.work.place', { number: step.number, of: view.steps.length })}</span>
        <span>{word('app.work.left', { time: view.minutesLeft })}</span>
      </p>
      <Heading>{step.order}</Heading>
      {step.onlyWith === undefined ? null : <p className="note lead">{step.onlyWith}</p>}
      {facts.length === 0 ? null : (
        <dl className="step-facts">
          {facts.map(({ label, value }) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      )}
    </>
  );
};

export const ReadAloud = ({
  words,
  language,
}: {
  readonly words: string;
  readonly language: 'en' | 'es';
}) => {
  const word = useWord();
  return canSpeak() ? (
    <Button onPress={() => readAloud(words, language)}>{word('app.work.aloud')}</Button>
  ) : null;
};
