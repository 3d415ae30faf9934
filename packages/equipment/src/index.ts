export type { BoreDefinition, BoreLengths, JoinRow, Port, StackPiece, Stop } from './model/bore.ts';
export { stops } from './model/bore.ts';
export type { Equipment, Family, Origins } from './model/family.ts';
export { undescribed } from './model/family.ts';
export type {
  CautionDefinition,
  ChangeDefinition,
  ComplaintDefinition,
  ConditionerKind,
  DiagnosisTest,
  Fault,
  Outcome,
  Strength,
} from './model/fault.ts';
export { strengths } from './model/fault.ts';
export type { Feature, FeatureValue, Fits, Variant } from './model/feature.ts';
export { fitsVariant } from './model/feature.ts';
export type {
  Control,
  Controller,
  Injector,
  InjectorPoint,
  Medium,
  Meter,
  QuantityRange,
  StartMode,
  Step,
  TimedStep,
} from './model/fitting.ts';
export { steps } from './model/fitting.ts';
export type { Operation, Phase, WorkState } from './model/operation.ts';
export { phases } from './model/operation.ts';
export type { Conversion, Part, Tool } from './model/part.ts';
export type { MeasuredTell, SeenTell, Tell, TellAnswerOption } from './model/tell.ts';
