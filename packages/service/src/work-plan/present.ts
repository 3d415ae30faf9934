import type { Operation, WorkState } from '@brinewright/equipment';
import type { Situation } from '../situation/situation.ts';
import type { OperationDone } from '../visit/schema.ts';
import { noteApart } from './apart.ts';
import { cameOffBefore, comesOff, type IsThere } from './came-off.ts';
import { backId, instanceId, isLater, isReversible, opensUp, spokenOf, sweepId } from './operation-kinds.ts';
import { backStep, type Off, operationStep } from './plan-steps.ts';
import { mayScald } from './scald.ts';
import type { Scope } from './scope.ts';
import { miscount, stackCount } from './stack-count.ts';
import { atWork, changed, isShut, reverse } from './state.ts';
import type { PlanStep, StackCount } from './work-plan.ts';

/** Where the work stands: what was done, in its order, and what is off. */
export type Present = {
  readonly steps: readonly PlanStep[];
  readonly state: WorkState;
  readonly off: readonly Off[];
  readonly done: ReadonlySet<string>;
  /** Preparation done since the water last went off. */
  readonly prepared: ReadonlySet<string>;
  /** Restoring and proving done since anything was last opened. */
  readonly restored: ReadonlySet<string>;
  /** The water has been off on this visit. */
  readonly wasShut: boolean;
  readonly swept: boolean;
  readonly times: ReadonlyMap<string, number>;
  /** Counts taken on the way in that do not agree: the pieces have to come out again. */
  readonly countedIn: ReadonlyMap<string, StackCount>;
  /** Off, though nobody wrote so: what is written cannot be done without. */
  readonly inferred: readonly Operation[];
};

export type Draft = {
  /** Where the unit stands before anything was done. */
  readonly start: WorkState;
  steps: PlanStep[];
  state: WorkState;
  off: Off[];
  readonly done: Set<string>;
  readonly prepared: Set<string>;
  readonly restored: Set<string>;
  wasShut: boolean;
  swept: boolean;
  readonly times: Map<string, number>;
  readonly countedIn: Map<string, StackCount>;
  inferred: readonly Operation[];
};

/** Reads `visit.done` in its order, then what stands in `visit.apart`. */
export const presentOf = (s: Situation, scope: Scope, newRoles: ReadonlySet<string> = new Set()): Present => {
  const start = startState(s, scope);
  const draft: Draft = {
    start,
    steps: [],
    state: start,
    off: [],
    done: new Set(),
    prepared: new Set(),
    restored: new Set(),
    wasShut: false,
    swept: false,
    times: new Map(),
    countedIn: new Map(),
    inferred: [],
  };
  const known = new Map(scope.family.operations.map((operation) => [operation.id, operation]));
  for (const entry of s.visit.done ?? []) {
    const { operation: id, back } = spokenOf(entry.operation);
    const operation = known.get(id);
    if (operation === undefined) noteSweep(draft, id);
    else if (back) noteBack(draft, scope, operation, entry, newRoles);
    else noteDone(draft, scope, operation, entry);
  }
  reopen(draft, scope);
  draft.inferred = draft.inferred.filter((operation) => isOff(draft, operation));
  noteApart(draft, s, scope);
  return draft;
};

/** A cold unit is cool from the start; a hot one is only once it was left to cool. */
const startState = (s: Situation, { classes }: Scope): WorkState => {
  const variants = classes.map(({ variant }) => variant);
  return mayScald(s, variants) ? atWork : { ...atWork, temperature: 'cool' };
};

const noteSweep = (draft: Draft, id: string): void => {
  if (id !== sweepId || draft.swept || draft.off.some((off) => isOnBench(draft, off))) return;
  draft.steps.push({ kind: 'sweep', id: sweepId, done: true });
  draft.swept = true;
};

/** A sweep counts once everything is in but what was taken off to reach something that is shut. */
const isOnBench = ({ off }: Draft, { operation }: Off): boolean =>
  comesOff(operation) && !off.some(({ operation: other }) => other.after.flat().includes(operation.id));

const noteDone = (draft: Draft, scope: Scope, operation: Operation, entry: OperationDone): void => {
  const count = countOf(scope, operation, 'out', entry);
  draft.inferred = draft.inferred.filter((one) => one !== operation);
  if (!isAgain(draft, operation)) {
    recount(draft, lastId(draft, operation), count);
    return;
  }
  if (!isLater(operation)) inferBefore(draft, scope, operation);
  begin(draft, scope, operation, count);
};

/** An entry forgotten may not leave a part on the bench: what had to come off for this is off. */
const inferBefore = (draft: Draft, scope: Scope, operation: Operation): void => {
  for (const one of cameOffBefore(scope, operation, isThere(draft, scope))) inferOff(draft, scope, one);
};

const inferOff = (draft: Draft, scope: Scope, operation: Operation): void => {
  begin(draft, scope, operation, countOf(scope, operation, 'out', { operation: operation.id }));
  draft.inferred = [...draft.inferred.filter((one) => one !== operation), operation];
};

const isOff = (draft: Draft, operation: Operation): boolean =>
  draft.off.some((off) => off.operation === operation);

const isThere = (draft: Draft, scope: Scope): IsThere => {
  const off = new Set(draft.off.map(({ operation }) => operation.id));
  return (id) => {
    const operation = scope.operations.get(id);
    return off.has(id) || (draft.done.has(id) && !(operation !== undefined && isReversible(operation)));
  };
};

/** Written as back while something is off that it stands in the way of: it cannot be on, so it goes back once more. */
const reopen = (draft: Draft, scope: Scope): void => {
  for (const off of draft.off) {
    const before = draft.off;
    inferBefore(draft, scope, off.operation);
    const added = draft.off.slice(before.length);
    const at = before.indexOf(off);
    draft.off = [...before.slice(0, at), ...added, ...before.slice(at)];
  }
};

/** A second entry about the same act is a recount; one after it was put back or shut anew is another act. */
const isAgain = (draft: Draft, operation: Operation): boolean => {
  if (!draft.done.has(operation.id)) return true;
  if (isLater(operation)) return !draft.restored.has(operation.id);
  if (isReversible(operation)) return !draft.off.some((off) => off.operation === operation);
  return operation.phase === 'isolate' && !draft.prepared.has(operation.id);
};

const begin = (draft: Draft, scope: Scope, operation: Operation, count: StackCount | undefined): void => {
  const times = (draft.times.get(operation.id) ?? 0) + 1;
  const stepId = instanceId(operation.id, times);
  const before = draft.state;
  draft.times.set(operation.id, times);
  draft.done.add(operation.id);
  draft.steps.push(operationStep(scope, operation, stepId, miscount('out', count) === undefined, count));
  if (comesOff(operation)) standAt(draft, operation);
  move(draft, operation.makes);
  if (isLater(operation)) draft.restored.add(operation.id);
  else noteForward(draft, operation);
  if (isReversible(operation)) draft.off = [...draft.off, { stepId, operation, before }];
};

/** The piston stands where this came off; water and power are only believed off where that is written. */
const standAt = (draft: Draft, { needs: { piston } }: Operation): void => {
  if (piston !== undefined) draft.state = { ...draft.state, piston };
};

const noteForward = (draft: Draft, operation: Operation): void => {
  if (!opensUp(operation)) return;
  draft.restored.clear();
  draft.swept = false;
  draft.steps = draft.steps.filter(({ kind }) => kind !== 'sweep');
  if (operation.phase === 'isolate') draft.prepared.add(operation.id);
};

const move = (draft: Draft, makes: WorkState): void => {
  draft.state = changed(draft.state, makes);
  if (isShut(makes)) draft.wasShut = true;
  if (makes.water === 'on') noteWaterBack(draft);
};

/** What was shut is open, and what was left to cool is as warm as its water again. */
const noteWaterBack = (draft: Draft): void => {
  draft.prepared.clear();
  const { temperature: _, ...state } = draft.state;
  draft.state = {
    ...state,
    ...(draft.start.temperature === undefined ? {} : { temperature: draft.start.temperature }),
  };
};

const noteBack = (
  draft: Draft,
  scope: Scope,
  operation: Operation,
  entry: OperationDone,
  newRoles: ReadonlySet<string>,
): void => {
  const count = countOf(scope, operation, 'in', entry);
  if (!draft.done.has(operation.id) && comesOff(operation)) {
    inferBefore(draft, scope, operation);
    inferOff(draft, scope, operation);
  }
  const off = draft.off.find((item) => item.operation === operation);
  if (off === undefined) {
    recount(draft, backId(lastId(draft, operation)), count);
    return;
  }
  if (count !== undefined && miscount('in', count) !== undefined) {
    draft.countedIn.set(operation.id, count);
    return;
  }
  draft.countedIn.delete(operation.id);
  draft.off = draft.off.filter((item) => item !== off);
  draft.steps.push(backStep(scope, off, true, newRoles, count));
  move(draft, reverse(operation.makes, off.before));
};

const countOf = (
  scope: Scope,
  operation: Operation,
  direction: 'out' | 'in',
  entry: OperationDone,
): StackCount | undefined =>
  operation.counts === 'stack' ? stackCount(scope.family, direction, entry.counted) : undefined;

const lastId = (draft: Draft, operation: Operation): string =>
  instanceId(operation.id, draft.times.get(operation.id) ?? 1);

/** The later count stands; one without figures leaves the earlier as it is. */
const recount = (draft: Draft, stepId: string, count: StackCount | undefined): void => {
  if (count?.counted === undefined) return;
  draft.steps = draft.steps.map((step) => {
    if (step.id !== stepId || step.kind === 'gate' || step.kind === 'sweep') return step;
    return { ...step, count, done: count.agrees !== false };
  });
};
