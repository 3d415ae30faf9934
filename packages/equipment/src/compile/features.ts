import { parseQuantity } from '@brinewright/units';
import type { Path, Text } from '@brinewright/words';
import type { Report } from '../issue/report.ts';
import type { Feature, FeatureValue, Fits } from '../model/feature.ts';
import type { Tell, TellAnswerOption } from '../model/tell.ts';
import { quantityFinding } from '../quantity/finding.ts';
import type { WrittenFamily } from '../schema/documents.ts';
import type { WrittenAnswer, WrittenFeature, WrittenTell } from '../schema/feature.ts';
import { compileEach, fitsOf, needed, titleOr } from './compiling.ts';

export const compileFeatures = (written: WrittenFamily, report: Report): readonly Feature[] =>
  compileEach(written.features, 'features', (feature, id, at) => featureOf(feature, id, at, report));

const featureOf = (written: WrittenFeature, id: string, at: Path, report: Report): Feature => {
  const values = valuesOf(written);
  const sum = values.reduce((total, value) => total + value.weight, 0);
  if (!(sum > 0)) report.error(at, { code: 'feature.no-weight', values: { feature: id } });
  const shares = values.map((value) => ({ ...value, weight: sum > 0 ? value.weight / sum : 0 }));
  return { id, title: titleOr(titleOf(written), id), values: shares };
};

type LongFeature = { readonly title?: Text | undefined; readonly values: LongValues };
type LongValues = string[] | Readonly<Record<string, number | LongValue>>;
type LongValue = { readonly title?: Text | undefined; readonly weight?: number | undefined };

/** Long form: `values` holds a list or a map there, a weight in the short form. */
const isLong = (written: WrittenFeature): written is Extract<WrittenFeature, LongFeature> =>
  !Array.isArray(written) && typeof written.values === 'object';

const titleOf = (written: WrittenFeature) => (isLong(written) ? written.title : undefined);

const valuesOf = (written: WrittenFeature): readonly FeatureValue[] => {
  const values = isLong(written) ? written.values : written;
  if (Array.isArray(values)) return values.map((id) => ({ id, title: titleOr(undefined, id), weight: 1 }));
  return Object.entries(values).map(([id, value]) =>
    typeof value === 'number'
      ? { id, title: titleOr(undefined, id), weight: value }
      : { id, title: titleOr(value.title, id), weight: value.weight ?? 1 },
  );
};

export const compileNever = (written: WrittenFamily): readonly Fits[] => (written.never ?? []).map(fitsOf);

export const compileTells = (written: WrittenFamily, report: Report): readonly Tell[] =>
  compileEach(written.tells, 'tells', (tell, id, at) =>
    tell.answers === undefined
      ? measuredTell(tell, id, at, report)
      : seenTell(tell, id, tell.answers, at, report),
  );

const baseOf = (written: WrittenTell, id: string) => ({
  id,
  ...(written.how === undefined ? {} : { how: written.how }),
  trust: written.trust ?? 0.9,
  minutes: written.minutes ?? 1,
  after: written.after ?? [],
});

const seenTell = (
  written: WrittenTell,
  id: string,
  answers: Readonly<Record<string, WrittenAnswer>>,
  at: Path,
  report: Report,
): Tell | undefined => {
  const ask = needed(written.ask, at, 'ask', report);
  if (ask === undefined) return undefined;
  const options = Object.entries(answers).map(([answer, allows]) => answerOf(answer, allows));
  return { kind: 'seen', ask, ...baseOf(written, id), answers: options };
};

const answerOf = (id: string, written: WrittenAnswer): TellAnswerOption => {
  const { allows } = written;
  if (typeof allows !== 'object' || Array.isArray(allows))
    return { id, title: id, allows: fitsOf(plain(written)) };
  const { title } = written;
  const isText = title !== undefined && !Array.isArray(title);
  return { id, title: isText ? title : id, allows: fitsOf(allows) };
};

/** An answer in short form is what it allows. */
const plain = (written: WrittenAnswer): Readonly<Record<string, string | string[]>> =>
  Object.fromEntries(
    Object.entries(written).flatMap(([feature, value]) =>
      typeof value === 'string' || Array.isArray(value) ? [[feature, value]] : [],
    ),
  );

const measuredTell = (written: WrittenTell, id: string, at: Path, report: Report): Tell | undefined => {
  const ask = needed(written.measure ?? written.ask, at, 'ask', report);
  const u = needed(written.u, at, 'u', report);
  const value = needed(written.value, at, written.measure === undefined ? 'answers' : 'value', report);
  if (ask === undefined || u === undefined || value === undefined) return undefined;
  const [feature, ...others] = Object.keys(value);
  if (feature === undefined || others.length > 0) {
    report.error([...at, 'value'], { code: 'tell.one-feature' });
    return undefined;
  }
  const kind = written.kind ?? 'length';
  const read = (text: string, path: Path) => {
    const parsed = parseQuantity(text, kind);
    if (parsed.ok) return parsed.quantity;
    report.error(path, quantityFinding(parsed.problem));
    return undefined;
  };
  const accuracy = read(u, [...at, 'u']);
  const expected = Object.entries(value[feature] ?? {}).flatMap(([id_, text]) => {
    const quantity = read(text, [...at, 'value', feature, id_]);
    return quantity === undefined ? [] : [[id_, quantity] as const];
  });
  if (accuracy === undefined) return undefined;
  return {
    kind: 'measured',
    ask,
    ...baseOf(written, id),
    feature,
    u: accuracy,
    expected: Object.fromEntries(expected),
  };
};
