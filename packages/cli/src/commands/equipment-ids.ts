import type { Family } from '@brinewright/equipment';
import { formatText, type Language, type Text } from '@brinewright/words';
import { hanging, stacked } from '../text/lines.ts';
import { type EquipmentIo, say } from './equipment-io.ts';

/** A role, with how many faults are mended with it, operations take it out, and parts have it. */
type Role = {
  readonly id: string;
  readonly faults: number;
  readonly operations: number;
  readonly parts: number;
};
type Titled = { readonly id: string; readonly title: string };

/** What else in a definition refers to, by section. */
export type Ids = { readonly roles: readonly Role[] } & Readonly<Record<TitledSection, readonly Titled[]>>;

const titledSections = ['operations', 'tests', 'faults', 'tools', 'cautions'] as const;
type TitledSection = (typeof titledSections)[number];

export const listIds = (family: Family, language: Language): Ids => {
  const titled = <T extends { readonly id: string }>(
    entries: readonly T[],
    title: (entry: T) => Text,
  ): readonly Titled[] => entries.map((one) => ({ id: one.id, title: formatText(title(one), language) }));
  return {
    roles: rolesIn(family),
    operations: titled(family.operations, ({ order }) => order),
    tests: titled(family.tests, ({ ask }) => ask),
    faults: titled(family.faults, ({ title }) => title),
    tools: titled(family.tools, ({ title }) => title),
    cautions: titled(family.cautions, ({ title }) => title),
  };
};

const rolesIn = ({ faults, operations, parts }: Family): readonly Role[] => {
  const mended = faults.flatMap(({ repair }) => [...new Set(repair.replace)]);
  const takenOut = operations.flatMap(({ takesOut }) => [...new Set(takesOut)]);
  const own = parts.map(({ is }) => is);
  const times = (list: readonly string[], role: string): number =>
    list.filter((other) => other === role).length;
  return [...new Set([...mended, ...takenOut])].toSorted().map((id) => ({
    id,
    faults: times(mended, id),
    operations: times(takenOut, id),
    parts: times(own, id),
  }));
};

/** The ids under a heading that says where they are written. */
export const idsText = (ids: Ids, io: EquipmentIo): string => {
  const roles = ids.roles.map(
    ({ id, ...counts }) => [id, say(io, 'equipment.cli.ids.role', counts)] as const,
  );
  const block = (section: TitledSection): readonly string[] =>
    listed(
      say(io, `equipment.cli.ids.${section}`),
      ids[section].map(({ id, title }) => [id, title]),
    );
  const blocks = [listed(say(io, 'equipment.cli.ids.roles'), roles), ...titledSections.map(block)];
  return `${stacked(...blocks).join('\n')}\n`;
};

const listed = (title: string, rows: readonly (readonly [string, string])[]): readonly string[] => {
  if (rows.length === 0) return [];
  const wide = Math.max(...rows.map(([id]) => id.length)) + 2;
  return [title, ...rows.flatMap(([id, says]) => hanging(`  ${id.padEnd(wide)}`, says))];
};
