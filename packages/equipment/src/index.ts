export { type BoreHarm, boreOf, type FittedBore, type StateAtStop } from './bore/bore-of.ts';
export { partCount, type StackCounts, stackCounts } from './bore/stack-counts.ts';
export { type Compiled, compileDefinitions } from './compile/compile-definitions.ts';
export type { IssueCode } from './issue/codes.ts';
export { nearest } from './issue/near.ts';
export type { Locate } from './issue/report.ts';
export { originsOf } from './like/origins.ts';
export { lintDefinitions, lintFamily, lintRules } from './lint/lint-family.ts';
export type { LintRule, LintSubject } from './lint/lint-rule.ts';
export { bundleOf, compileBundle, type DefinitionText } from './load/definition-bundle.ts';
export { type Parsed, parseDefinition } from './load/parse-definition.ts';
export { readData, readYaml, type YamlRead } from './load/read-yaml.ts';
export { schemaIssues } from './load/schema-issues.ts';
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
export { idFromName, type NewDefinition, newDefinition } from './new/new-definition.ts';
export { equipmentSchema } from './schema/equipment-schema.ts';
export { variantsOf, type WeightedVariant } from './variants/variants-of.ts';
