export { isQuantityKind, kinds, type QuantityKind } from './kinds.ts';
export { type Quantity, quantity, type UnitSystem } from './quantity.ts';
