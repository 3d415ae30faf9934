import { type Family, fitsVariant, type Part, type Variant } from '@brinewright/equipment';
import type { Target } from '../recognition/recognition.ts';

/** What one variant takes for the targets: part ids with counts. */
export type Bill = ReadonlyMap<string, number>;

/** One known bad seal means the whole stack: common practice. */
const stackRoles = new Set(['seal', 'spacer']);

export const rolesOf = (targets: readonly Target[]): readonly string[] => {
  const roles = targets.flatMap((target) => (target.kind === 'replace' ? [target.role] : []));
  const whole = roles.some((role) => stackRoles.has(role)) ? [...roles, ...stackRoles] : roles;
  return [...new Set(whole)].toSorted();
};

/** Pieces in the stack by role; a role that is not in it counts as its part says. */
const inStack = (family: Family, role: string): number => family.stack.filter(({ is }) => is === role).length;

export const countOf = (family: Family, part: Part): number =>
  stackRoles.has(part.is) ? inStack(family, part.is) : part.count;

/** A kit where one covers what is needed, else the parts alone. */
export const billFor = (family: Family, variant: Variant, roles: readonly string[]): Bill => {
  const fitting = family.parts.filter(({ fits }) => fitsVariant(fits, variant));
  const needed = new Map(
    fitting
      .filter((part) => part.is !== 'kit' && roles.includes(part.is))
      .map((part) => [part.id, countOf(family, part)] as const)
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
  const holds = held === 'all' ? (part === undefined ? 0 : countOf(family, part)) : held;
  return holds >= count;
};
