import type { Message } from '@brinewright/words';
import { at, mean } from '../recognition/bayes.ts';
import type { Situation } from '../situation/situation.ts';
import { byThenId } from '../stage/rank.ts';
import type { Clue } from './clues.ts';
import type { FaultOdds } from './diagnosis.ts';
import { type Hypotheses, sealsOf } from './hypotheses.ts';

/** Odds from which a fault is called likely, and possible; ours. */
const wordFrom = { likely: 0.5, possible: 0.1 } as const;

/** As many reasons as are shown for a fault, and for its contrary. */
const shownReasons = 3;

/** A reason that moves the odds by less than a fifth is not named; ours. */
const leastReason = Math.log(1.2);

export const wordOf = (p: number): FaultOdds['word'] =>
  p >= wordFrom.likely ? 'likely' : p >= wordFrom.possible ? 'possible' : 'unlikely';

/** Every fault with its odds, what it was before the last reading, and what speaks for and against it. */
export const faultOdds = (
  s: Situation,
  { ids, faults, prior }: Hypotheses,
  odds: Float64Array,
  before: Float64Array,
  clues: readonly Clue[],
): readonly FaultOdds[] => {
  const weights = clues.map((clue) => ({ clue, average: mean(prior, clue.likelihood) }));
  return ids
    .map((fault, h): FaultOdds => {
      const definition = faults[h];
      const reasons = weights.map(({ clue, average }) => ({
        clue,
        weight: Math.log(at(clue.likelihood, h) / average),
      }));
      return {
        fault,
        p: at(odds, h),
        before: at(before, h),
        word: wordOf(at(odds, h)),
        ...(definition === undefined ? {} : { definition }),
        seals: definition === undefined ? [] : sealsOf(s.family, definition),
        speaksFor: strongest(reasons),
        speaksAgainst: strongest(reasons.map(({ clue, weight }) => ({ clue, weight: -weight }))),
      };
    })
    .sort(
      byThenId(
        ({ p }) => p,
        ({ fault }) => fault,
      ),
    );
};

type Reason = { readonly clue: Clue; readonly weight: number };

const strongest = (reasons: readonly Reason[]): readonly Message[] =>
  reasons
    .filter(({ weight }) => weight >= leastReason)
    .sort(
      byThenId(
        ({ weight }) => weight,
        ({ clue }) => clue.id,
      ),
    )
    .slice(0, shownReasons)
    .map(({ clue }) => clue.says);

/**
 * What the odds of one fault stand on: measurements where one of them speaks for it most, stated odds of readings
 * otherwise; what was told only as long as nothing was read.
 */
export const standsOnOf = (
  { ids, prior }: Hypotheses,
  fault: string,
  clues: readonly Clue[],
): 'measured' | 'stated-odds' | 'told' => {
  if (clues.every(({ is }) => is === 'told')) return 'told';
  const h = ids.indexOf(fault);
  const gain = (clue: Clue) => Math.log(at(clue.likelihood, h) / mean(prior, clue.likelihood));
  const [best] = clues
    .map((clue) => ({ clue, weight: gain(clue) }))
    .filter(({ weight }) => weight >= leastReason)
    .sort(
      byThenId(
        ({ weight }) => weight,
        ({ clue }) => clue.id,
      ),
    );
  return best?.clue.is === 'measured' ? 'measured' : 'stated-odds';
};
