import { fitsVariant, type Operation, type Variant, type WorkState } from '@brinewright/equipment';
import { backId, isStrip } from './operation-kinds.ts';
import { atWork, changed, changesNothing, isShut, reverse, type StateKey, unmet } from './state.ts';
import type { PlanStep } from './work-plan.ts';

export type PlanProblem =
  | { readonly kind: 'after'; readonly at: string; readonly missing: readonly string[] }
  | { readonly kind: 'need'; readonly at: string; readonly key: StateKey; readonly wanted: string }
  | { readonly kind: 'no-gate'; readonly at: string }
  | { readonly kind: 'not-off'; readonly at: string }
  | { readonly kind: 'off-behind'; readonly at: string; readonly missing: readonly string[] }
  | { readonly kind: 'left-off'; readonly at: string }
  | { readonly kind: 'swept-early'; readonly at: string };

type Checking = {
  readonly now: WorkState;
  readonly operations: ReadonlyMap<string, Operation>;
  readonly shuts: boolean;
  readonly problems: PlanProblem[];
  readonly done: Set<string>;
  readonly off: Map<string, { readonly operation: Operation; readonly before: WorkState }>;
  state: WorkState;
  hasGate: boolean;
  isAhead: boolean;
};

/**
 * Walks a plan as a person would and lists what is wrong with it: an operation before its need, water shut without a
 * gate before it, something put back that was not off, never put back, or off behind something that is on. Steps that are done are taken as they are otherwise.
 * `now` is the state before the first step that is not done, `operations` are those of one variant, as are the
 * steps: `checkForVariants` takes a whole plan apart.
 */
export const checkPlan = (
  steps: readonly PlanStep[],
  now: WorkState,
  operations: ReadonlyMap<string, Operation>,
): readonly PlanProblem[] => {
  const checking: Checking = {
    now,
    operations,
    shuts: steps.some(({ kind }) => kind === 'gate'),
    problems: [],
    done: new Set(),
    off: new Map(),
    state: { ...atWork, ...(now.temperature === undefined ? {} : { temperature: now.temperature }) },
    hasGate: false,
    isAhead: false,
  };
  for (const step of steps) checkStep(checking, step);
  if (!checking.isAhead) checkBehind(checking);
  for (const id of checking.off.keys()) checking.problems.push({ kind: 'left-off', at: id });
  return checking.problems;
};

/** The plan as each class of variants meets it, checked one by one; what several have in common is said once. */
export const checkForVariants = (
  steps: readonly PlanStep[],
  now: WorkState,
  operations: readonly Operation[],
  variants: readonly Variant[],
): readonly PlanProblem[] => {
  const problems = new Map<string, PlanProblem>();
  /* What came off goes back, whichever variant was thought to have it. */
  const owed = new Set(
    steps.flatMap((step) => (step.kind === 'operation' && step.done ? [backId(step.id)] : [])),
  );
  for (const variant of variants) {
    const has = ({ fits }: Operation): boolean => fitsVariant(fits, variant);
    const own = new Map(operations.filter(has).map((operation) => [operation.id, operation]));
    const met = steps.filter((step) => isTaken(step, has) || (step.kind === 'back' && owed.has(step.id)));
    for (const problem of checkPlan(met, now, own)) problems.set(JSON.stringify(problem), problem);
  }
  return [...problems.values()];
};

const isTaken = (step: PlanStep, has: (operation: Operation) => boolean): boolean => {
  if (step.kind === 'gate' || step.kind === 'sweep') return true;
  return step.done || has(step.kind === 'back' ? step.of : step.operation);
};

const checkStep = (checking: Checking, step: PlanStep): void => {
  if (step.kind === 'gate') {
    checking.hasGate = true;
    return;
  }
  if (!step.done && !checking.isAhead) {
    checking.isAhead = true;
    checking.state = checking.now;
    checkBehind(checking);
  }
  if (step.kind === 'operation') checkOperation(checking, step.id, step.operation, step.done);
  else if (step.kind === 'back') checkBack(checking, step.id, step.of);
  else checkSweep(checking);
};

const checkOperation = (checking: Checking, at: string, operation: Operation, isDone: boolean): void => {
  const { problems, state } = checking;
  const isRescue = !isDone && shutsOpenUnit(checking, operation);
  if (!isDone) {
    const missing = isRescue ? [] : missingBefore(checking, operation);
    if (missing.length > 0) problems.push({ kind: 'after', at, missing });
    const needs = needsWithCool(checking, operation);
    for (const key of unmet(state, needs)) problems.push({ kind: 'need', at, key, wanted: needs[key] ?? '' });
  }
  if (isShut(operation.makes) && !checking.hasGate && !isRescue) problems.push({ kind: 'no-gate', at });
  checking.done.add(operation.id);
  if (isPutBackLater(operation)) checking.off.set(operation.id, { operation, before: state });
  checking.state = changed(state, operation.makes);
};

/** Water on a unit that stands open goes off at once, without gate and preparation. */
const shutsOpenUnit = ({ state, off }: Checking, { makes }: Operation): boolean =>
  makes.water === 'off' &&
  state.water !== 'off' &&
  [...off.values()].some(({ operation }) => isStrip(operation) && isShut(operation.needs));

/** What is opened is cool, where the definition has a way to cool it. */
const needsWithCool = ({ operations }: Checking, { phase, needs }: Operation): WorkState => {
  const opens = (phase === 'open' || phase === 'work') && isShut(needs);
  const cools = opens && [...operations.values()].some(({ makes }) => makes.temperature === 'cool');
  return cools ? { ...needs, temperature: 'cool' } : needs;
};

/** Said anew here, so that a slip in the planner is not repeated in its checker. */
const isPutBackLater = ({ phase, back, takesOut, counts }: Operation): boolean =>
  phase !== 'restore' &&
  phase !== 'prove' &&
  (back !== undefined || takesOut.length > 0 || counts !== undefined);

/** One alternative is enough; where all name something the variant lacks, that does not stand in the way. */
const missingBefore = (checking: Checking, { after }: Operation): readonly string[] => {
  const has = (id: string): boolean => checking.operations.has(id) || checking.done.has(id);
  const whole = after.filter((way) => way.every(has));
  const ways = whole.length > 0 ? whole : after;
  const lacking = ways.map((way) => way.filter((id) => !checking.done.has(id) && !isMoot(checking, id)));
  return lacking.some((way) => way.length === 0) ? [] : (lacking[0] ?? []);
};

/** Homing a piston that is home; looking for leaks where no water was off. */
const isMoot = ({ operations, state, shuts }: Checking, id: string): boolean => {
  const operation = operations.get(id);
  if (operation === undefined) return true;
  if (operation.phase !== 'restore' && operation.phase !== 'prove') return false;
  const isSo = !changesNothing(operation.makes) && unmet(state, operation.makes).length === 0;
  return isSo || (operation.always && !shuts);
};

const checkBack = (checking: Checking, at: string, operation: Operation): void => {
  const off = checking.off.get(operation.id);
  if (off === undefined) {
    checking.problems.push({ kind: 'not-off', at });
    return;
  }
  checking.off.delete(operation.id);
  checking.state = changed(checking.state, reverse(operation.makes, off.before));
  if (checking.isAhead) checkBehind(checking);
};

/** Nothing is off behind something that is on: the one was forgotten, or the other is not on. */
const checkBehind = (checking: Checking): void => {
  for (const [at, { operation }] of checking.off) {
    const missing = onBefore(checking, operation);
    if (missing.length > 0) checking.problems.push({ kind: 'off-behind', at, missing });
  }
};

const onBefore = ({ operations, off }: Checking, { after }: Operation): readonly string[] => {
  const isOn = (id: string): boolean => {
    const operation = operations.get(id);
    return operation !== undefined && comesOffFirst(operation) && !off.has(id);
  };
  const whole = after.filter((way) => way.every((id) => operations.has(id) || off.has(id)));
  const inTheWay = (whole.length > 0 ? whole : after).map((way) => way.filter(isOn));
  return inTheWay.some((way) => way.length === 0) ? [] : (inTheWay[0] ?? []);
};

const comesOffFirst = (operation: Operation): boolean => isStrip(operation) && isPutBackLater(operation);

const checkSweep = ({ off, problems }: Checking): void => {
  for (const { operation } of off.values())
    if (isStrip(operation) && !isReach(operation, off)) problems.push({ kind: 'swept-early', at: 'sweep' });
};

/** A cover over the plug stays off until the plug is in. */
const isReach = (operation: Operation, off: Checking['off']): boolean =>
  [...off.values()].some(
    ({ operation: other }) => other !== operation && other.after.flat().includes(operation.id),
  );
