import { type Family, fitsVariant, type Part, partCount, type Variant } from '@brinewright/equipment';
import type { Target } from '../recognition/recognition.ts';
import { rolesOf } from '../recognition/roles.ts';
import { conversionParts, converted, isKit } from './convert.ts';

/** What one variant takes for the targets: part ids with counts. */
export type Bill = ReadonlyMap<string, number>;

/** What a bill is made for: the targets and the fittings wanted by id. */
export type Wanted = { readonly targets: readonly Target[]; readonly fittings: readonly string[] };

/** A kit where one covers what is needed, else the parts alone. */
export const billFor = (family: Family, variant: Variant, wanted: Wanted): Bill => {
  const needed = new Map(
    neededParts(family, variant, wanted)
      .map((part) => [part.id, partCount(part, family)] as const)
      .filter(([, count]) => count > 0),
  );
  const kit = bestKit(family, variant, needed, wanted);
  if (kit === undefined) return needed;
  const rest = [...needed].filter(([id]) => !covers(kit, id, needed.get(id) ?? 0, family));
  return new Map([[kit.id, 1], ...rest]);
};

/** Parts of the roles to be replaced, as the valve will be, and what a conversion changes. */
const neededParts = (family: Family, variant: Variant, { targets, fittings }: Wanted): readonly Part[] => {
  const after = converted(variant, targets);
  const roles = rolesOf(targets);
  const replaced = family.parts.filter(
    (part) =>
      !isKit(part) &&
      roles.includes(part.is) &&
      fitsVariant(part.fits, after) &&
      (part.of === undefined || fittings.includes(part.of)),
  );
  const changed = conversionParts(family, variant, targets);
  return [...replaced, ...changed.filter((part) => !replaced.includes(part))];
};

const bestKit = (family: Family, variant: Variant, needed: Bill, { targets }: Wanted): Part | undefined => {
  const after = converted(variant, targets);
  const kits = family.parts
    .filter((part) => isKit(part) && fitsVariant(part.fits, after))
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
