import type { Part, Tool } from '@brinewright/equipment';
import { quantity } from '@brinewright/units';
import { type Message, type MessageValue, message, type Text } from '@brinewright/words';
import type { Recognition } from '../recognition/recognition.ts';
import type { PartLine, RepairPlan } from '../repair/repair.ts';
import type { Situation } from '../situation/situation.ts';
import type { Scope } from './scope.ts';
import type { GateAsk, GateStep, PlanStep, WorkPlan } from './work-plan.ts';

export type GateProblem = {
  readonly s: Situation;
  readonly scope: Scope;
  readonly recognition: Recognition | undefined;
  readonly repair: RepairPlan;
  readonly steps: readonly PlanStep[];
  readonly outageMinutes: number;
  readonly building: WorkPlan['building'];
};

/** What is compared and agreed before the step that shuts the water. No gate, no isolation. */
export const gateFor = (problem: GateProblem): GateStep => {
  const asks = [
    askVariant(problem),
    askKit(problem),
    askTools(problem),
    askPhotographed(problem),
    askPrice(problem),
    askOutage(problem),
    askWayBack(problem),
  ];
  return { kind: 'gate', id: 'gate', asks, passed: asks.every(({ met }) => met) };
};

const askVariant = ({ s, recognition, scope }: GateProblem): GateAsk => {
  if (!s.described) return { id: 'variant', met: true, says: message('plan.gate.variant-undescribed') };
  const known = recognition?.decided ?? scope.family.features.length === 0;
  if (known) return { id: 'variant', met: true, says: message('plan.gate.variant') };
  const next = recognition?.next[0]?.tell.ask;
  const says =
    next === undefined
      ? message('plan.gate.variant-open')
      : message('plan.gate.variant-open-ask', { ask: next });
  return { id: 'variant', met: false, says };
};

const askKit = (problem: GateProblem): GateAsk => {
  const { repair } = problem;
  const wrong = repair.wrong.find(({ is }) => is === 'part');
  if (wrong !== undefined) return { id: 'kit', met: false, says: wrong.says };
  const [refused] = repair.refused;
  if (refused !== undefined) return { id: 'kit', met: false, says: refused };
  if (!problem.s.described) return { id: 'kit', met: true, says: message('plan.gate.kit-undescribed') };
  if (repair.parts.length === 0 && repair.differs.length === 0)
    return { id: 'kit', met: true, says: message('plan.gate.kit-none') };
  const missing = missingParts(problem);
  if (missing.length > 0)
    return { id: 'kit', met: false, says: message('plan.gate.kit-missing', { parts: listed(missing) }) };
  if (repair.differs.length > 0 && problem.recognition?.decided !== true)
    return { id: 'kit', met: false, says: message('plan.gate.kit-open') };
  return { id: 'kit', met: true, says: message('plan.gate.kit') };
};

/** Parts of every variant, and once it is settled those of the likeliest. */
const missingParts = ({ s, scope, repair, recognition }: GateProblem): readonly Text[] => {
  const hand = s.visit.gate?.kit ?? [];
  const own = recognition?.decided === true ? (repair.differs[0]?.parts ?? []) : [];
  return [...repair.parts, ...own]
    .filter((line) => !isCovered(line, hand, scope.family.parts))
    .map(({ part }) => titleOf(scope.family.parts, part));
};

/** In the hand itself, in a kit that holds it, or a kit whose pieces are all in the hand. */
const isCovered = (line: PartLine, hand: readonly string[], parts: readonly Part[]): boolean => {
  if (hand.includes(line.part)) return true;
  const inKit = parts.some(({ id, holds }) => hand.includes(id) && holdsEnough(holds[line.part], line.count));
  const pieces = Object.keys(parts.find(({ id }) => id === line.part)?.holds ?? {});
  return inKit || (pieces.length > 0 && pieces.every((piece) => hand.includes(piece)));
};

const holdsEnough = (held: number | 'all' | undefined, count: number): boolean =>
  held === 'all' || (held !== undefined && held >= count);

const titleOf = (named: readonly (Part | Tool)[], id: string): Text =>
  named.find((one) => one.id === id)?.title ?? id;

/** Special tools of the operations still to be done; a screwdriver is not asked for. */
const askTools = ({ s, scope, repair, steps }: GateProblem): GateAsk => {
  const wrong = repair.wrong.find(({ is }) => is === 'tool');
  if (wrong !== undefined) return { id: 'tools', met: false, says: wrong.says };
  const special = new Set(scope.family.tools.filter((tool) => tool.special).map(({ id }) => id));
  const used = steps.flatMap((step) => (step.kind === 'operation' && !step.done ? step.tools : []));
  const asked = [...new Set(used)].filter((tool) => special.has(tool));
  const missing = asked.filter((tool) => !(s.visit.gate?.tools ?? []).includes(tool));
  if (asked.length === 0) return { id: 'tools', met: true, says: message('plan.gate.tools-none') };
  if (missing.length === 0) return { id: 'tools', met: true, says: message('plan.gate.tools') };
  const titles = missing.map((id) => titleOf(scope.family.tools, id));
  return { id: 'tools', met: false, says: message('plan.gate.tools-missing', { tools: listed(titles) }) };
};

const askPhotographed = ({ s }: GateProblem): GateAsk => {
  const met = s.visit.gate?.photographed === true;
  return {
    id: 'photographed',
    met,
    says: message(met ? 'plan.gate.photographed' : 'plan.gate.photographed-not'),
  };
};

const askPrice = ({ s }: GateProblem): GateAsk => {
  const met = s.visit.gate?.priceAgreed === true;
  return { id: 'price', met, says: message(met ? 'plan.gate.price' : 'plan.gate.price-not') };
};

const askOutage = ({ s, outageMinutes, building: meanwhile }: GateProblem): GateAsk => {
  const met = s.visit.gate?.outageAgreed === true;
  const time = quantity('time', outageMinutes * 60);
  const building = message(`plan.building.${meanwhile}`);
  const key = met ? 'plan.gate.outage' : 'plan.gate.outage-not';
  return { id: 'outage', met, says: message(key, { time, building }) };
};

const askWayBack = ({ s }: GateProblem): GateAsk => {
  const way = s.visit.gate?.wayBack;
  return way === undefined
    ? { id: 'way-back', met: false, says: message('plan.gate.way-back-not') }
    : { id: 'way-back', met: true, says: message('plan.gate.way-back', { way }) };
};

/** Names one after the other, as one sentence part. */
export const listed = (names: readonly MessageValue[]): MessageValue => {
  const [first, ...rest] = names;
  if (first === undefined) return '';
  return rest.length === 0 ? first : nested(first, listed(rest));
};

const nested = (first: MessageValue, rest: MessageValue): Message => message('plan.list', { first, rest });
