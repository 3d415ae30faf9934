import type { Operation, WorkState } from '@brinewright/equipment';
import type { Ways } from './closure.ts';
import { byText, needsOf, roundTripMinutes } from './operation-kinds.ts';
import { type StateKey, stateKeys, withPressure } from './state.ts';

/** For every state that something planned needs and nothing planned makes: what can make it, if anything can. */
export const makersFor = (
  planned: readonly Operation[],
  candidates: readonly Operation[],
  state: WorkState,
): readonly Ways[] => {
  const ways: Ways[] = [];
  for (const operation of planned)
    for (const key of stateKeys) {
      const wanted = needsOf(operation)[key];
      if (wanted === undefined || wanted === state[key] || isMade(planned, key, wanted)) continue;
      const able = ableToMake(candidates, key, wanted);
      if (able.length > 0) ways.push(able.map(({ id }) => [id]));
    }
  return ways;
};

export const isMade = (
  planned: readonly { readonly makes: WorkState }[],
  key: StateKey,
  wanted: string,
): boolean => planned.some(({ makes }) => withPressure(makes)[key] === wanted);

/** Those that belong to every such plan first, then the quickest. */
export const ableToMake = (
  candidates: readonly Operation[],
  key: StateKey,
  wanted: string,
): readonly Operation[] => {
  const able = candidates.filter(({ makes }) => withPressure(makes)[key] === wanted);
  const always = able.filter((operation) => operation.always);
  return [...(always.length > 0 ? always : able)].sort(
    (a, b) => roundTripMinutes(a) - roundTripMinutes(b) || byText(a.id, b.id),
  );
};
