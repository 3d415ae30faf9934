import type { Access, Recognition } from '../recognition/recognition.ts';
import type { Situation } from '../situation/situation.ts';
import { laterFor } from './later.ts';
import { neededFor } from './needed.ts';
import { backMinutes, isLater } from './operation-kinds.ts';
import { type Present, presentOf } from './present.ts';
import { type Scope, scopeOf } from './scope.ts';
import { changed, isShut, reverse } from './state.ts';

/**
 * Minutes of hands to get at something and put back what came off for it, beyond what is off already: the least
 * work that reaches these operations, with shutting the water and opening it again where that is needed. Waiting and
 * changing of tools are not counted.
 */
export const accessFrom = (s: Situation, recognition?: Recognition): Access => {
  const scope = scopeOf(s, recognition, []);
  const present = presentOf(s, scope);
  const known = new Map<string, number>();
  return (operations) => {
    const key = [...operations].sort().join();
    const minutes = known.get(key) ?? accessMinutes(scope, present, operations);
    known.set(key, minutes);
    return minutes;
  };
};

const accessMinutes = (scope: Scope, present: Present, operations: readonly string[]): number => {
  const ways = operations.filter((id) => scope.operations.has(id)).map((id) => [[id]]);
  const needed = neededFor(ways, scope, present, { again: true });
  const ahead = needed.operations.filter((one) => !isLater(one));
  const isShutAnew = !isShut(present.state) && ahead.some(({ makes }) => isShut(makes));
  const later = laterFor({
    scope,
    state: ahead.reduce((state, { makes }) => changed(state, makes), present.state),
    reverses: ahead.map(({ makes }) => ({ makes: reverse(makes, present.state) })),
    given: new Set([...present.done, ...ahead.map(({ id }) => id)]),
    restored: new Set(),
    asked: needed.operations.filter(isLater),
    shuts: isShutAnew,
    extent: 'least',
  });
  const opening = isShutAnew ? later.operations : [];
  return [...ahead, ...opening].reduce((sum, one) => sum + one.minutes.hands + backMinutes(one), 0);
};
