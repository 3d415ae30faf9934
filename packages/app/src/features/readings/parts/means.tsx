import { useWord } from '../../../app/words/use-word.ts';
import type { StateAnswer } from '../../../engine/views/reading-ask.ts';
import { Row, Rows, Section } from '../../../ui/index.ts';

/** What each band of the reading points to, and how likely it is. */
export const Means = ({
  answers,
  title,
}: {
  readonly answers: readonly StateAnswer[];
  readonly title: string;
}) => {
  const word = useWord();
  if (answers.length === 0) return null;
  return (
    <Section title={title}>
      <Rows>
        {answers.map(({ id, title: name, band, leads, share }) => (
          <Row
            key={id}
            title={band === undefined ? name : `${name}, ${band}`}
            under={leads === undefined ? undefined : word('app.readings.leads', { leads })}
            at={share}
          />
        ))}
      </Rows>
    </Section>
  );
};
