import { stockIds } from '../stock-ids.ts';
import type { Target } from './recognition.ts';

/** One known bad seal means the whole stack: common practice. */
const stackRoles: readonly string[] = [stockIds.roles.seal, stockIds.roles.spacer];

/** Roles of the parts that the targets replace. */
export const rolesOf = (targets: readonly Target[]): readonly string[] => {
  const roles = targets.flatMap((target) => (target.kind === 'replace' ? [target.role] : []));
  const whole = roles.some((role) => stackRoles.includes(role)) ? [...roles, ...stackRoles] : roles;
  return [...new Set(whole)].toSorted();
};
