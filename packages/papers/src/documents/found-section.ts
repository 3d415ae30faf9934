import { boreOf, type FittedBore, type Stop, stops } from '@brinewright/equipment';
import { type Diagnosis, type FaultOdds, noneOfThese } from '@brinewright/service';
import type { MessageKey } from '@brinewright/words';
import { cutaway } from '../drawings/cutaway/cutaway.ts';
import { boreDrawing } from '../drawings/cutaway/from-definition.ts';
import { leakPast } from '../drawings/cutaway/waters.ts';
import { type Odds, oddsBars, oddsText, shownPercent } from '../drawings/odds-bars.ts';
import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { nextTests } from './in-hand.ts';
import { bullets, pictured, section, sentences, staged } from './parts.ts';
import { type Sheet, widths } from './sheet.ts';

const standsOn: Readonly<Record<Diagnosis['standsOn'], MessageKey>> = {
  measured: 'papers.stands-on.measured',
  'stated-odds': 'papers.stands-on.stated-odds',
  told: 'papers.stands-on.told',
};

const oddsWords: Readonly<Record<FaultOdds['word'], MessageKey>> = {
  likely: 'papers.odds.likely',
  possible: 'papers.odds.possible',
  unlikely: 'papers.odds.unlikely',
};

const faultName = (sheet: Sheet, { fault, definition }: FaultOdds): string => {
  if (fault === noneOfThese) return sheet.word('papers.none-of-these');
  return definition === undefined ? fault : sheet.text(definition.title);
};

const complaint = (sheet: Sheet): Markup | undefined => {
  const { complaint: said } = sheet.visit;
  return said === undefined
    ? undefined
    : html('p', {}, sheet.word('papers.complaint', { words: sheet.text(said.words) }));
};

/** Only what is worth a line: the leaders, and always none of these. */
const shownOdds = (odds: readonly FaultOdds[]): readonly FaultOdds[] => {
  const leaders = odds.filter(({ fault, p }) => fault !== noneOfThese && shownPercent(p) > 0).slice(0, 4);
  return [...leaders, ...odds.filter(({ fault }) => fault === noneOfThese)];
};

const asOdds = (sheet: Sheet, one: FaultOdds): Odds => ({
  name: faultName(sheet, one),
  p: one.p,
  before: one.before,
  none: one.fault === noneOfThese,
});

const named = (sheet: Sheet, leader: FaultOdds): Content => [
  html(
    'p',
    { class: 'lead' },
    html('b', {}, faultName(sheet, leader)),
    sheet.word('papers.odds.word', {
      word: sheet.word(oddsWords[leader.word]),
      percent: oddsText(leader.p),
    }),
  ),
  leader.definition === undefined ? undefined : html('p', {}, sheet.text(leader.definition.explains)),
];

/** A fault is named once it stands out; before that only what can be said. */
const leading = (sheet: Sheet, leader: FaultOdds, diagnosis: Diagnosis): Content => [
  leader.word === 'unlikely' ? undefined : named(sheet, leader),
  html('p', { class: 'second' }, sheet.word(standsOn[diagnosis.standsOn])),
  sentences(sheet, [diagnosis.says]),
];

const pleading = (sheet: Sheet, { speaksFor, speaksAgainst }: FaultOdds): Content => [
  speaksFor.length === 0
    ? undefined
    : [html('p', { class: 'label' }, sheet.word('papers.speaks-for')), bullets(speaksFor.map(sheet.say))],
  speaksAgainst.length === 0
    ? undefined
    : [
        html('p', { class: 'label' }, sheet.word('papers.speaks-against')),
        bullets(speaksAgainst.map(sheet.say)),
      ],
];

/** What is asked before anything is tested. */
const askFirst = (sheet: Sheet, { askFirst: questions }: Diagnosis): Content =>
  questions.length === 0
    ? undefined
    : [
        html('p', { class: 'label' }, sheet.word('papers.ask-first')),
        bullets(questions.map(sheet.say), 'to-ask'),
      ];

/** Once it is clear enough to act on, no test is asked for. */
const asked = (sheet: Sheet, { act, next, groups }: Diagnosis): Content =>
  act === undefined ? nextTests(sheet, next, groups) : undefined;

const diagnosed = (sheet: Sheet, diagnosis: Diagnosis): Content => {
  const [leader] = diagnosis.odds;
  if (leader === undefined) return sentences(sheet, [diagnosis.says]);
  const bars = shownOdds(diagnosis.odds).map((one) => asOdds(sheet, one));
  return [
    classed(
      'div',
      'two',
      html('div', {}, leading(sheet, leader, diagnosis), askFirst(sheet, diagnosis)),
      html(
        'div',
        {},
        pictured(sheet, 'odds', (options) => oddsBars(bars, options), widths.half),
        pleading(sheet, leader),
      ),
    ),
    asked(sheet, diagnosis),
  ];
};

export const foundSection = (sheet: Sheet): Markup =>
  section(
    sheet.word('papers.found'),
    'found',
    complaint(sheet),
    staged(sheet, sheet.assessment.stages.diagnosis, (diagnosis) => diagnosed(sheet, diagnosis)),
  );

/** The likeliest build that is left; its bore is the one drawn. */
export const likeliest = ({ assessment }: Pick<Sheet, 'assessment'>) => {
  const { recognition } = assessment.stages;
  return recognition.state === 'done' ? recognition.value.top[0]?.variant : undefined;
};

/** Drawn torn only where the leak is likely: a drawing is believed. */
export const tornSeal = ({ assessment }: Pick<Sheet, 'assessment'>): number | undefined => {
  const { diagnosis } = assessment.stages;
  const leader = diagnosis.state === 'done' ? diagnosis.value.odds[0] : undefined;
  return leader?.word === 'likely' ? leader.seals[0] : undefined;
};

/** True where the fault can be seen in the cut: then it stands beside what was found. */
export const cutShowsFault = (sheet: Sheet): boolean => tornSeal(sheet) !== undefined;

/** The first stop at which a torn seal lets water past; service where none does. */
export const stopThatShows = (bore: FittedBore, torn: number): Stop =>
  stops.find((stop) => leakPast(boreDrawing(bore, stop), torn, 'draw') !== undefined) ?? 'service';

/** The valve cut open where its fault shows; in service where it has none. */
export const cutSection = (sheet: Sheet): Markup | undefined => {
  const variant = likeliest(sheet);
  const bore =
    variant === undefined || sheet.family === undefined ? undefined : boreOf(sheet.family, variant);
  if (bore === undefined) return undefined;
  const torn = tornSeal(sheet);
  const drawing = boreDrawing(bore, torn === undefined ? 'service' : stopThatShows(bore, torn));
  return section(
    sheet.word(torn === undefined ? 'papers.cut' : 'papers.cut.torn', { seal: torn ?? 0 }),
    'cut-open',
    pictured(sheet, 'cut', (options) =>
      cutaway(drawing, torn === undefined ? options : { ...options, torn }),
    ),
  );
};
