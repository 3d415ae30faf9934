import { type Family, fitsVariant, type Part, partCount, type Variant } from '@brinewright/equipment';

/** What one variant takes for the targets: part ids with counts. */
export type Bill = ReadonlyMap<string, number>;

/** A kit where one covers what is needed, else the parts alone. */
export const billFor = (
  family: Family,
  variant: Variant,
  roles: readonly string[],
  wanted: readonly string[],
): Bill => {
  const fitting = family.parts
    .filter(({ fits }) => fitsVariant(fits, variant))
    .filter(({ of }) => of === undefined || wanted.includes(of));
  const needed = new Map(
    fitting
      .filter((part) => part.is !== 'kit' && roles.includes(part.is))
      .map((part) => [part.id, partCount(part, family)] as const)
      .filter(([, count]) => count > 0),
  );
  const kit = bestKit(fitting, needed, family);
  if (kit === undefined) return needed;
  const rest = [...needed].filter(([id]) => !covers(kit, id, needed.get(id) ?? 0, family));
  return new Map([[kit.id, 1], ...rest]);
};

const bestKit = (fitting: readonly Part[], needed: Bill, family: Family): Part | undefined => {
  const kits = fitting
    .filter(({ is }) => is === 'kit')
    .map((kit) => ({
      kit,
      covered: [...needed].filter(([id, count]) => covers(kit, id, count, family)).length,
      size: Object.keys(kit.holds).length,
    }))
    .filter(({ covered }) => covered >= 2);
  return kits.toSorted(
    (a, b) => b.covered - a.covered || a.size - b.size || (a.kit.id < b.kit.id ? -1 : 1),
  )[0]?.kit;
};

const covers = (kit: Part, id: string, count: number, family: Family): boolean => {
  const held = kit.holds[id];
  if (held === undefined) return false;
  const part = family.parts.find((p) => p.id === id);
  const holds = held === 'all' ? (part === undefined ? 0 : partCount(part, family)) : held;
  return holds >= count;
};
