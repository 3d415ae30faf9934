import type { PartLine, PlanStep, RepairPlan, WorkPlan } from '@brinewright/service';
import { quantity } from '@brinewright/units';
import { formatQuantity } from '@brinewright/words';
import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { bullets, type Row, section, sentences, staged, table } from './parts.ts';
import type { Sheet } from './sheet.ts';

const partRow = (sheet: Sheet, line: PartLine, when: string | undefined): Row => {
  const part = sheet.family?.parts.find(({ id }) => id === line.part);
  const name = part === undefined ? line.part : sheet.text(part.title);
  const price =
    line.price === undefined ? '' : formatQuantity(quantity('money', line.price), sheet.reader).text;
  return { cells: [name, part?.number ?? '', String(line.count), price], under: when };
};

/** What every build takes, then what each takes where they differ. */
const partsTable = (sheet: Sheet, { parts, differs }: RepairPlan): Markup | undefined => {
  const common = parts.map((line) => partRow(sheet, line, undefined));
  const own = differs.flatMap(({ when, parts: lines }) =>
    lines.map((line) => partRow(sheet, line, sheet.word('papers.parts.if', { build: build(sheet, when) }))),
  );
  if (common.length + own.length === 0) return undefined;
  const columns = [
    { title: sheet.word('papers.part') },
    { title: sheet.word('papers.part.number') },
    { title: sheet.word('papers.part.count'), num: true },
    { title: sheet.word('papers.part.price'), num: true },
  ];
  return table(columns, [...common, ...own], 'parts');
};

const build = (sheet: Sheet, when: Readonly<Record<string, string>>): string =>
  Object.entries(when)
    .map(([feature, value]) => {
      const values = sheet.family?.features.find(({ id }) => id === feature)?.values;
      const title = values?.find(({ id }) => id === value)?.title;
      return title === undefined ? value : sheet.text(title);
    })
    .join(', ');

const repaired = (sheet: Sheet, plan: RepairPlan): Content => [
  sentences(sheet, plan.advice),
  partsTable(sheet, plan),
  bullets(plan.substitutes.map(({ says }) => sheet.say(says))),
  bullets([...plan.refused, ...plan.wrong.map(({ says }) => says)].map(sheet.say), 'refused'),
];

/** A square with a tick or an empty one: the word beside it says the same. */
export const tick = (done: boolean): Markup =>
  html('span', { class: done ? 'mark done' : 'mark', 'aria-hidden': 'true' }, done ? '✓' : '');

/** What a step orders to be done, in the words of the definition. */
export const orderOf = (sheet: Sheet, step: Exclude<PlanStep, { kind: 'gate' }>): string => {
  if (step.kind === 'sweep') return sheet.word('papers.sheet.sweep');
  if (step.kind === 'operation') return sheet.text(step.operation.order);
  const back = step.of.back?.order;
  return back === undefined
    ? sheet.word('papers.sheet.back', { order: sheet.text(step.of.order) })
    : sheet.text(back);
};

const asks = (sheet: Sheet, plan: Pick<WorkPlan, 'steps'>): Content => {
  const list = plan.steps.flatMap((step) => (step.kind === 'gate' ? step.asks : []));
  if (list.length === 0) return undefined;
  return [
    html('p', { class: 'label' }, sheet.word('papers.gate')),
    html(
      'ul',
      { class: 'ticks' },
      list.map(({ met, says }) => html('li', {}, tick(met), html('span', {}, sheet.say(says)))),
    ),
  ];
};

const minutes = (sheet: Sheet, value: number): string =>
  formatQuantity(quantity('time', value * 60), sheet.reader).text;

/** Every operation by its order, with a tick where it is done. */
const operations = (sheet: Sheet, plan: WorkPlan): Content => {
  const steps = plan.steps.filter((step) => step.kind !== 'gate');
  if (steps.length === 0) return undefined;
  const summary = sheet.word('papers.plan.summary', {
    count: steps.length,
    done: steps.filter(({ done }) => done).length,
    minutes: minutes(sheet, plan.minutes),
    outage: minutes(sheet, plan.outageMinutes),
  });
  return orders(sheet, summary, steps);
};

const orders = (
  sheet: Sheet,
  summary: string,
  steps: readonly Exclude<PlanStep, { kind: 'gate' }>[],
): Markup => {
  const lines = steps.map((step) => html('li', {}, tick(step.done), html('span', {}, orderOf(sheet, step))));
  return html(
    'details',
    { class: 'operations' },
    html('summary', {}, summary),
    html('ul', { class: 'ticks' }, lines),
  );
};

/** A make nobody has described: the safe way in, should it have to be opened. */
const wayIn = (sheet: Sheet, { ifOpened: way }: WorkPlan): Content => {
  if (way === undefined) return undefined;
  const summary = sheet.word('papers.plan.if-opened', {
    minutes: minutes(sheet, way.minutes),
    outage: minutes(sheet, way.outageMinutes),
  });
  return [
    orders(
      sheet,
      summary,
      way.steps.filter((step) => step.kind !== 'gate'),
    ),
    asks(sheet, way),
  ];
};

const planned = (sheet: Sheet, plan: WorkPlan): Content => [
  operations(sheet, plan),
  sentences(sheet, plan.says),
  plan.stopped === undefined
    ? undefined
    : classed('div', 'missing', sentences(sheet, [plan.stopped.why, plan.stopped.mend])),
  asks(sheet, plan),
  wayIn(sheet, plan),
];

const worked = (sheet: Sheet): boolean => (sheet.visit.done ?? []).length > 0;

export const workSection = (sheet: Sheet): Markup => {
  const { repair, plan } = sheet.assessment.stages;
  return section(
    sheet.word(worked(sheet) ? 'papers.work.done' : 'papers.work.to-do'),
    'work two',
    html(
      'div',
      {},
      staged(sheet, repair, (value) => repaired(sheet, value)),
    ),
    html(
      'div',
      {},
      staged(sheet, plan, (value) => planned(sheet, value)),
    ),
  );
};
