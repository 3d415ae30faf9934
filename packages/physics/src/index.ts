export {
  type Equation,
  type EquationMeta,
  equation,
  type RangeRule,
  type SourceStatus,
  type Symbol_,
} from './meta/equation.ts';
export { type Source, type SourceKey, sources } from './meta/sources.ts';
