import type { TimedStep } from '@brinewright/equipment';
import type { Neighbour, ProgramAdvice, TimedSetting } from '@brinewright/service';
import { formatQuantity, type MessageKey } from '@brinewright/words';
import { stepWords } from '../drawings/timeline.ts';
import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { figure } from './derivation.ts';
import { alike, quantityAt } from './figure-values.ts';
import { measureFirstLines, ofSettings } from './measure-first.ts';
import { type Column, type Row, section, sentences, staged, table } from './parts.ts';
import type { Sheet } from './sheet.ts';
import { yearTable } from './year-table.ts';

const does: Readonly<Record<Neighbour['does'][number]['what'], MessageKey>> = {
  salt: 'papers.neighbour.salt',
  rinse: 'papers.neighbour.rinse',
  capacity: 'papers.neighbour.capacity',
  water: 'papers.neighbour.water',
};

/** A time that the controller holds beside the exact one, and what it does. */
export const neighbourSaid = (
  sheet: Sheet,
  side: Neighbour,
): { readonly time: string; readonly effects: readonly string[] } => ({
  time: formatQuantity({ kind: 'time', si: side.time }, sheet.reader).text,
  effects: side.does.flatMap(({ what, figure: id }) => {
    const value = quantityAt(sheet, id);
    return value === undefined ? [] : [sheet.word(does[what], { value })];
  }),
});

const neighbour = (sheet: Sheet, side: Neighbour | undefined): Content => {
  if (side === undefined) return undefined;
  const { time, effects } = neighbourSaid(sheet, side);
  return html(
    'span',
    { class: 'side' },
    html('b', {}, time),
    effects.length === 0 ? '' : ` ${effects.join(', ')}`,
  );
};

/** 'Refill, exact': which of the times of a step it is. */
const label = (sheet: Sheet, step: TimedStep, which: MessageKey): string =>
  `${sheet.word(stepWords[step])}, ${sheet.word(which)}`;

/** Both times that the controller can hold next to the exact one, and what each does. */
const rounding = (sheet: Sheet, setting: TimedSetting): Content => {
  const sides = [neighbour(sheet, setting.below), neighbour(sheet, setting.above)].filter(
    (one) => one !== undefined,
  );
  return [
    html(
      'span',
      { class: 'side' },
      `${sheet.word('papers.exact')} `,
      figure(sheet, setting.exact, label(sheet, setting.step, 'papers.exact')),
    ),
    sides,
  ];
};

const settingRow = (sheet: Sheet, setting: TimedSetting): Row => ({
  of: setting.changed ? 'changed' : undefined,
  cells: [
    sheet.word(stepWords[setting.step]),
    figure(sheet, setting.found, label(sheet, setting.step, 'papers.as-found'), 'found-value'),
    figure(sheet, setting.set, label(sheet, setting.step, 'papers.as-set'), 'set-value'),
  ],
  under: rounding(sheet, setting),
});

const betweenRows = (sheet: Sheet, { volume, days }: ProgramAdvice): readonly Row[] => [
  ...(volume === undefined
    ? []
    : [
        {
          of: volume.changed ? 'changed' : undefined,
          cells: [
            sheet.word('papers.setting.volume'),
            figure(sheet, volume.found, sheet.word('papers.setting.volume'), 'found-value'),
            figure(sheet, volume.set, sheet.word('papers.setting.volume'), 'set-value'),
          ],
        },
      ]),
  ...(days === undefined
    ? []
    : [
        {
          of: days.changed ? 'changed' : undefined,
          cells: [
            sheet.word('papers.setting.days'),
            figure(sheet, days.found, sheet.word('papers.setting.days'), 'found-value'),
            figure(sheet, days.set, sheet.word('papers.setting.days'), 'set-value'),
          ],
        },
      ]),
];

const settingColumns = (sheet: Sheet): readonly Column[] => [
  { title: sheet.word('papers.key-in') },
  { title: sheet.word('papers.as-found'), num: true },
  { title: sheet.word('papers.as-set'), num: true },
];

const keyIn = (sheet: Sheet, advice: ProgramAdvice): Markup =>
  table(
    settingColumns(sheet),
    [...advice.settings.map((setting) => settingRow(sheet, setting)), ...betweenRows(sheet, advice)],
    'settings',
  );

/** The list to key in by, without its derivations: for a sheet in the hand. */
export const settingsList = (sheet: Sheet, { settings, volume, days, once }: ProgramAdvice): Content => {
  const text = (id: string | undefined): string => {
    const value = id === undefined ? undefined : quantityAt(sheet, id);
    return value === undefined ? '' : formatQuantity(value, sheet.reader).text;
  };
  const row = (name: string, from: { set: string; found?: string; changed: boolean }): Row => ({
    of: from.changed ? 'changed' : undefined,
    cells: [name, text(from.found), text(from.set)],
  });
  return [
    table(
      settingColumns(sheet),
      [
        ...settings.map((setting) => row(sheet.word(stepWords[setting.step]), setting)),
        ...(volume === undefined ? [] : [row(sheet.word('papers.setting.volume'), volume)]),
        ...(days === undefined ? [] : [row(sheet.word('papers.setting.days'), days)]),
      ],
      'settings',
    ),
    sentences(sheet, once, 'once'),
  ];
};

const doseColumns = ['dose', 'salt', 'capacity', 'volume'] as const;

/** Column by column, so that one is compared with the next in the same unit. */
const doseRows = (sheet: Sheet, { doses }: ProgramAdvice): readonly Row[] => {
  const columns = doseColumns.map((column) => {
    const ids = doses.map((one) => one[column]);
    const texts = alike(sheet, ids);
    return ids.map((id, row) =>
      figure(sheet, id, column === 'dose' ? sheet.word('papers.doses') : undefined, undefined, texts[row]),
    );
  });
  return doses.map(({ chosen }, row) => ({
    of: chosen ? 'changed' : undefined,
    cells: columns.map((cells) => cells[row]),
  }));
};

const doseTable = (sheet: Sheet, advice: ProgramAdvice): Content =>
  advice.doses.length === 0
    ? undefined
    : [
        html('h3', {}, sheet.word('papers.doses')),
        table(
          [
            { title: sheet.word('papers.dose') },
            { title: sheet.word('papers.dose.salt'), num: true },
            { title: sheet.word('papers.dose.capacity'), num: true },
            { title: sheet.word('papers.dose.volume'), num: true },
          ],
          doseRows(sheet, advice),
          'doses',
        ),
      ];

type Note = ProgramAdvice['notes'][number];

/** What the found settings do is said before what to set. */
export const isFinding = ({ key }: Note): boolean => key.startsWith('program.found-');

/** What is too weak or too strong, and what to fit, stands beneath the window. */
export const isOfWindow = ({ key }: Note): boolean => key.startsWith('program.window.');

export const isOther = (note: Note): boolean => !isFinding(note) && !isOfWindow(note);

const programmed = (sheet: Sheet, advice: ProgramAdvice): Content => [
  measureFirstLines(sheet, ofSettings(sheet, advice)),
  sentences(sheet, advice.notes.filter(isFinding), 'says'),
  classed(
    'div',
    'two',
    html(
      'div',
      {},
      keyIn(sheet, advice),
      sentences(sheet, advice.once, 'once'),
      sentences(sheet, advice.notes.filter(isOther), 'second'),
    ),
    html('div', {}, yearTable(sheet, advice), doseTable(sheet, advice)),
  ),
];

export const programSection = (sheet: Sheet): Markup =>
  section(
    sheet.word('papers.settings'),
    undefined,
    staged(sheet, sheet.assessment.stages.program, (advice) => programmed(sheet, advice)),
  );
