import type { AppliedCaution, Stages } from './assessment.ts';
import type { Situation } from './situation/situation.ts';

/** 110 °F: skin stands it, hotter scalds sooner or later. Common practice. */
const scalding = 316.5;
const hotWater = 'hot-water';

const weight = { danger: 0, warning: 1, caution: 2, notice: 3 } as const;

/** Cautions of the definition that this visit meets, the gravest first: always for its kind, or named by the work. */
export const applyingCautions = (s: Situation, stages: Stages): readonly AppliedCaution[] => {
  const by = new Map<string, string[]>();
  const name = (caution: string, reason: string): void => {
    const reasons = by.get(caution) ?? [];
    if (!reasons.includes(reason)) by.set(caution, [...reasons, reason]);
  };
  for (const caution of s.family.cautions) if (caution.always.includes(s.kind)) name(caution.id, s.kind);
  if ((s.figures['situation.temperature.warmest']?.quantity.si ?? 0) > scalding) name(hotWater, 'water');
  if (stages.plan.state === 'done') for (const hazard of stages.plan.value.hazards) name(hazard, 'plan');
  const next = stages.diagnosis.state === 'done' ? stages.diagnosis.value.next[0]?.test : undefined;
  for (const hazard of next?.hazards ?? []) name(hazard, next?.id ?? 'test');
  const acknowledged = new Set((s.visit.acknowledged ?? []).map(({ caution }) => caution));
  return s.family.cautions
    .filter(({ id }) => by.has(id))
    .toSorted((a, b) => weight[a.signal] - weight[b.signal] || (a.id < b.id ? -1 : 1))
    .map(({ id }) => ({ caution: id, by: by.get(id) ?? [], acknowledged: acknowledged.has(id) }));
};
