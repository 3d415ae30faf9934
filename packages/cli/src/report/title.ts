import { hanging, heading } from '../text/lines.ts';
import { plainSpaces, widthOf } from '../text/wrap.ts';
import { dated, figureOf, shown, type View } from '../view.ts';
import { featureTitle, valueTitle } from './common.ts';

/** Site, unit, valve as far as it is known, tank, who and when, and the complaint in the customer's words. */
export const titleBlock = (view: View): string[] => {
  const { visit, subject } = view;
  const rows: readonly (readonly [string, string | undefined])[] = [
    [view.word('cli.title.site'), joined([visit.site.name, visit.site.address])],
    [view.word('cli.title.unit'), subject?.name ?? visit.subject],
    [view.word('cli.title.valve'), valve(view)],
    [view.word('cli.title.tank'), tank(view)],
    [view.word('cli.title.visit'), written(view)],
    [view.word('cli.title.complaint'), visit.complaint && `“${view.text(visit.complaint.words)}”`],
  ];
  const known = rows.filter((row): row is readonly [string, string] => row[1] !== undefined && row[1] !== '');
  const wide = Math.max(...known.map(([label]) => widthOf(label))) + 2;
  return [
    ...heading(view.word('cli.title')),
    ...known.flatMap(([label, value]) => hanging(label.padEnd(wide), value).map(plainSpaces)),
  ];
};

const joined = (texts: readonly (string | undefined)[]): string =>
  texts.filter((one) => one !== undefined).join(', ');

/** Family, and the features that are settled. */
const valve = (view: View): string => {
  const { recognition } = view.assessment.stages;
  const features = recognition.state === 'done' ? recognition.value.features : [];
  const settled = features.flatMap(({ feature, settled: value }) =>
    value === undefined ? [] : [`${featureTitle(view, feature)}: ${valueTitle(view, feature, value)}`],
  );
  const family = view.family === undefined ? (view.subject?.family ?? '–') : view.text(view.family.title);
  return settled.length === 0 ? family : `${family}. ${settled.join('; ')}`;
};

const tank = (view: View): string | undefined => {
  const parts = [
    ['situation.tank.diameter', 'cli.title.tank.wide'],
    ['situation.bed.volume', 'cli.title.tank.bed'],
    ['situation.bed.free', 'cli.title.tank.free'],
  ] as const;
  const known = parts.filter(([id]) => figureOf(view, id) !== undefined);
  return known.length === 0
    ? undefined
    : known.map(([id, key]) => view.word(key, { figure: shown(view, id) })).join(', ');
};

const written = (view: View): string => {
  const { date, by } = view.visit;
  return joined([date === undefined ? undefined : dated(view, date), by?.name, by?.company]);
};
