import {
  airGapNeeded,
  flowLimits,
  judge,
  type Limits,
  repeatsToDecide,
  volumeLimits,
} from '@brinewright/physics';
import { fromUnit, quantity } from '@brinewright/units';
import { type Issue, type Message, message } from '@brinewright/words';
import type { Figure, Figures } from '../derivation/figure.ts';
import { type Ledger, openLedger } from '../derivation/ledger.ts';
import type { ProgramAdvice } from '../program/program-advice.ts';
import type { Situation } from '../situation/situation.ts';
import { done, type Stage } from '../stage/stage.ts';
import { type CheckDefinition, checkDefinitions } from './checks.ts';
import type { Proof, ProofCheck } from './proof.ts';
import { readProof } from './read-proof.ts';

/**
 * The proof: each check with its limits, what is predicted, what was read and the verdict after JCGM 106, parted into
 * now and tomorrow (what only a regeneration shows).
 */
export const prove = (s: Situation, advice: ProgramAdvice | undefined, figures: Figures): Stage<Proof> => {
  const ledger = openLedger(figures);
  putLimits(s, ledger, advice);
  const issues: Issue[] = [];
  const checks = checkDefinitions
    .filter(({ kinds }) => kinds.includes(s.kind))
    .map((definition) => checkOf(s, ledger, definition, issues));
  return done(
    { checks, says: summary(checks) },
    { figures: ledger.figures(), issues: [...issues, ...ledger.issues()] },
  );
};

/** More repeats than this nobody makes with a pail; ours. */
const mostRepeats = 10;

/** Where the definition gives none: common practice of the trade. */
const tolerances = { backwash: 0.1, draw: 0.12, refill: 0.05 } as const;

const putLimits = (s: Situation, ledger: Ledger, advice: ProgramAdvice | undefined): void => {
  const softest = fromUnit(1, 'gpg', 'hardness');
  for (const id of ['outlet-hardness', 'outlet-hardness-after', 'hardness-at-the-end'])
    ledger.assume(`proof.${id}.upper`, softest, 'common-practice');
  ledger.assume('proof.drain-in-service.upper', fromUnit(0.03, 'gpm', 'flow'), 'common-practice');
  putBackwashLimits(ledger, advice);
  ledger.assume('proof.tolerance.draw', quantity('share', tolerances.draw), 'common-practice');
  putSame(ledger, 'proof.brine-draw.predicted', ['situation.rate.draw']);
  ledger.derive(
    flowLimits,
    { expectedFlow: 'proof.brine-draw.predicted', tolerance: 'proof.tolerance.draw' },
    { lowerFlow: 'proof.brine-draw.lower', upperFlow: 'proof.brine-draw.upper' },
  );
  ledger.assume('proof.tolerance.refill', quantity('share', tolerances.refill), 'common-practice');
  ledger.derive(
    volumeLimits,
    { expectedVolume: 'program.as-set.refill.water', tolerance: 'proof.tolerance.refill' },
    { lowerVolume: 'proof.refill-water.lower', upperVolume: 'proof.refill-water.upper' },
  );
  putTask(s, ledger);
  ledger.derive(airGapNeeded, { pipeDiameter: 'situation.drain.pipe' }, { airGap: 'proof.air-gap.lower' });
};

/** The first of these that is known. */
const putSame = (ledger: Ledger, id: string, candidates: readonly string[]): void => {
  const from = candidates.find(ledger.has);
  if (from !== undefined)
    ledger.choose(id, quantity('flow', ledger.need(from)), 'same', { from }, { as: from });
};

/** What a filter is there for: iron where the raw water has it, and a bed that water passes through. */
const putTask = (s: Situation, ledger: Ledger): void => {
  if (s.kind !== 'filter') return;
  const most = fromUnit(0.3, 'mg/L', 'concentration');
  if ((ledger.value('situation.water.iron') ?? 0) > most.si)
    ledger.assume('proof.iron-at-the-outlet.upper', most, 'common-practice');
  ledger.assume('proof.pressure-loss.upper', fromUnit(15, 'psi', 'pressure'), 'common-practice');
};

/** Inside the window; where it is empty never above its ceiling; where nobody knows it, about the control's own rate. */
const putBackwashLimits = (ledger: Ledger, advice: ProgramAdvice | undefined): void => {
  const window = advice?.window;
  putSame(ledger, 'proof.backwash-flow.predicted', ['program.rate.backwash', 'situation.rate.backwash']);
  if (window !== undefined) {
    if (window.state === 'open') putSame(ledger, 'proof.backwash-flow.lower', [window.floor]);
    putSame(ledger, 'proof.backwash-flow.upper', [window.ceiling]);
    return;
  }
  ledger.assume('proof.tolerance.backwash', quantity('share', tolerances.backwash), 'common-practice');
  ledger.derive(
    flowLimits,
    { expectedFlow: 'situation.rate.backwash', tolerance: 'proof.tolerance.backwash' },
    { lowerFlow: 'proof.backwash-flow.lower', upperFlow: 'proof.backwash-flow.upper' },
  );
};

const checkOf = (s: Situation, ledger: Ledger, definition: CheckDefinition, issues: Issue[]): ProofCheck => {
  const lower = `proof.${definition.id}.lower`;
  const upper = `proof.${definition.id}.upper`;
  const base = {
    id: definition.id,
    title: message(definition.title),
    when: definition.when,
    standsOn: definition.standsOn,
    limits: { ...(ledger.has(lower) ? { lower } : {}), ...(ledger.has(upper) ? { upper } : {}) },
  };
  if (definition.read === 'seen') return { ...base, verdict: seenVerdict(s, definition.id) };
  const predicted = definition.predicted;
  const shown = predicted !== undefined && ledger.has(predicted) ? { ...base, predicted } : base;
  const read = readProof(s, definition, ledger, issues);
  if (read === undefined) return { ...shown, verdict: 'open' };
  return { ...shown, reading: read, ...verdictOf(ledger, read, lower, upper) };
};

const seenVerdict = (s: Situation, id: string): ProofCheck['verdict'] => {
  const last = s.visit.proofs?.findLast(({ check }) => check === id);
  if (last?.state === 'seen') return 'pass';
  return last?.state === 'not-seen' ? 'fail' : 'open';
};

const verdictOf = (
  ledger: Ledger,
  reading: string,
  lower: string,
  upper: string,
): Pick<ProofCheck, 'verdict' | 'p' | 'decide'> => {
  const figure = ledger.figures()[reading];
  const limits = limitsOf(ledger, lower, upper);
  if (figure?.u === undefined || limits === undefined) return { verdict: 'open' };
  const judged = judge({ estimate: figure.quantity.si, u: figure.u, ...limits });
  if (judged.verdict !== 'not-decided') return { verdict: judged.verdict, p: judged.pConform };
  return {
    verdict: 'not-decided',
    p: judged.pConform,
    decide: whatDecides(figure, judged.wouldDecide),
  };
};

/** A better reading, or so many more of the same; nothing helps a reading that stands on the limit. */
const whatDecides = ({ quantity: { kind }, u = 0 }: Figure, needed: number | undefined): Message => {
  const repeats = needed === undefined ? undefined : repeatsToDecide({ needed, eachReading: u, common: 0 });
  if (needed === undefined || repeats === undefined) return message('proof.decide.on-the-limit');
  const values = { u: { kind, si: needed } };
  return repeats <= mostRepeats
    ? message('proof.decide.repeats', { ...values, repeats })
    : message('proof.decide.u', values);
};

/** Limits that meet (about a rate of nothing) leave nothing to keep to. */
const limitsOf = (ledger: Ledger, lower: string, upper: string): Limits | undefined => {
  const least = ledger.value(lower);
  const most = ledger.value(upper);
  if (least !== undefined && most !== undefined)
    return least < most ? { lower: least, upper: most } : undefined;
  if (least !== undefined) return { lower: least };
  return most === undefined ? undefined : { upper: most };
};

const summary = (checks: readonly ProofCheck[]): Proof['says'] => {
  const count = (verdict: ProofCheck['verdict']): number =>
    checks.filter((c) => c.verdict === verdict).length;
  return message('proof.summary', {
    pass: count('pass'),
    fail: count('fail'),
    undecided: count('not-decided'),
    open: count('open'),
  });
};
