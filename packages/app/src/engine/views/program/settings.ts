import type { TimedStep } from '@brinewright/equipment';
import { neighbourSaid, quantityAt, type Sheet, stepWords } from '@brinewright/papers';
import type { FigureId, Neighbour, ProgramAdvice, ProgramSettings, TimedSetting } from '@brinewright/service';
import { type Quantity, quantity } from '@brinewright/units';
import { formatQuantity } from '@brinewright/words';
import { type FigureView, figureView } from '../figure-view.ts';
import { days, type Setting, type SettingName, writtenSetting } from './written-setting.ts';

/** One line of what a controller holds. */
export type SettingRow = {
  readonly name: SettingName;
  readonly label: string;
  readonly found?: FigureView | undefined;
  readonly exact?: FigureView | undefined;
  readonly set?: FigureView | undefined;
  /** The advised value as an entry holds it: '16 min', or a count of days. */
  readonly advised?: Setting | undefined;
  readonly isChanged: boolean;
  /** What was really keyed in, where it is not what was advised. */
  readonly otherwise?: string | undefined;
  readonly neighbours: readonly NeighbourView[];
  readonly under?: string | undefined;
};

/** A time that the controller holds beside the exact one, and what it does. */
export type NeighbourView = { readonly time: string; readonly does: string; readonly isSet: boolean };

export const settingRows = (sheet: Sheet, advice: ProgramAdvice): readonly SettingRow[] => [
  ...advice.settings.map((setting) => timedRow(sheet, setting)),
  ...volumeRow(sheet, advice),
  ...daysRow(sheet, advice),
  ...startRow(sheet),
];

const timedRow = (sheet: Sheet, setting: TimedSetting): SettingRow => ({
  ...advisedRow(sheet, setting.step, sheet.word(stepWords[setting.step]), setting),
  neighbours: neighboursOf(sheet, setting),
});

const neighboursOf = (sheet: Sheet, { below, above, set }: TimedSetting): readonly NeighbourView[] =>
  [below, above]
    .filter((side) => side !== undefined)
    .map((side) => neighbourOf(sheet, side, quantityAt(sheet, set)?.si))
    .filter(({ does }) => does !== '');

const neighbourOf = (sheet: Sheet, side: Neighbour, set: number | undefined): NeighbourView => {
  const { time, effects } = neighbourSaid(sheet, side);
  return { time, does: effects.join(', '), isSet: set !== undefined && Math.abs(side.time - set) < 0.5 };
};

const volumeRow = (sheet: Sheet, { volume }: ProgramAdvice): readonly SettingRow[] =>
  volume === undefined
    ? []
    : [
        advisedRow(sheet, 'volume', sheet.word('papers.setting.volume'), {
          ...volume,
          exact: 'program.volume.exact',
        }),
      ];

const daysRow = (sheet: Sheet, { days: advised }: ProgramAdvice): readonly SettingRow[] => {
  if (advised === undefined) return [];
  const expected = quantityAt(sheet, advised.expected);
  const under = expected === undefined ? undefined : sheet.word('cli.program.days-expected', { expected });
  return [{ ...advisedRow(sheet, 'days', sheet.word('papers.setting.days'), advised), under }];
};

type Advised = {
  readonly set: FigureId;
  readonly found?: FigureId;
  readonly exact?: FigureId;
  readonly changed: boolean;
};

const advisedRow = (
  sheet: Sheet,
  name: TimedStep | 'volume' | 'days',
  label: string,
  { set, found, exact, changed }: Advised,
): SettingRow => {
  const advised = quantityAt(sheet, set);
  return {
    name,
    label,
    found: figureView(sheet, found, { name: label }),
    exact: figureView(sheet, exact, { name: label }),
    set: figureView(sheet, set, { name: label }),
    advised: advised === undefined ? undefined : writtenSetting(name, advised),
    isChanged: changed,
    otherwise: otherwise(sheet, keyedIn(sheet.visit.settings?.set, name), advised),
    neighbours: [],
  };
};

/** What was keyed in; a count of days as the time it stands for. */
const keyedIn = (
  set: ProgramSettings | undefined,
  name: TimedStep | 'volume' | 'days',
): Quantity | undefined => {
  const value = set?.[name];
  return typeof value === 'number' ? quantity('time', value * days) : value;
};

const otherwise = (
  sheet: Sheet,
  set: Quantity | undefined,
  advised: Quantity | undefined,
): string | undefined =>
  set === undefined || advised === undefined || isClose(set.si, advised.si)
    ? undefined
    : formatQuantity(set, sheet.reader).text;

const isClose = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-6 * Math.max(Math.abs(a), Math.abs(b));

/** The hour of regeneration is nothing to compute: it stays as it was found. */
const startRow = ({ visit, word }: Sheet): readonly SettingRow[] => {
  const { found, set } = visit.settings ?? {};
  const at = found?.at ?? set?.at;
  if (at === undefined) return [];
  return [
    {
      name: 'at',
      label: word('app.program.start'),
      found: found?.at === undefined ? undefined : { text: found.at },
      set: { text: at },
      advised: at,
      isChanged: false,
      otherwise: set?.at === undefined || set.at === at ? undefined : set.at,
      neighbours: [],
    },
  ];
};
