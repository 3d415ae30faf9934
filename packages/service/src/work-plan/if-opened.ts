import type { Recognition } from '../recognition/recognition.ts';
import type { RepairPlan } from '../repair/repair.ts';
import type { Situation } from '../situation/situation.ts';
import type { Stage } from '../stage/stage.ts';
import type { Work } from '../stage/work.ts';
import { openByMaker } from '../stock-ids.ts';
import { planWork } from './plan-work.ts';
import type { Sequencer } from './sequencer.ts';
import type { WorkPlan } from './work-plan.ts';

/**
 * The plan, and for a make nobody has described also the safe way in and out by the maker's instructions: recording,
 * gate, isolation, venting, verifying and everything back, ready even where today's work opens nothing.
 */
export function* planWithWayIn(
  s: Situation,
  recognition: Recognition | undefined,
  repair: RepairPlan,
  sequencer: Sequencer,
): Work<Stage<WorkPlan>> {
  const plan = yield* planWork(s, recognition, repair, sequencer);
  const knows = s.family.operations.some(({ id }) => id === openByMaker);
  if (s.described || !knows || plan.state === 'blocked' || plan.value.outageMinutes > 0) return plan;
  const targets = [{ kind: 'operation', operation: openByMaker }] as const;
  const opened = yield* planWork(s, recognition, { ...repair, targets }, sequencer);
  if (opened.state === 'blocked') return plan;
  const { steps, minutes, outageMinutes, building, hazards } = opened.value;
  return {
    ...plan,
    value: { ...plan.value, ifOpened: { steps, minutes, outageMinutes, building, hazards } },
  };
}
