import { type Family, fitsVariant, type Operation, type Variant } from '@brinewright/equipment';
import { leastClosure } from '../work-plan/closure.ts';
import type { Target } from './recognition.ts';

/** Operations that the targets ask for in this variant, with the least that must be done before them. */
export const operationsFor = (
  family: Family,
  variant: Variant,
  targets: readonly Target[],
): readonly Operation[] => {
  const fitting = family.operations.filter((operation) => fitsVariant(operation.fits, variant));
  const asked = fitting.filter((operation) => isAsked(operation, targets));
  const { members } = leastClosure(
    asked.map(({ id }) => [[id]]),
    new Map(fitting.map((operation) => [operation.id, operation])),
    () => false,
  );
  return fitting.filter(({ id }) => members.has(id));
};

const isAsked = (operation: Operation, targets: readonly Target[]): boolean =>
  targets.some((target) => {
    if (target.kind === 'operation') return target.operation === operation.id;
    return target.kind === 'replace' && operation.takesOut.includes(target.role);
  });
