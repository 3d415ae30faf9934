import type { Family } from '../model/family.ts';

/** Without mention of what the family switched off or cannot have: nothing is asked, raised or awaited in vain. */
export const prune = (family: Family): Family => {
  const operations = idsOf(family.operations);
  const faults = idsOf(family.faults);
  const tools = idsOf(family.tools);
  const cautions = idsOf(family.cautions);
  const parts = idsOf(family.parts);
  const only = (known: ReadonlySet<string>) => (id: string) => known.has(id);
  return {
    ...family,
    tells: family.tells.map((tell) => ({ ...tell, after: tell.after.filter(only(operations)) })),
    parts: family.parts.map((part) => ({ ...part, holds: onlyKnown(part.holds, parts) })),
    operations: family.operations.map((one) => ({
      ...one,
      after: one.after.map((set) => set.filter(only(operations))),
      tools: one.tools.filter(only(tools)),
      hazards: one.hazards.filter(only(cautions)),
      ...(one.back === undefined
        ? {}
        : { back: { ...one.back, hazards: one.back.hazards.filter(only(cautions)) } }),
    })),
    faults: family.faults.map((fault) => ({
      ...fault,
      repair: { ...fault.repair, do: fault.repair.do.filter(only(operations)) },
    })),
    tests: family.tests.map((test) => ({
      ...test,
      after: test.after.filter(only(operations)),
      tools: test.tools.filter(only(tools)),
      hazards: test.hazards.filter(only(cautions)),
      outcomes: test.outcomes.map((outcome) => ({ ...outcome, faults: onlyKnown(outcome.faults, faults) })),
    })),
    complaints: family.complaints.map((one) => ({ ...one, faults: onlyKnown(one.faults, faults) })),
    changes: family.changes.map((one) => ({ ...one, raises: onlyKnown(one.raises, faults) })),
  };
};

const idsOf = (entries: readonly { readonly id: string }[]): ReadonlySet<string> =>
  new Set(entries.map(({ id }) => id));

const onlyKnown = <T>(
  entries: Readonly<Record<string, T>>,
  known: ReadonlySet<string>,
): Readonly<Record<string, T>> => Object.fromEntries(Object.entries(entries).filter(([id]) => known.has(id)));
