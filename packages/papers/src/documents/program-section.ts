import type { TimedStep } from '@brinewright/equipment';
import type { Neighbour, ProgramAdvice, TimedSetting, YearlyDifference } from '@brinewright/service';
import { formatQuantity, type MessageKey } from '@brinewright/words';
import { stepWords } from '../drawings/timeline.ts';
import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { figure } from './derivation.ts';
import { quantityAt } from './figure-values.ts';
import { type Row, section, sentences, staged, table } from './parts.ts';
import type { Sheet } from './sheet.ts';

const does: Readonly<Record<Neighbour['does'][number]['what'], MessageKey>> = {
  salt: 'papers.neighbour.salt',
  rinse: 'papers.neighbour.rinse',
  capacity: 'papers.neighbour.capacity',
  lift: 'papers.neighbour.lift',
  water: 'papers.neighbour.water',
};

const neighbour = (sheet: Sheet, side: Neighbour | undefined): Content => {
  if (side === undefined) return undefined;
  const time = formatQuantity({ kind: 'time', si: side.time }, sheet.reader).text;
  const effects = side.does.flatMap(({ what, figure: id }) => {
    const value = quantityAt(sheet, id);
    return value === undefined ? [] : [sheet.word(does[what], { value })];
  });
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
          cells: [
            sheet.word('papers.setting.days'),
            '',
            figure(sheet, days.set, sheet.word('papers.setting.days'), 'set-value'),
          ],
        },
      ]),
];

const keyIn = (sheet: Sheet, advice: ProgramAdvice): Markup =>
  table(
    [
      { title: sheet.word('papers.key-in') },
      { title: sheet.word('papers.as-found'), num: true },
      { title: sheet.word('papers.as-set'), num: true },
    ],
    [...advice.settings.map((setting) => settingRow(sheet, setting)), ...betweenRows(sheet, advice)],
    'settings',
  );

const yearWords: Readonly<Record<YearlyDifference['what'], MessageKey>> = {
  salt: 'papers.year.salt',
  water: 'papers.year.water',
  money: 'papers.year.money',
};

const yearTable = (sheet: Sheet, { year }: ProgramAdvice): Content =>
  year.length === 0
    ? undefined
    : [
        html('h3', {}, sheet.word('papers.year')),
        table(
          [
            { title: '' },
            { title: sheet.word('papers.as-found'), num: true },
            { title: sheet.word('papers.as-set'), num: true },
          ],
          year.map(({ what, found, set, difference }) => ({
            of: what === 'money' ? 'sum' : undefined,
            cells: [
              sheet.word(yearWords[what]),
              figure(sheet, found),
              figure(sheet, set, undefined, 'set-value'),
            ],
            under: html(
              'span',
              { class: 'side' },
              `${sheet.word('papers.difference')} `,
              figure(sheet, difference),
            ),
          })),
        ),
      ];

const doseTable = (sheet: Sheet, { doses }: ProgramAdvice): Content =>
  doses.length === 0
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
          doses.map(({ dose, salt, capacity, volume, chosen }) => ({
            of: chosen ? 'changed' : undefined,
            cells: [
              figure(sheet, dose, sheet.word('papers.doses')),
              figure(sheet, salt),
              figure(sheet, capacity),
              figure(sheet, volume),
            ],
          })),
        ),
      ];

const programmed = (sheet: Sheet, advice: ProgramAdvice): Content =>
  classed(
    'div',
    'two',
    html(
      'div',
      {},
      keyIn(sheet, advice),
      sentences(sheet, advice.once, 'once'),
      sentences(sheet, advice.notes, 'second'),
    ),
    html('div', {}, yearTable(sheet, advice), doseTable(sheet, advice)),
  );

export const programSection = (sheet: Sheet): Markup =>
  section(
    sheet.word('papers.settings'),
    undefined,
    staged(sheet, sheet.assessment.stages.program, (advice) => programmed(sheet, advice)),
  );
