import type { Path } from '@brinewright/words';
import { type Report, unknownWord } from '../issue/report.ts';
import type { Section } from '../like/merge.ts';
import type { Resolved } from '../like/resolve.ts';
import type { Family } from '../model/family.ts';
import { checkFeatures } from './feature-references.ts';

type Named = { readonly id: string };

/** Everything that one part of a family says of another must be there. */
export const checkReferences = (family: Family, resolved: Resolved, report: Report): void => {
  const ids = (section: Section, entries: readonly Named[]): readonly string[] => [
    ...entries.map(({ id }) => id),
    ...(resolved.removed[section] ?? []),
  ];
  const known = {
    operations: ids('operations', family.operations),
    faults: [...new Set([...ids('faults', family.faults), ...Object.keys(resolved.written.faults ?? {})])],
    cautions: ids('cautions', family.cautions),
    tools: ids('tools', family.tools),
    parts: ids('parts', family.parts),
    fittings: fittingsOf(family),
  };
  const look = (to: keyof typeof known, names: readonly string[], at: Path, part?: 'key'): void => {
    for (const [index, name] of names.entries()) {
      if (known[to].includes(name)) continue;
      report.error(
        [...at, part === undefined ? index : name],
        unknownWord('reference.unknown', name, known[to]),
      );
    }
  };
  checkOperations(family, look);
  checkDiagnosis(family, look);
  checkParts(family, resolved, look);
  checkFeatures(family, resolved, report);
};

/** Everything that a unit can be fitted with by id. */
const fittingsOf = ({ controls, controllers, injectors, meters }: Family): readonly string[] =>
  [controls.drain, controls.refill, controllers, injectors, meters].flatMap((list) =>
    list.map(({ id }) => id),
  );

type Look = (
  to: 'operations' | 'faults' | 'cautions' | 'tools' | 'parts' | 'fittings',
  names: readonly string[],
  at: Path,
  part?: 'key',
) => void;

const checkOperations = (family: Family, look: Look): void => {
  for (const one of family.operations) {
    const at = ['operations', one.id];
    const [only, ...others] = one.after;
    if (only !== undefined && others.length === 0) look('operations', only, [...at, 'after']);
    else for (const [index, set] of one.after.entries()) look('operations', set, [...at, 'after', index]);
    look('tools', one.tools, [...at, 'tools']);
    look('cautions', one.hazards, [...at, 'hazards']);
    look('cautions', one.back?.hazards ?? [], [...at, 'back', 'hazards']);
  }
};

const checkDiagnosis = (family: Family, look: Look): void => {
  for (const tell of family.tells) look('operations', tell.after, ['tells', tell.id, 'after']);
  for (const fault of family.faults)
    look('operations', fault.repair.do, ['faults', fault.id, 'repair', 'do']);
  for (const test of family.tests) {
    const at = ['tests', test.id];
    look('operations', test.after, [...at, 'after']);
    look('tools', test.tools, [...at, 'tools']);
    look('cautions', test.hazards, [...at, 'hazards']);
    for (const outcome of test.outcomes) {
      look('faults', Object.keys(outcome.faults), [...at, 'outcomes', outcome.id, 'faults'], 'key');
    }
  }
  for (const { id, faults } of family.complaints)
    look('faults', Object.keys(faults), ['complaints', id, 'faults'], 'key');
  for (const { id, raises } of family.changes)
    look('faults', Object.keys(raises), ['changes', id, 'raises'], 'key');
};

const checkParts = (family: Family, resolved: Resolved, look: Look): void => {
  for (const part of family.parts) {
    look('parts', Object.keys(part.holds), ['parts', part.id, 'holds'], 'key');
    if (part.of !== undefined) look('fittings', [part.of], ['parts', part.id, 'of']);
  }
  for (const [index, one] of family.conversions.entries())
    look('parts', one.also, ['conversions', index, 'also']);
  const pieces = family.stack.flatMap(({ part }, index) => (part === undefined ? [] : [{ part, index }]));
  if (resolved.written.stack === undefined) return;
  for (const { part, index } of pieces) look('parts', [part], ['stack', index]);
};
