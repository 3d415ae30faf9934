import type { Operation, WorkState } from '@brinewright/equipment';
import { withinReach } from './aims.ts';
import { allBefore } from './all-before.ts';
import { isListed, type Ways } from './closure.ts';
import { type Covering, coveringClosure, operationsByClass } from './covering.ts';
import { ableToMake, isMade, makersFor } from './makers.ts';
import { isLater, isStrip } from './operation-kinds.ts';
import type { Scope } from './scope.ts';
import { atWork, changesNothing, holds, isShut, type StateKey, stateKeys } from './state.ts';

export type LaterProblem = {
  readonly scope: Scope;
  /** The state once everything is back in. */
  readonly state: WorkState;
  /** Makes of the reverses that are still to come, such as plugging in. */
  readonly reverses: readonly { readonly makes: WorkState }[];
  /** Done or planned before. */
  readonly given: ReadonlySet<string>;
  /** Restoring and proving that still counts. */
  readonly restored: ReadonlySet<string>;
  /** What the targets ask for besides. */
  readonly asked: readonly Operation[];
  readonly shuts: boolean;
  /** Everything that belongs to such a plan, or the least that leaves the unit safe. */
  readonly extent: Extent;
};

export type Extent = 'all' | 'least';

export type Later = Covering & {
  /** States that nothing brings back. */
  readonly left: readonly StateKey[];
};

/** With the proof of work that shut no water. */
type Problem = LaterProblem & { readonly proof: ReadonlySet<string> };

/** Restoring and proving: what belongs to every plan that shut the water, what was asked for, and what brings the unit back to work. */
export const laterFor = (given: LaterProblem): Later => {
  const problem: Problem = { ...given, proof: proofOf(given) };
  const { scope } = problem;
  const candidates = [...scope.operations.values()].filter(
    (operation) =>
      problem.asked.includes(operation) ||
      (isLater(operation) && (problem.extent === 'all' || operation.phase === 'restore')),
  );
  const candidateIds = new Set(candidates.map(({ id }) => id));
  const classes = operationsByClass(scope).map(
    (having) => new Map([...having].filter(([id]) => candidateIds.has(id))),
  );
  for (let wants = firstWants(problem, candidates); ; ) {
    const found = coveringClosure(wants, classes, (id) => isSettled(problem, id));
    const makers = makersFor(found.operations, candidates, problem.state);
    const closing = closingWants(problem, candidates, found.operations);
    const more = [...makers, ...closing.ways].filter((ways) => !isListed(wants, ways));
    if (more.length === 0) return { ...found, restsOn: afterAsked(problem, found), left: closing.left };
    wants = [...wants, ...more];
  }
};

const firstWants = (problem: Problem, candidates: readonly Operation[]): readonly Ways[] => {
  const belongs = withinReach(candidates, problem.given).filter(
    (operation) => belongsTo(problem, operation) && !isSettled(problem, operation.id),
  );
  return [...belongs, ...problem.asked].map(({ id }) => [[id]]);
};

/** Work that shut no water is proved all the same: what belongs to every proof, and what that is read from. */
const proofOf = ({ scope, shuts, extent, given, asked }: LaterProblem): ReadonlySet<string> => {
  if (shuts || extent === 'least' || !(asked.length > 0 || isWorkedOn(scope, given))) return new Set();
  const proofs = [...scope.operations.values()].filter(({ phase, always }) => phase === 'prove' && always);
  const readFrom = proofs.flatMap(({ after }) => after.flat()).filter((id) => isAlwaysLater(scope, id));
  return new Set([...proofs.map(({ id }) => id), ...readFrom]);
};

const isAlwaysLater = ({ operations }: Scope, id: string): boolean => {
  const operation = operations.get(id);
  return operation?.always === true && isLater(operation);
};

const isWorkedOn = ({ operations }: Scope, given: ReadonlySet<string>): boolean =>
  [...given].some((id) => {
    const operation = operations.get(id);
    return operation !== undefined && (isStrip(operation) || operation.phase === 'restore');
  });

/** Between what was asked for and its proof may lie what needs no doing, such as opening water that is on. */
const afterAsked = (problem: Problem, { operations, restsOn }: Covering): Covering['restsOn'] => {
  const asked = problem.asked.map(({ id }) => id);
  return operations.reduce((all, { id }) => {
    if (!problem.proof.has(id)) return all;
    const before = allBefore(problem.scope.operations, id);
    return new Map(all).set(id, new Set([...(all.get(id) ?? []), ...asked.filter((one) => before.has(one))]));
  }, restsOn);
};

const belongsTo = (problem: Problem, operation: Operation): boolean =>
  followsStrip(problem, operation) ||
  problem.proof.has(operation.id) ||
  (problem.shuts && operation.always && (problem.extent === 'all' || followsOpening(problem, operation)));

/** A full stroke after the piston was out, brine after its tank was emptied: taking apart or work that is done. */
const followsStrip = ({ scope, given }: LaterProblem, { after }: Operation): boolean =>
  after.some((way) => {
    const before = way.flatMap((id) => scope.operations.get(id) ?? []).filter(isStrip);
    return before.length > 0 && before.every(({ id }) => given.has(id));
  });

/** A look for leaks once the water is on. */
const followsOpening = ({ scope }: LaterProblem, { after }: Operation): boolean =>
  after.some((way) => way.some((id) => scope.operations.get(id)?.makes.water === 'on'));

/** Done, or so already; without water off, what belongs to water off does not stand in the way. */
const isSettled = (problem: Problem, id: string): boolean => {
  const operation = problem.scope.operations.get(id);
  if (operation === undefined || problem.restored.has(id)) return true;
  if (isAlreadySo(operation, problem.state)) return true;
  return !problem.shuts && operation.always && !problem.asked.includes(operation) && !problem.proof.has(id);
};

const isAlreadySo = ({ makes }: Operation, state: WorkState): boolean =>
  !changesNothing(makes) && holds(state, makes);

const closingWants = (
  { state, reverses }: LaterProblem,
  candidates: readonly Operation[],
  planned: readonly Operation[],
): { readonly ways: readonly Ways[]; readonly left: readonly StateKey[] } => {
  const ways: Ways[] = [];
  const left: StateKey[] = [];
  for (const key of stateKeys) {
    const wanted = atWork[key];
    if (wanted === undefined || state[key] === wanted || isMade([...planned, ...reverses], key, wanted))
      continue;
    const able = ableToMake(candidates, key, wanted).filter(({ makes }) => !isShut(makes));
    if (able.length === 0) left.push(key);
    else ways.push(able.map(({ id }) => [id]));
  }
  return { ways, left };
};
