import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { Figures } from '../derivation/figure.ts';
import type { Diagnosis } from '../diagnosis/diagnosis.ts';
import type { BackwashWindow, ProgramAdvice } from '../program/program-advice.ts';
import type { Recognition, Target } from '../recognition/recognition.ts';
import { rolesOf } from '../recognition/roles.ts';
import { variantSpace } from '../recognition/variant-space.ts';
import type { Situation } from '../situation/situation.ts';
import { done, type Gap, type Stage } from '../stage/stage.ts';
import { stockIds } from '../stock-ids.ts';
import { conversionChecks, conversionRefusals, unreadConversions } from './convert.ts';
import { drainAdvice, drainRefusals, drainToFit } from './drain-window.ts';
import { wrongInTheHand } from './in-the-hand.ts';
import { billsOf, differingLines, sharedLines } from './lines.ts';
import { limitIssues, refusals, tooHot } from './refuse.ts';
import type { Remaining, RepairPlan, Substitute } from './repair.ts';
import { faultsToMend } from './targets.ts';

/**
 * Parts for what was really built: those that every remaining variant takes, those that differ and the tell that parts
 * them, substitutes with the settings they change, and a refusal where nothing safe fits.
 */
export const planRepair = (
  s: Situation,
  recognition: Recognition | undefined,
  diagnosis: Diagnosis | undefined,
  targets: readonly Target[],
  advised: ProgramAdvice | undefined,
  figures: Figures,
): Stage<RepairPlan> => {
  const remaining = remainingVariants(s, recognition);
  const window = advised?.window;
  const noDrain = drainRefusals(s, targets, window, figures);
  const roles = rolesToServe(s, targets, noDrain);
  const wanted = { targets: s.described ? targets : [], fittings: wantedFittings(s, window) };
  const bills = billsOf(s.family, remaining, wanted);
  const plan: RepairPlan = {
    targets: noDrain.length === 0 ? targets : targets.filter((target) => !isDrainControl(target)),
    parts: sharedLines(s, bills),
    differs: differingLines(s, bills, recognition),
    substitutes: substitutes(s, targets),
    refused: [
      ...refusals(s, bills, roles),
      ...noDrain,
      ...conversionRefusals(s.family, remaining, targets),
      ...tooHot(s, remaining),
    ],
    wrong: wrongInTheHand(s.family, remaining, targets, {
      kit: s.visit.gate?.kit ?? [],
      tools: s.visit.gate?.tools ?? [],
    }),
    advice: [
      ...advice(s, diagnosis),
      ...drainAdvice(s, targets, window, figures),
      ...conversionChecks(s.family, remaining, targets),
    ],
  };
  return done(plan, {
    gaps: gapsOf(s, targets),
    issues: [...unreadConversions(s), ...limitIssues(s, remaining)],
  });
};

const isDrainControl = (target: Target): boolean =>
  target.kind === 'replace' && target.role === stockIds.roles.drainControl;

/** A drain control that nobody makes is refused once, with the window. */
const rolesToServe = (
  s: Situation,
  targets: readonly Target[],
  noDrain: readonly Message[],
): readonly string[] =>
  s.described
    ? rolesOf(targets).filter((role) => role !== stockIds.roles.drainControl || noDrain.length === 0)
    : [];

/** What is to be fitted by id: the drain control that the bed asks for, else whatever the unit has. */
const wantedFittings = (s: Situation, window: BackwashWindow | undefined): readonly string[] => {
  const { controller, injector, meter, refill } = s.subject.fitted ?? {};
  return [controller, drainToFit(s, window), injector, meter, refill].flatMap((id) => id ?? []);
};

const remainingVariants = (s: Situation, recognition: Recognition | undefined): Remaining => {
  const space = variantSpace(s.family);
  const belief = recognition?.belief ?? space.weights([]);
  return space.top(belief, space.variants.length).filter(({ p }) => p > 1e-3);
};

/** Another control than the fitted one from the van: the time changes with it, and nothing else. */
const substitutes = (s: Situation, targets: readonly Target[]): readonly Substitute[] => {
  const wanted = targets.some(
    (target) => target.kind === 'replace' && target.role === stockIds.roles.refillControl,
  );
  const fitted = s.family.controls.refill.find(({ id }) => id === s.subject.fitted?.refill);
  if (!wanted || fitted === undefined) return [];
  return s.family.controls.refill
    .filter(({ id }) => id !== fitted.id)
    .map((control) => ({
      role: stockIds.roles.refillControl,
      instead: fitted.id,
      use: control.id,
      says: message('repair.substitute-refill', {
        control: control.title,
        rate: control.rate,
        times: quantity('ratio', fitted.rate.si / control.rate.si),
      }),
    }));
};

const advice = (s: Situation, diagnosis: Diagnosis | undefined): readonly Message[] => {
  const faults = faultsToMend(s, diagnosis);
  const mends = faults.map((fault) => message('repair.mend', { fault: fault.title, mend: fault.mend }));
  return [...mends, ...(s.described ? [] : [message('repair.undescribed')])];
};

const gapsOf = (s: Situation, targets: readonly Target[]): readonly Gap[] =>
  targets.length > 0
    ? []
    : [
        {
          needs: ['readings'],
          message: message('repair.gap.fault', { unit: s.subject.name ?? s.subject.id }),
          settles: ['repair', 'plan'],
        },
      ];
