import { useWord } from '../../../app/words/use-word.ts';
import type { DoseView } from '../../../engine/views/program/doses.ts';
import { Choice } from '../../../ui/index.ts';

export type DosesProps = {
  readonly doses: readonly DoseView[];
  readonly isDecided: boolean;
  readonly onChoose: (value: string) => void;
};

/** From least salt to longest run; a choice is written down and the program follows it. */
export const Doses = ({ doses, isDecided, onChoose }: DosesProps) => {
  const word = useWord();
  const chosen = doses.find(({ isChosen }) => isChosen);
  if (doses.length === 0) return null;
  return (
    <div className="doses">
      <Choice
        label={word('app.program.dose.choose')}
        options={doses.map(({ value, dose }) => ({ value, label: figureOf(dose) }))}
        value={chosen?.value}
        onChange={onChoose}
      />
      <div className="dose-ends note">
        <span>{word('app.program.dose.least')}</span>
        <span>{word('app.program.dose.longest')}</span>
      </div>
      {chosen === undefined ? null : (
        <p className="note" aria-live="polite">
          {word('app.program.dose.gives', { salt: chosen.salt, volume: chosen.volume })}{' '}
          {word(isDecided ? 'app.program.dose.decided' : 'app.program.dose.usual')}
        </p>
      )}
    </div>
  );
};

/** The unit stands once, in the heading. */
const figureOf = (dose: string): string => dose.split('\u00a0')[0] ?? dose;
