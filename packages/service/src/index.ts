export { sources } from '@brinewright/physics';
export { type AssessOptions, assess, assessing, assessProgram, engine, type StageReady } from './assess.ts';
export type { AppliedCaution, Assessment, Stages } from './assessment.ts';
export { type Evaluated, evaluate } from './derivation/evaluate.ts';
export { type Explained, explain } from './derivation/explain.ts';
export type { Figure, FigureId, FigureOrigin, Figures } from './derivation/figure.ts';
export { leansOn } from './derivation/ledger.ts';
export { type Leaning, measureFirst } from './derivation/measure-first.ts';
export {
  type ActionGroup,
  type Diagnosis,
  type FaultOdds,
  type NextTest,
  noneOfThese,
} from './diagnosis/diagnosis.ts';
export type {
  BackwashWindow,
  Neighbour,
  ProgramAdvice,
  TimedSetting,
  YearlyDifference,
} from './program/program-advice.ts';
export { type CheckDefinition, checkDefinitions } from './proof/checks.ts';
export type { Proof, ProofCheck } from './proof/proof.ts';
export type {
  Belief,
  Contradiction,
  Likelihood,
  NextTell,
  Recognition,
  Target,
  VariantSpace,
} from './recognition/recognition.ts';
export type { PartLine, RepairPlan, Substitute } from './repair/repair.ts';
export { type TimedPail, takenTogether, timedPail } from './situation/pail.ts';
export type { Situation, TestReading } from './situation/situation.ts';
export { wildIssue } from './situation/wild.ts';
export { type Memo, newMemo } from './stage/memo.ts';
export { byThenId } from './stage/rank.ts';
export { type Gap, type Stage, type StageName, stageNames } from './stage/stage.ts';
export { type Effort, finish, type Progress, type Work } from './stage/work.ts';
export { type HowKnown, howKnown, type Known, type KnownQuantity, type WrittenRange } from './visit/codec.ts';
export { parseVisit, visitJsonSchema, writeVisit } from './visit/parse-visit.ts';
export {
  type Conditioner,
  type ProgramSettings,
  type Reading,
  type TellAnswer,
  type Use,
  uses,
  type Visit,
  type VisitDocument,
  visitParts,
  visitSchema,
  type WaterAnalysis,
} from './visit/schema.ts';
export type { GateAsk, LeaveSafe, PlanStep, StackCount, WorkPlan } from './work-plan/work-plan.ts';
