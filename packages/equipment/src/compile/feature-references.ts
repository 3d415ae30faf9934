import type { Path } from '@brinewright/words';
import { nearest } from '../issue/near.ts';
import { type Report, unknownWord } from '../issue/report.ts';
import type { Resolved } from '../like/resolve.ts';
import { isRecord, valueAt } from '../load/record.ts';
import type { Family } from '../model/family.ts';
import type { Fits } from '../model/feature.ts';

/** A value of a feature that something goes with, and where that is said. */
type Use = { readonly feature: string; readonly value: string; readonly at: Path };

/** A feature that something names, with the values named. */
type Named = { readonly feature: string; readonly at: Path; readonly uses: readonly Use[] };

/** Features are the family's own. What a stock says of features that a family has not restricts nothing. */
export const checkFeatures = (family: Family, resolved: Resolved, report: Report): void => {
  const values = new Map(family.features.map(({ id, values }) => [id, values.map((value) => value.id)]));
  const isOwn = (at: Path): boolean => valueAt(resolved.own, at) !== undefined;
  const named = namedIn(family, resolved);
  for (const { feature, at } of named) {
    if (!values.has(feature) && isOwn(at))
      report.error(at, unknownWord('reference.unknown', feature, [...values.keys()]), 'key');
  }
  const uses = named.flatMap((one) => one.uses);
  const known = (feature: string): readonly string[] | undefined => values.get(feature);
  const unknown = uses.filter(
    ({ feature, value, at }) => known(feature)?.includes(value) === false && isOwn(at),
  );
  for (const use of unknown) reportUse(use, known(use.feature) ?? [], { uses, unknown }, resolved, report);
};

/** The slip is where the value is defined, if nothing but the other spelling is ever used. */
const reportUse = (
  { feature, value, at }: Use,
  known: readonly string[],
  { uses, unknown }: { readonly uses: readonly Use[]; readonly unknown: readonly Use[] },
  resolved: Resolved,
  report: Report,
): void => {
  const defined = nearest(value, known);
  const isUsed = uses.some((one) => one.feature === feature && one.value === defined);
  if (defined === undefined || isUsed) {
    report.error(at, unknownWord('reference.unknown', value, known));
    return;
  }
  const first = unknown.find((one) => one.feature === feature && one.value === value);
  if (first?.at !== at) return;
  report.error(
    definedAt(feature, defined, resolved),
    {
      code: 'feature.value-unused',
      values: { feature, defined, used: value, line: resolved.locate(at).line },
    },
    'key',
  );
};

/** Where a value stands under `features`: in a list or as a key, plain or in the long form. */
const definedAt = (feature: string, value: string, { written }: Resolved): Path => {
  const short = ['features', feature];
  const long = [...short, 'values'];
  const at = typeof valueAt(written, long) === 'object' ? long : short;
  const values = valueAt(written, at);
  if (Array.isArray(values)) return [...at, values.indexOf(value)];
  return isRecord(values) ? [...at, value] : at;
};

const namedIn = (family: Family, resolved: Resolved): readonly Named[] => [
  ...family.never.flatMap((one, index) => fitsNamed(one, ['never', index])),
  ...family.tells.flatMap((tell) => tellNamed(tell, resolved)),
  ...family.bores.flatMap(boreNamed),
  ...(['parts', 'tools', 'operations', 'faults', 'tests'] as const).flatMap((section) =>
    family[section].flatMap(({ id, fits }) => fitsNamed(fits, [section, id, 'fits'])),
  ),
  ...family.conversions.map(({ feature, from, to }, index) => {
    const at = ['conversions', index, 'change', feature];
    const uses = [from, to].map((value, end) => ({ feature, value, at: [...at, end] }));
    return { feature, at, uses };
  }),
];

const fitsNamed = (fits: Fits, above: Path): readonly Named[] =>
  Object.entries(fits).map(([feature, allowed]) => {
    const at = [...above, feature];
    return { feature, at, uses: allowed.map((value) => ({ feature, value, at })) };
  });

const tellNamed = (tell: Family['tells'][number], { written }: Resolved): readonly Named[] => {
  const at = ['tells', tell.id];
  if (tell.kind === 'seen')
    return tell.answers.flatMap(({ id, allows }) =>
      fitsNamed(allows, allowsPath(written, [...at, 'answers', id])),
    );
  const { feature, expected } = tell;
  const where = [...at, 'value', feature];
  const uses = Object.keys(expected).map((value) => ({ feature, value, at: [...where, value] }));
  return [{ feature, at: where, uses }];
};

/** An answer in the long form has what it allows under a key of that name. */
const allowsPath = (written: Resolved['written'], at: Path): Path => {
  const long = [...at, 'allows'];
  const allows = valueAt(written, long);
  return isRecord(allows) && !Array.isArray(allows) ? long : at;
};

const boreNamed = (bore: Family['bores'][number]): readonly Named[] => [
  ...bore.rows.flatMap((row, index) => fitsNamed(row.fits, ['bores', bore.id, 'joins', index, 'when'])),
  ...(bore.measured?.pistons ?? []).flatMap((one, index) =>
    fitsNamed(one.fits, ['bores', bore.id, 'measured', 'pistons', index, 'when']),
  ),
];
