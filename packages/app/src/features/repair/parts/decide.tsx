import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { RepairView } from '../../../engine/views/repair/repair-types.ts';
import { Button, Choice, Section } from '../../../ui/index.ts';
import { decided } from '../commands/repair-commands.ts';

type Props = Pick<StageProps<RepairView>, 'view' | 'about' | 'record'>;

/** What is mended, whatever the odds say. */
export const DecideFault = ({ view, about, record }: Props) => {
  const word = useWord();
  if (view.faults.length === 0) return null;
  return (
    <Section title={word('app.repair.decide')}>
      <p className="note">{word('app.repair.decide.says')}</p>
      <Choice
        label={word('app.repair.decide.fault')}
        look="list"
        value={view.faults.find(({ chosen }) => chosen)?.value}
        options={view.faults.map(({ value, title, under }) => ({ value, label: title, under }))}
        onChange={(value) => void record(decided(about, 'fault', value))}
      />
    </Section>
  );
};

/** What the valve can become, and what is looked at before. */
export const Conversions = ({ view, about, record }: Props) => {
  const word = useWord();
  if (view.conversions.length === 0) return null;
  return (
    <Section title={word('app.repair.convert')}>
      <ul className="conversions">
        {view.conversions.map(({ value, title, asks, chosen }) => (
          <li key={value}>
            <b>{title}</b>
            {asks.map((ask) => (
              <p key={ask} className="note">
                {word('app.repair.convert.asks', { ask })}
              </p>
            ))}
            <div className="buttons">
              <Button
                onPress={() => void record(decided(about, 'convert', value))}
                blocked={chosen ? word('app.repair.convert.chosen') : undefined}
              >
                {word('app.repair.convert.choose')}
              </Button>
            </div>
          </li>
        ))}
      </ul>
    </Section>
  );
};
