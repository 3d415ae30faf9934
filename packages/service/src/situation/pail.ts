import { medianOfRepeats, pailRate, type Repeats } from '@brinewright/physics';
import { type Quantity, quantity } from '@brinewright/units';
import type { Issue } from '@brinewright/words';
import type { Figure, Figures } from '../derivation/figure.ts';
import { openLedger } from '../derivation/ledger.ts';

/** The mark of a pail is true within this share of what it holds; common practice, no source. */
const markShare = 0.03;

/** A hand starts and stops a watch this well; common practice, no source. */
const watch = quantity('time', 0.5);

export type TimedPail = {
  /** The flow with its standard uncertainty; nothing where no water or no time was caught. */
  readonly flow: (Figure & { readonly u: number }) | undefined;
  readonly figures: Figures;
  readonly issues: readonly Issue[];
};

/**
 * Flow from a pail filled to a mark while a watch ran, with what mark and watch leave in doubt.
 *
 * Assumes: the mark true within 3 % of its volume, the watch to half a second (common practice, no source).
 * Source: pailRate.
 * @example
 * ```ts
 * timedPail(fromUnit(0.25, 'gal', 'volume'), quantity('time', 75)).flow?.u // => 2.3418e-7
 * ```
 */
export const timedPail = (volume: Quantity<'volume'>, time: Quantity<'time'>): TimedPail => {
  const ledger = openLedger();
  ledger.given('pail.volume', { value: volume, how: 'measured' });
  ledger.given('pail.time', { value: time, how: 'measured' });
  ledger.assume('pail.mark', quantity('volume', volume.si * markShare), 'common-practice');
  ledger.assume('pail.watch', watch, 'common-practice');
  const isTimed = volume.si > 0 && time.si > 0 && derived(ledger);
  const figures = ledger.figures();
  const flow = figures['pail.flow'];
  const u = figures['pail.flow.u']?.quantity.si;
  return {
    flow: !isTimed || flow === undefined || u === undefined ? undefined : { ...flow, u },
    figures,
    issues: ledger.issues(),
  };
};

const derived = (ledger: ReturnType<typeof openLedger>): boolean =>
  ledger.derive(
    pailRate,
    {
      volume: 'pail.volume',
      markHalfWidth: 'pail.mark',
      time: 'pail.time',
      timeUncertainty: 'pail.watch',
    },
    { flow: 'pail.flow', flowUncertainty: 'pail.flow.u' },
  );

/** What repeats of one reading come to, by the rule that every stage takes them by; `u` is that of one of them. */
export const takenTogether = (values: readonly number[], u: number): Repeats | undefined =>
  values.length === 0 ? undefined : medianOfRepeats(values, u);
