import type { Figures } from './derivation/figure.ts';
import type { Diagnosis } from './diagnosis/diagnosis.ts';
import type { ProgramAdvice } from './program/program-advice.ts';
import type { Proof } from './proof/proof.ts';
import type { Recognition } from './recognition/recognition.ts';
import type { RepairPlan } from './repair/repair.ts';
import type { Situation } from './situation/situation.ts';
import type { Stage } from './stage/stage.ts';
import type { Effort } from './stage/work.ts';
import type { WorkPlan } from './work-plan/work-plan.ts';

export type Stages = {
  readonly situation: Stage<Situation>;
  readonly recognition: Stage<Recognition>;
  readonly diagnosis: Stage<Diagnosis>;
  readonly repair: Stage<RepairPlan>;
  readonly plan: Stage<WorkPlan>;
  readonly program: Stage<ProgramAdvice>;
  readonly proof: Stage<Proof>;
};

/** A caution that applies to this visit: where it was named, and whether its fact was acknowledged. */
export type AppliedCaution = {
  readonly caution: string;
  readonly by: readonly string[];
  readonly acknowledged: boolean;
};

/** What the whole visit comes to, plain JSON. */
export type Assessment = {
  readonly engine: string;
  readonly definitions: string;
  readonly effort: Effort;
  readonly figures: Figures;
  readonly stages: Stages;
  readonly cautions: readonly AppliedCaution[];
};
