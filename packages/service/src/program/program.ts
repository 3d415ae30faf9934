import { type Issue, type Message, message } from '@brinewright/words';
import { type Ledger, openLedger } from '../derivation/ledger.ts';
import type { Situation } from '../situation/situation.ts';
import { blocked, done, type Gap, type Stage } from '../stage/stage.ts';
import { putFilterProgram } from './filter-program.ts';
import { foundNotes } from './found-notes.ts';
import { controlInstead, drainInstead } from './instead.ts';
import { putLeak } from './leak.ts';
import { onceNotes } from './once.ts';
import type { ProgramAdvice } from './program-advice.ts';
import { putRatesToCome } from './rates.ts';
import { setNotes } from './set-notes.ts';
import { siteNotes } from './site-notes.ts';
import { decidedDose, putAdvised, putDose, putDoses, putFound, putInterval } from './softener-program.ts';
import { putBrine, putHardness, putRules, putSalt } from './softener-rules.ts';
import { backwashWindow } from './window.ts';
import { putYear } from './year.ts';

/**
 * The program: every timed step that the fitted controller holds, with both rounding neighbours, the backwash window,
 * the interval, what the found settings cost, and what is to be done once. What cannot be said for want of an input is
 * left out; the situation's gaps say what would settle it.
 */
export const program = (s: Situation): Stage<ProgramAdvice> => {
  const ledger = openLedger(s.figures);
  const advice = s.kind === 'softener' ? softener(s, ledger) : filter(s, ledger);
  const more = { figures: ledger.figures(), issues: [...unreadDose(s), ...ledger.issues()] };
  if (saysNothing(advice.value)) return blocked([...advice.gaps, nothingYet(s)], more);
  return done(advice.value, { ...more, gaps: advice.gaps });
};

/** An assumed backwash or rinse alone is no program. */
const saysNothing = ({ settings, window, volume }: ProgramAdvice): boolean =>
  window === undefined &&
  volume === undefined &&
  settings.every(({ step, found }) => found === undefined && (step === 'backwash' || step === 'fast-rinse'));

type Advised = { readonly value: ProgramAdvice; readonly gaps: readonly Gap[] };

const softener = (s: Situation, ledger: Ledger): Advised => {
  putRules(ledger);
  putSalt(s, ledger);
  putHardness(ledger);
  putBrine(s, ledger);
  putFound(s, ledger);
  putDose(s, ledger);
  const doses = putDoses(ledger);
  const lift = liftOf(s, ledger);
  putRatesToCome(s, ledger, lift.window);
  const timed = putAdvised(s, ledger);
  const interval = putInterval(s, ledger);
  const leak = putLeak(ledger);
  const { year, gaps, notes } = putYear(s, ledger);
  return {
    value: {
      settings: timed.settings,
      ...(interval.volume === undefined ? {} : { volume: interval.volume }),
      ...(interval.days === undefined ? {} : { days: interval.days }),
      ...(lift.window === undefined ? {} : { window: lift.window }),
      doses,
      year,
      once: onceNotes(s, ledger),
      notes: [
        ...leak,
        ...foundNotes(ledger),
        ...controlInstead(s, ledger),
        ...notes,
        ...timed.notes,
        ...setNotes(ledger),
        ...interval.notes,
        ...windowNotes(s, ledger, lift),
        ...siteNotes(s, ledger),
      ],
    },
    gaps,
  };
};

const filter = (s: Situation, ledger: Ledger): Advised => {
  const lift = liftOf(s, ledger);
  putRatesToCome(s, ledger, lift.window);
  const timed = putFilterProgram(s, ledger);
  const leak = putLeak(ledger);
  const { year, gaps } = putYear(s, ledger);
  return {
    value: {
      settings: timed.settings,
      ...(timed.days === undefined ? {} : { days: timed.days }),
      ...(lift.window === undefined ? {} : { window: lift.window }),
      doses: [],
      year,
      once: [],
      notes: [...leak, ...timed.notes, ...windowNotes(s, ledger, lift)],
    },
    gaps,
  };
};

const liftOf = (s: Situation, ledger: Ledger): Lifted =>
  s.medium === undefined
    ? { notes: [] }
    : backwashWindow(ledger, s.medium, s.family.controls.drain, s.subject.pail !== undefined);

type Lifted = ReturnType<typeof backwashWindow>;

const windowNotes = (s: Situation, ledger: Ledger, { window, notes }: Lifted): readonly Message[] => [
  ...drainInstead(s, ledger, window),
  ...notes,
];

/** A decided dose without its unit is not guessed. */
const unreadDose = (s: Situation): readonly Issue[] => {
  const place = (s.visit.decided ?? []).findLastIndex(({ what }) => what === 'dose');
  const written = s.visit.decided?.[place]?.value;
  if (written === undefined || decidedDose(s) !== undefined) return [];
  return [
    {
      code: 'dose-not-read',
      severity: 'warning',
      at: ['decided', place, 'value'],
      message: message('program.dose-not-read', { dose: written }),
      mend: message('program.dose-not-read-mend'),
    },
  ];
};

const nothingYet = (s: Situation): Gap => ({
  needs: ['conditioners', s.subject.id],
  message: message('program.gap.nothing'),
  settles: ['program', 'proof'],
});
