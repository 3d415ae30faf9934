import type { Made } from '../made.ts';
import { type StageId, stageIds } from '../stage-props.ts';

export type StageState = 'open' | 'begun' | 'done';

/** How far each stage of a visit is, from what was entered and what it comes to. */
export const stageStates = (made: Made): Readonly<Record<StageId, StageState>> => ({
  recognise: recognised(made),
  find: found(made),
  repair: repaired(made),
  work: worked(made),
  program: programmed(made),
  prove: proved(made),
  'hand-over': handedOver(made),
});

/** The stage to go on with: the first that is not done, counting from the last that was begun. */
export const stageToGoOn = (states: Readonly<Record<StageId, StageState>>): StageId => {
  const begun = stageIds.findLastIndex((id) => states[id] !== 'open');
  return stageIds.slice(Math.max(0, begun)).find((id) => states[id] !== 'done') ?? 'hand-over';
};

const among = (isBegun: boolean, isDone: boolean): StageState => {
  if (isDone) return 'done';
  return isBegun ? 'begun' : 'open';
};

const recognised = ({ visit, assessment: { stages } }: Made): StageState => {
  const { recognition } = stages;
  const isBegun = (visit.answers ?? []).length > 0;
  const isDecided = recognition.state === 'done' && recognition.value.decided;
  return among(isBegun, isDecided && (isBegun || (recognition.state === 'done' && recognition.value.single)));
};

const found = ({ visit, assessment: { stages } }: Made): StageState => {
  const { diagnosis } = stages;
  const isDecided = (visit.decided ?? []).some(({ what }) => what === 'fault');
  const isClear = diagnosis.state === 'done' && diagnosis.value.act !== undefined;
  return among((visit.readings ?? []).length > 0, isDecided || isClear);
};

const repaired = ({ visit }: Made): StageState =>
  among(visit.stock !== undefined, visit.gate?.kit !== undefined);

const worked = ({ visit, assessment: { stages } }: Made): StageState => {
  const { plan } = stages;
  const steps = plan.state === 'done' ? plan.value.steps.filter((step) => step.kind !== 'gate') : [];
  const isBegun = (visit.done ?? []).length > 0;
  return among(
    isBegun,
    isBegun && steps.length > 0 && steps.every(({ kind, ...step }) => 'done' in step && step.done),
  );
};

const programmed = ({ visit: { settings } }: Made): StageState =>
  among(settings?.found !== undefined, Object.keys(settings?.set ?? {}).length > 0);

const proved = ({ visit, assessment: { stages } }: Made): StageState => {
  const checks = stages.proof.state === 'done' ? stages.proof.value.checks : [];
  const now = checks.filter(({ when }) => when === 'now');
  const isDecided = now.length > 0 && now.every(({ verdict }) => verdict === 'pass' || verdict === 'fail');
  return among((visit.proofs ?? []).length > 0, isDecided);
};

const handedOver = ({ visit, folded }: Made): StageState =>
  among((visit.signatures ?? []).length > 0, folded.handedOver !== undefined);
