import type { WaterAnalysis } from '@brinewright/service';
import type { Quantity } from '@brinewright/units';
import { formatQuantity, type MessageKey } from '@brinewright/words';
import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { figure } from './derivation.ts';
import { inHalves, missing, type Row, section } from './parts.ts';
import type { Sheet } from './sheet.ts';
import { dated } from './title-block.ts';

type Field = Exclude<keyof WaterAnalysis, 'of' | 'source' | 'date'>;

/** In the order of a laboratory sheet. */
export const waterFields = [
  ['hardness', 'papers.ion.hardness'],
  ['calcium', 'papers.ion.calcium'],
  ['magnesium', 'papers.ion.magnesium'],
  ['sodium', 'papers.ion.sodium'],
  ['potassium', 'papers.ion.potassium'],
  ['iron', 'papers.ion.iron'],
  ['manganese', 'papers.ion.manganese'],
  ['barium', 'papers.ion.barium'],
  ['strontium', 'papers.ion.strontium'],
  ['ammoniaNitrogen', 'papers.ion.ammonia'],
  ['alkalinity', 'papers.ion.alkalinity'],
  ['sulfate', 'papers.ion.sulfate'],
  ['chloride', 'papers.ion.chloride'],
  ['nitrateNitrogen', 'papers.ion.nitrate'],
  ['fluoride', 'papers.ion.fluoride'],
  ['ph', 'papers.ion.ph'],
  ['conductivity', 'papers.ion.conductivity'],
  ['solids', 'papers.ion.solids'],
  ['chlorine', 'papers.ion.chlorine'],
  ['temperature', 'papers.ion.temperature'],
  ['coldest', 'papers.ion.coldest'],
  ['warmest', 'papers.ion.warmest'],
] as const satisfies readonly (readonly [Field, MessageKey])[];

export const waterWords: Readonly<Record<WaterAnalysis['of'], MessageKey>> = {
  raw: 'papers.analysis.raw',
  treated: 'papers.analysis.treated',
  blended: 'papers.analysis.blended',
};

export const howWords: Readonly<Record<'measured' | 'read' | 'told' | 'assumed', MessageKey>> = {
  measured: 'papers.known.measured',
  read: 'papers.known.read',
  told: 'papers.known.told',
  assumed: 'papers.known.assumed',
};

const shown = (sheet: Sheet, value: Quantity): string => formatQuantity(value, sheet.reader).text;

const rowsOf = (sheet: Sheet, analysis: WaterAnalysis): readonly Row[] =>
  waterFields.flatMap(([field, name]) => {
    const known = analysis[field];
    if (known === undefined) return [];
    return [{ cells: [sheet.word(name), shown(sheet, known.value), sheet.word(howWords[known.how])] }];
  });

const heading = (sheet: Sheet, { of, source, date }: WaterAnalysis): string =>
  [
    sheet.word(waterWords[of]),
    source === undefined ? undefined : sheet.text(source),
    date === undefined ? undefined : dated(sheet, date),
  ]
    .filter((one) => one !== undefined)
    .join(', ');

const analysed = (sheet: Sheet, analysis: WaterAnalysis): Content => [
  html('p', { class: 'second' }, heading(sheet, analysis)),
  inHalves(
    [{ title: '' }, { title: sheet.word('papers.value'), num: true }, { title: sheet.word('papers.known') }],
    rowsOf(sheet, analysis),
  ),
];

const pair = (sheet: Sheet, id: string, name: MessageKey): Markup | undefined =>
  Object.hasOwn(sheet.assessment.figures, id)
    ? classed('div', 'pair', html('span', {}, sheet.word(name)), figure(sheet, id, sheet.word(name)))
    : undefined;

/** Hardness as it follows from the analysis, and what the bed really sees with iron and manganese counted in. */
const hardness = (sheet: Sheet): Content => [
  pair(sheet, 'situation.hardness', 'papers.ion.hardness'),
  pair(sheet, 'program.hardness', 'papers.hardness.set'),
];

const verdicts = (sheet: Sheet): readonly Markup[] =>
  sheet.assessment.stages.situation.issues
    .filter(({ at }) => at[0] === 'water')
    .map((issue) =>
      html(
        'p',
        { class: issue.severity === 'note' ? undefined : 'doubt' },
        sheet.say(issue.message),
        issue.mend === undefined ? '' : ` ${sheet.say(issue.mend)}`,
      ),
    );

export const waterSection = (sheet: Sheet): Markup => {
  const analyses = sheet.visit.water ?? [];
  const gaps = sheet.assessment.stages.situation.gaps.filter(({ needs }) => needs[0] === 'water');
  return section(
    sheet.word('papers.water'),
    undefined,
    analyses.map((analysis) => analysed(sheet, analysis)),
    analyses.length === 0 ? missing(sheet, gaps) : undefined,
    hardness(sheet),
    verdicts(sheet),
  );
};
