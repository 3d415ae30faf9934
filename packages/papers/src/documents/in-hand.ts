import type { ActionGroup, NextTell, NextTest } from '@brinewright/service';
import { noneOfThese } from '@brinewright/service';
import { oddsText } from '../drawings/odds-bars.ts';
import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { capital } from '../say.ts';
import { effortName, faultName, minutesName, operationName, valueName } from './naming.ts';
import { bullets, type Row, table } from './parts.ts';
import type { Sheet } from './sheet.ts';

/** The best next thing to look at: what, how, and what each result leads to. */
type InHand = {
  readonly label: string;
  readonly ask: string;
  readonly takes: string;
  readonly how: readonly string[];
  readonly opens: readonly string[];
  readonly leads: string;
  readonly rows: readonly Row[];
  readonly after?: Content;
};

const inHand = (sheet: Sheet, { label, ask, takes, how, opens, leads, rows, after }: InHand): Markup =>
  classed(
    'div',
    'in-hand',
    html('p', { class: 'in-hand-label' }, label),
    html('p', { class: 'ask' }, ask, html('span', { class: 'second' }, ` ${takes}`)),
    opens.length === 0
      ? undefined
      : html(
          'p',
          {},
          sheet.word('cli.first', { what: opens.map((id) => operationName(sheet, id)).join('; ') }),
        ),
    bullets(how),
    table(
      [
        { title: sheet.word('papers.result') },
        { title: sheet.word('papers.odds'), num: true },
        { title: leads },
      ],
      rows,
      'leads',
    ),
    after,
  );

const share = (p: number): string => `${oddsText(p)} %`;

const answerName = (sheet: Sheet, tell: NextTell['tell'], answer: string): string => {
  if (tell.kind === 'measured') return valueName(sheet, tell.feature, answer);
  const found = tell.answers.find(({ id }) => id === answer);
  return found === undefined ? answer : sheet.text(found.title);
};

/** The tell worth most per minute, with what each answer leaves. */
export const nextTell = (sheet: Sheet, { tell, minutes, leaves }: NextTell): Markup =>
  inHand(sheet, {
    label: sheet.word('papers.next.tell'),
    ask: sheet.text(tell.ask),
    takes: minutesName(sheet, minutes),
    how: tell.how === undefined ? [] : [sheet.text(tell.how)],
    opens: tell.after,
    leads: sheet.word('papers.leaves'),
    rows: leaves.map(({ answer, p, groups }) => ({
      cells: [
        capital(answerName(sheet, tell, answer)),
        share(p),
        sheet.word('papers.leaves.choices', { count: groups }),
      ],
    })),
  });

const outcomeName = (sheet: Sheet, { outcomes }: NextTest['test'], outcome: string): string => {
  const found = outcomes.find(({ id }) => id === outcome);
  return found === undefined ? outcome : capital(sheet.text(found.title));
};

/** The likeliest fault of the repair that a result points to. */
const leadsTo = (sheet: Sheet, groups: readonly ActionGroup[], key: string): string => {
  const fault = groups.find((group) => group.key === key)?.faults[0] ?? noneOfThese;
  return fault === noneOfThese ? sheet.word('papers.none-of-these') : faultName(sheet, fault);
};

/** Beyond these few a list helps nobody. */
const othersShown = 3;

/** What can be done while the first one runs by itself: the best of them. */
const meantime = (sheet: Sheet, { meanwhile }: NextTest, others: readonly NextTest[]): Content => {
  const best = others.filter(({ test }) => meanwhile.includes(test.id)).slice(0, othersShown);
  if (best.length === 0) return undefined;
  const tests = best.map(({ test }) => sheet.text(test.ask)).join('; ');
  return html('p', { class: 'second' }, sheet.word('cli.meanwhile', { tests }));
};

/** The test with most information per minute, and what each result leads to. */
const testInHand = (
  sheet: Sheet,
  [next, ...others]: readonly [NextTest, ...NextTest[]],
  groups: readonly ActionGroup[],
): Markup =>
  inHand(sheet, {
    label: sheet.word('papers.next.test'),
    ask: sheet.text(next.test.ask),
    takes: effortName(sheet, next.test.minutes),
    how: next.test.how.map(sheet.text),
    opens: next.opens,
    leads: sheet.word('papers.leads-to'),
    rows: next.outcomes.map(({ outcome, p, leads }) => ({
      cells: [outcomeName(sheet, next.test, outcome), share(p), leadsTo(sheet, groups, leads)],
    })),
    after: meantime(sheet, next, others),
  });

const afterThat = (sheet: Sheet, others: readonly NextTest[]): Content => {
  const lines = others
    .slice(0, othersShown)
    .map(({ test }) => [
      sheet.text(test.ask),
      html('span', { class: 'second' }, ` ${effortName(sheet, test.minutes)}`),
    ]);
  return lines.length === 0
    ? undefined
    : [html('p', { class: 'label' }, sheet.word('papers.next.then')), bullets(lines)];
};

/** The test in hand, and beside it those that come after. */
export const nextTests = (
  sheet: Sheet,
  [first, ...others]: readonly NextTest[],
  groups: readonly ActionGroup[],
): Content =>
  first === undefined
    ? undefined
    : classed(
        'div',
        'two hand',
        html('div', {}, testInHand(sheet, [first, ...others], groups)),
        html('div', {}, afterThat(sheet, others)),
      );
