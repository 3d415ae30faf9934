import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { WorkView } from '../../../engine/views/work/work-types.ts';
import { Choice, Facts, Section } from '../../../ui/index.ts';
import { apartNoted } from '../commands/found.ts';

type Props = Pick<StageProps<WorkView>, 'view' | 'about' | 'record'>;

/** What is shut, unplugged and off now, and how to say that it stands otherwise. */
export const Apart = ({ view, about, record }: Props) => {
  const word = useWord();
  const { states, off } = view.apart;
  if (states.length === 0) return null;
  return (
    <Section title={word('app.work.apart')}>
      <Facts items={states.map(({ name, says }) => ({ label: name, value: says }))} />
      {off.length === 0 ? null : (
        <>
          <p className="note">{word('app.work.apart.off')}</p>
          <ul className="lines">
            {off.map((order) => (
              <li key={order}>{order}</li>
            ))}
          </ul>
        </>
      )}
      <details className="standing plain">
        <summary>{word('app.work.apart.otherwise')}</summary>
        <p className="note">{word('app.work.apart.otherwise.says')}</p>
        {states.map(({ id, name, value, options }) => (
          <Choice
            key={id}
            label={name}
            value={value}
            options={options.map((one) => ({ value: one.value, label: one.says }))}
            onChange={(to) => void record(apartNoted(about, id, to))}
          />
        ))}
      </details>
    </Section>
  );
};
