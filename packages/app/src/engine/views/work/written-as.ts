import type { PlanStep, Visit } from '@brinewright/service';

type Written = { readonly operation: string; readonly instance?: number };
type Done = NonNullable<Visit['done']>[number];

/** 'piston-out#2.back' is written as the second putting back of 'piston-out'. */
const parsed = (id: string): { readonly operation: string; readonly instance: number } => {
  const [, base = id, nth, back = ''] = /^(.*?)(?:#(\d+))?(\.back)?$/u.exec(id) ?? [];
  return { operation: `${base}${back}`, instance: nth === undefined ? 1 : Number(nth) };
};

/** Under which name and number a step is written down as done; a sweep after the first has a number of its own. */
export const writtenAs = (step: PlanStep, visit: Visit): Written => {
  const { operation, instance } = parsed(step.id);
  const nth = step.kind === 'sweep' && !step.done ? sweeps(visit, operation) + 1 : instance;
  return nth === 1 ? { operation } : { operation, instance: nth };
};

const sweeps = ({ done = [] }: Visit, sweep: string): number =>
  done.filter(({ operation }) => operation === sweep).length;

/** The line of the visit that says a step is done. */
export const lineOf = (
  { id, kind }: Pick<PlanStep, 'id' | 'kind'>,
  { done = [] }: Visit,
): Done | undefined => {
  if (kind === 'sweep') return done.findLast((one) => one.operation === id);
  const { operation, instance } = parsed(id);
  const own = done.filter((one) => parsed(one.operation).operation === operation);
  return (
    own.find((one) => (one.instance ?? parsed(one.operation).instance) === instance) ?? own[instance - 1]
  );
};
