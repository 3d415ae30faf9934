import type { FigureId, Proof, ProofCheck } from '@brinewright/service';
import type { MessageKey } from '@brinewright/words';
import { type Tolerance, toleranceLine } from '../drawings/tolerance-line.ts';
import { type Content, element, type Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { figure } from './derivation.ts';
import { quantityAt } from './figure-values.ts';
import { measureFirstLines, ofCheck } from './measure-first.ts';
import { pictured, type Row, section, sentences, staged, table } from './parts.ts';
import { type Sheet, widths } from './sheet.ts';

type Verdict = ProofCheck['verdict'];

export const verdictWords: Readonly<Record<Verdict, MessageKey>> = {
  pass: 'papers.verdict.pass',
  fail: 'papers.verdict.fail',
  'not-decided': 'papers.verdict.not-decided',
  open: 'papers.verdict.open',
};

const strokes: Readonly<Record<Verdict, string>> = {
  pass: 'M5 10.5l3.6 3.6L15.5 6',
  fail: 'M5.5 5.5l9 9M14.5 5.5l-9 9',
  'not-decided': 'M2.5 17.5V2.5H17.5Z',
  open: '',
};

/** Filled with a tick, crossed, half filled and dashed, empty: told apart without colour. */
const mark = (verdict: Verdict): Markup =>
  element(
    'svg',
    { class: `verdict-mark ${verdict}`, viewBox: '0 0 20 20', width: 20, height: 20, 'aria-hidden': 'true' },
    element('rect', { x: 1.5, y: 1.5, width: 17, height: 17 }),
    strokes[verdict] === '' ? undefined : element('path', { d: strokes[verdict] }),
  );

const verdictOf = (sheet: Sheet, { verdict }: ProofCheck): Content =>
  html(
    'span',
    { class: `verdict ${verdict}` },
    mark(verdict),
    html('b', {}, sheet.word(verdictWords[verdict])),
  );

const limitsOf = (sheet: Sheet, { limits, title, standsOn }: ProofCheck): Content => {
  const { lower, upper } = limits;
  const name = (which: MessageKey): string => `${sheet.say(title)}, ${sheet.word(which)}`;
  if (lower === undefined && upper === undefined)
    return sheet.word(standsOn === 'seen' ? 'papers.must-be.seen' : 'papers.must-be.unknown');
  if (lower !== undefined && upper !== undefined)
    return [
      figure(sheet, lower, name('papers.at-least')),
      ` ${sheet.word('papers.to')} `,
      figure(sheet, upper, name('papers.at-most')),
    ];
  return upper === undefined
    ? [`${sheet.word('papers.at-least')} `, figure(sheet, lower, name('papers.at-least'))]
    : [`${sheet.word('papers.at-most')} `, figure(sheet, upper, name('papers.at-most'))];
};

/** One check as its drawing takes it. */
export const toleranceOf = (sheet: Sheet, check: ProofCheck): Tolerance => {
  const [lower, upper, predicted] = [check.limits.lower, check.limits.upper, check.predicted].map((id) =>
    quantityAt(sheet, id),
  );
  const value = quantityAt(sheet, check.reading);
  const u = check.reading === undefined ? undefined : sheet.assessment.figures[check.reading]?.u;
  return {
    verdict: check.verdict,
    ...(lower === undefined ? {} : { lower }),
    ...(upper === undefined ? {} : { upper }),
    ...(predicted === undefined ? {} : { predicted }),
    ...(value === undefined ? {} : { reading: u === undefined ? { value } : { value, u } }),
  };
};

/** A check that failed or is not decided is drawn, with what would mend or decide it. */
const drawnBelow = (sheet: Sheet, check: ProofCheck): Content => {
  if (check.verdict !== 'fail' && check.verdict !== 'not-decided') return undefined;
  const tolerance = toleranceOf(sheet, check);
  const has =
    tolerance.reading !== undefined && (tolerance.lower !== undefined || tolerance.upper !== undefined);
  return [
    has
      ? pictured(sheet, `check-${check.id}`, (options) => toleranceLine(tolerance, options), widths.half)
      : undefined,
    check.decide === undefined ? undefined : html('p', {}, sheet.say(check.decide)),
  ];
};

/** What is not known stays an empty cell, to be written in. */
const known = (sheet: Sheet, id: FigureId | undefined, name: string): Content =>
  id === undefined ? undefined : figure(sheet, id, name);

const checkRow = (sheet: Sheet, check: ProofCheck): Row => ({
  of: check.verdict,
  cells: [
    sheet.say(check.title),
    limitsOf(sheet, check),
    known(sheet, check.predicted, `${sheet.say(check.title)}, ${sheet.word('papers.predicted')}`),
    known(sheet, check.reading, sheet.say(check.title)),
    verdictOf(sheet, check),
  ],
  under: drawnBelow(sheet, check),
});

const checksOf = (sheet: Sheet, title: MessageKey, checks: readonly ProofCheck[]): Content =>
  checks.length === 0
    ? undefined
    : table(
        [
          { title: sheet.word(title) },
          { title: sheet.word('papers.must-be') },
          { title: sheet.word('papers.predicted'), num: true, labelled: true },
          { title: sheet.word('papers.read'), num: true, labelled: true },
          { title: sheet.word('papers.verdict') },
        ],
        checks.map((check) => checkRow(sheet, check)),
        'proof',
      );

const proved = (sheet: Sheet, { checks, says }: Proof): Content => [
  sentences(sheet, [says]),
  measureFirstLines(
    sheet,
    checks.map((check) => ofCheck(sheet, check)),
  ),
  checksOf(
    sheet,
    'papers.check.now',
    checks.filter(({ when }) => when === 'now'),
  ),
  checksOf(
    sheet,
    'papers.check.tomorrow',
    checks.filter(({ when }) => when === 'tomorrow'),
  ),
];

export const proofSection = (sheet: Sheet): Markup =>
  section(
    sheet.word('papers.proof'),
    undefined,
    classed(
      'div',
      'checks',
      staged(sheet, sheet.assessment.stages.proof, (proof) => proved(sheet, proof)),
    ),
  );
