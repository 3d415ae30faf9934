import type { Path } from '@brinewright/words';
import { type Report, unknownWord } from '../issue/report.ts';
import type { Section } from '../like/merge.ts';
import type { Resolved } from '../like/resolve.ts';
import type { Family } from '../model/family.ts';
import type { Fits } from '../model/feature.ts';

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

/** Features are the family's own. What a stock says of features that a family has not restricts nothing. */
const checkFeatures = (family: Family, resolved: Resolved, report: Report): void => {
  const values = new Map(family.features.map(({ id, values }) => [id, values.map((value) => value.id)]));
  const isOwn = (at: Path): boolean => resolved.placeOf(at)?.file === resolved.file;
  const feature = (name: string, at: Path): readonly string[] | undefined => {
    const known = values.get(name);
    if (known === undefined && isOwn(at))
      report.error(at, unknownWord('reference.unknown', name, [...values.keys()]), 'key');
    return known;
  };
  const value = (name: string, known: readonly string[], at: Path): void => {
    if (!known.includes(name) && isOwn(at)) report.error(at, unknownWord('reference.unknown', name, known));
  };
  const fits = (one: Fits, at: Path): void => {
    for (const [name, allowed] of Object.entries(one)) {
      const known = feature(name, [...at, name]);
      for (const allowedValue of known === undefined ? [] : allowed)
        value(allowedValue, known ?? [], [...at, name]);
    }
  };
  for (const [index, one] of family.never.entries()) fits(one, ['never', index]);
  for (const tell of family.tells) {
    const at = ['tells', tell.id];
    if (tell.kind === 'seen') {
      for (const { id, allows } of tell.answers) fits(allows, allowsPath(resolved, [...at, 'answers', id]));
    } else {
      const known = feature(tell.feature, [...at, 'value', tell.feature]);
      for (const name of known === undefined ? [] : Object.keys(tell.expected)) {
        value(name, known ?? [], [...at, 'value', tell.feature, name]);
      }
    }
  }
  for (const bore of family.bores) {
    for (const [index, row] of bore.rows.entries())
      fits(row.fits, ['bores', bore.id, 'joins', index, 'when']);
    for (const [index, one] of (bore.measured?.pistons ?? []).entries()) {
      fits(one.fits, ['bores', bore.id, 'measured', 'pistons', index, 'when']);
    }
  }
  for (const section of ['parts', 'tools', 'operations', 'faults', 'tests'] as const) {
    for (const { id, fits: one } of family[section]) fits(one, [section, id, 'fits']);
  }
  for (const [index, { feature: name, from, to }] of family.conversions.entries()) {
    const at = ['conversions', index, 'change', name];
    const known = feature(name, at);
    if (known === undefined) continue;
    value(from, known, [...at, 0]);
    value(to, known, [...at, 1]);
  }
};

const allowsPath = (resolved: Resolved, at: Path): Path =>
  resolved.placeOf([...at, 'allows']) !== undefined ? [...at, 'allows'] : at;
