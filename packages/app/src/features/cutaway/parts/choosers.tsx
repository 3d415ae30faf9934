import { useWord } from '../../../app/words/use-word.ts';
import type { CutChoice } from '../../../engine/views/cutaway/address.ts';
import type { CutawayView } from '../../../engine/views/cutaway-view.ts';
import { Choice, Section } from '../../../ui/index.ts';

export type ChooserProps = {
  readonly view: CutawayView;
  /** What changes; the rest of the choice stays. */
  readonly onChoose: (change: CutChoice) => void;
};

/** The stops in the order of the cycle. */
export const Stops = ({ view, onChoose }: ChooserProps) => {
  const word = useWord();
  return (
    <div className="cut-stops">
      <Choice
        label={word('app.cutaway.stop')}
        options={view.stops.map(({ id, name }) => ({ value: id, label: name }))}
        value={view.stop}
        onChange={(stop) => onChoose({ stop })}
      />
    </div>
  );
};

/** One button for each seal; dashed where a tear shows nothing at this stop. */
export const Seals = ({ view, onChoose }: ChooserProps) => {
  const word = useWord();
  const torn = view.seals.find(({ isTorn }) => isTorn);
  return (
    <Section title={word('app.cutaway.tear')}>
      <div className="seals">
        {view.seals.map(({ number, isTorn, leaksHere, isSuspected }) => (
          <button
            key={number}
            type="button"
            className={leaksHere ? 'seal' : 'seal quiet'}
            aria-pressed={isTorn}
            aria-label={word(isSuspected ? 'app.cutaway.seal.suspected' : 'app.cutaway.seal', {
              seal: number,
            })}
            onClick={() => onChoose({ torn: isTorn ? undefined : number })}
          >
            {number}
            {isSuspected ? <span aria-hidden="true">?</span> : null}
          </button>
        ))}
      </div>
      <p className="note" aria-live="polite">
        {torn === undefined ? word('app.cutaway.tear.quiet') : shows(word, torn)}
      </p>
    </Section>
  );
};

const shows = (
  word: ReturnType<typeof useWord>,
  { number, showsAt }: CutawayView['seals'][number],
): string =>
  showsAt === undefined
    ? word('app.cutaway.tear.never', { seal: number })
    : word('app.cutaway.tear.shows', { seal: number, stop: showsAt });

/** The right piston, another of the same body, or the sleeve left out. */
export const Pistons = ({ view, onChoose }: ChooserProps) => {
  const word = useWord();
  if (view.pistons.length === 0) return null;
  return (
    <div className="section">
      <Choice
        label={word('app.cutaway.piston')}
        look="list"
        options={view.pistons.map(({ id, name }) => ({ value: id, label: name }))}
        value={view.pistons.find(({ isFitted }) => isFitted)?.id}
        onChange={(piston) => onChoose({ piston })}
      />
    </div>
  );
};
