import type { AppliedCaution, Stages } from './assessment.ts';
import type { Situation } from './situation/situation.ts';
import { stockIds } from './stock-ids.ts';
import { isScalding } from './work-plan/scald.ts';

const weight = { danger: 0, warning: 1, caution: 2, notice: 3 } as const;

/** Cautions of the stock that the situation itself names, whatever is planned. */
const { hotWater, ratedParts } = stockIds.cautions;
/** What stays in the water of a softener, by the salt it is fed. */
const ofSalt: readonly string[] = ['sodium', 'potassium'];

/**
 * Cautions of the definition that this visit meets, the gravest first: those of its kind, and those named by the work
 * planned, by the way into a make nobody has described, by the next test, or by the water itself.
 */
export const applyingCautions = (s: Situation, stages: Stages): readonly AppliedCaution[] => {
  const by = new Map<string, string[]>();
  for (const { caution, reason } of [...ofKind(s), ...ofWater(s), ...ofPlan(stages), ...ofNextTest(stages)]) {
    const reasons = by.get(caution) ?? [];
    if (!reasons.includes(reason)) by.set(caution, [...reasons, reason]);
  }
  const acknowledged = new Set((s.visit.acknowledged ?? []).map(({ caution }) => caution));
  return s.family.cautions
    .filter(({ id }) => by.has(id) && !isOfOtherSalt(s, id))
    .toSorted((a, b) => weight[a.signal] - weight[b.signal] || (a.id < b.id ? -1 : 1))
    .map(({ id }) => ({ caution: id, by: by.get(id) ?? [], acknowledged: acknowledged.has(id) }));
};

type Named = { readonly caution: string; readonly reason: string };

const ofKind = ({ family, kind }: Situation): readonly Named[] =>
  family.cautions
    .filter(({ always }) => always.includes(kind))
    .map(({ id }) => ({ caution: id, reason: kind }));

const ofWater = (s: Situation): readonly Named[] => [
  ...(isScalding(s) ? [hotWater, ratedParts].map((caution) => ({ caution, reason: 'water' })) : []),
  ...(isPressed(s) ? [{ caution: ratedParts, reason: 'pressure' }] : []),
];

/** The supply stands higher than the family is made for. */
const isPressed = ({ figures, family }: Situation): boolean => {
  const most = family.limits.pressure?.max.si;
  const now = figures['situation.supply.pressure']?.quantity.si;
  return most !== undefined && now !== undefined && now > most;
};

const ofPlan = ({ plan }: Stages): readonly Named[] => {
  if (plan.state !== 'done') return [];
  const { hazards, ifOpened } = plan.value;
  return [
    ...hazards.map((caution) => ({ caution, reason: 'plan' })),
    ...(ifOpened?.hazards ?? []).map((caution) => ({ caution, reason: 'if-opened' })),
  ];
};

const ofNextTest = ({ diagnosis }: Stages): readonly Named[] => {
  const next = diagnosis.state === 'done' ? diagnosis.value.next[0]?.test : undefined;
  return next === undefined ? [] : next.hazards.map((caution) => ({ caution, reason: next.id }));
};

const isOfOtherSalt = ({ subject }: Situation, caution: string): boolean =>
  ofSalt.includes(caution) && caution !== (subject.salt ?? 'sodium');
