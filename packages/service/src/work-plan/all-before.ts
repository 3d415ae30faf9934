import type { Operation } from '@brinewright/equipment';

/** Everything an operation comes after by any way, and what that comes after. */
export const allBefore = (operations: ReadonlyMap<string, Operation>, id: string): ReadonlySet<string> => {
  const before = new Set<string>();
  const reach = (from: string): void => {
    for (const next of operations.get(from)?.after.flat() ?? []) {
      if (before.has(next)) continue;
      before.add(next);
      reach(next);
    }
  };
  reach(id);
  return before;
};
