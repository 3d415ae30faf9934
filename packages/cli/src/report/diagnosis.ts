import {
  type ActionGroup,
  type Diagnosis,
  type FaultOdds,
  type NextTest,
  noneOfThese,
} from '@brinewright/service';
import { capital, hanging, indented, paragraph, stacked } from '../text/lines.ts';
import { type Row, table } from '../text/table.ts';
import { columns } from '../text/wrap.ts';
import { minutes, odds, percent, type View } from '../view.ts';
import { sentences, staged } from './common.ts';
import { opens } from './recognition.ts';

const mostShown = 5;
const leastShown = 0.05;
/** Below it a fault is named without its clues. */
const leastArgued = 0.1;

export const diagnosis = (view: View): string[] =>
  staged(view, view.assessment.stages.diagnosis, (value) =>
    stacked(
      sentences(view, value.askFirst),
      paragraph(`${view.say(value.says)} ${view.word(`papers.stands-on.${value.standsOn}`)}`),
      list(view, value),
      ...(value.act === undefined ? nextTests(view, value) : []),
    ),
  );

/** The leading faults with what speaks for and against them; 'none of these' always closes the list. */
const list = (view: View, { odds: all }: Diagnosis): string[] => {
  const leading = all.filter(({ fault, p }) => p >= leastShown && fault !== noneOfThese).slice(0, mostShown);
  const none = all.find(({ fault }) => fault === noneOfThese);
  const rows = [...leading, ...(none === undefined ? [] : [none])].map((one): Row => faultRow(view, one));
  return table([{ title: '', align: 'right' }, { title: '', gives: true }, { title: '' }], rows);
};

const faultRow = (view: View, one: FaultOdds): Row => {
  const clues = (key: 'cli.for' | 'cli.against', from: FaultOdds['speaksFor']): string[] =>
    from.length === 0 ? [] : [`${view.word(key)} ${from.map((clue) => view.say(clue)).join('; ')}`];
  return {
    cells: [odds(view, one.p), faultTitle(view, one), view.word(`papers.odds.${one.word}`)],
    under:
      one.p < leastArgued
        ? []
        : [...clues('cli.for', one.speaksFor), ...clues('cli.against', one.speaksAgainst)],
  };
};

const faultTitle = (view: View, { fault, definition, seals }: FaultOdds): string => {
  if (fault === noneOfThese) return view.word('diagnosis.none-of-these');
  const title = definition === undefined ? fault : view.text(definition.title);
  return seals.length === 0
    ? title
    : `${title} (${view.word('cli.diagnosis.seals', { seals: seals.join(', ') })})`;
};

/** Once it is clear enough to act on, no test is asked for. */
const nextTests = (view: View, { next, groups }: Diagnosis): string[][] => [
  next.slice(0, 1).flatMap((first) => inHand(view, first, groups)),
  others(view, next.slice(1, 4)),
];

/** The test with most information per minute, and what each result leads to. */
const inHand = (
  view: View,
  { test, opens: first, outcomes, meanwhile }: NextTest,
  groups: readonly ActionGroup[],
): string[] => [
  ...hanging(`${view.word('cli.next')} `, `${view.text(test.ask)} (${cost(view, test)})`),
  ...opens(view, first),
  ...test.how.flatMap((step) => hanging('- ', view.text(step), 2)),
  ...indented(
    table(
      [{ title: '' }, { title: '', align: 'right' }, { title: '' }],
      outcomes.map(({ outcome, p, leads }) => ({
        cells: [outcomeTitle(view, test, outcome), percent(view, p), leadsTo(view, groups, leads)],
      })),
      columns - 2,
    ),
  ),
  ...(meanwhile.length === 0
    ? []
    : hanging(
        '',
        view.word('cli.meanwhile', { tests: meanwhile.map((id) => testTitle(view, id)).join('; ') }),
        2,
      )),
];

const others = (view: View, next: readonly NextTest[]): string[] =>
  next.length === 0
    ? []
    : [
        ...paragraph(view.word('cli.then')),
        ...next.flatMap(({ test }) => hanging('- ', `${view.text(test.ask)} (${cost(view, test)})`)),
      ];

const cost = (view: View, { minutes: { hands, waiting } }: NextTest['test']): string =>
  waiting === 0
    ? minutes(view, hands)
    : view.word('cli.minutes-and-waiting', { hands: minutes(view, hands), waiting: minutes(view, waiting) });

const outcomeTitle = (view: View, test: NextTest['test'], outcome: string): string => {
  const found = test.outcomes.find(({ id }) => id === outcome);
  return found === undefined ? outcome : capital(view.text(found.title));
};

/** The likeliest fault of the repair that a result points to. */
const leadsTo = (view: View, groups: readonly ActionGroup[], key: string): string => {
  const fault = groups.find((group) => group.key === key)?.faults[0] ?? noneOfThese;
  if (fault === noneOfThese) return view.word('diagnosis.none-of-these');
  const found = view.family?.faults.find(({ id }) => id === fault);
  return found === undefined ? fault : view.text(found.title);
};

const testTitle = (view: View, id: string): string => {
  const found = view.family?.tests.find((test) => test.id === id);
  return found === undefined ? id : view.text(found.ask);
};
