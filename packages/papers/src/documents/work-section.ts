import type { PartLine, PlanStep, RepairPlan, WorkPlan } from '@brinewright/service';
import { quantity } from '@brinewright/units';
import { formatQuantity } from '@brinewright/words';
import { oddsText } from '../drawings/odds-bars.ts';
import { type Content, type Markup, written } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { minutesName, tellName, valueName } from './naming.ts';
import { gateAsks, orderOf, type WorkStep } from './operation-lines.ts';
import { bullets, type Row, section, sentences, staged, table, tick } from './parts.ts';
import type { Sheet } from './sheet.ts';

/** Above it a part is as good as certain. */
const certain = 0.995;

const partName = (sheet: Sheet, { part: id, p }: PartLine): Content => {
  const part = sheet.family?.parts.find((one) => one.id === id);
  const name = part === undefined ? id : sheet.text(part.title);
  return [
    p > certain ? name : `${name} (${oddsText(p)} %)`,
    part?.number === undefined ? undefined : html('span', { class: 'part-number' }, ` ${part.number}`),
  ];
};

const stock = (sheet: Sheet, { have, count }: PartLine): string => {
  if (have === undefined) return sheet.word('cli.parts.stock-not-written');
  return have >= count
    ? sheet.word('cli.parts.at-hand')
    : sheet.word('cli.parts.order', { count: count - have });
};

const partRow = (sheet: Sheet, line: PartLine, under?: Content): Row => ({
  cells: [
    partName(sheet, line),
    String(line.count),
    line.price === undefined ? '' : formatQuantity(quantity('money', line.price), sheet.reader).text,
    stock(sheet, line),
  ],
  under,
});

type Differing = RepairPlan['differs'][number];

/** Of which build a part is, and the tell that parts it from the others. */
const onlyIf = (sheet: Sheet, { when, tell }: Differing): Content => {
  const build = Object.entries(when)
    .map(([feature, value]) => valueName(sheet, feature, value))
    .join(', ');
  return [
    sheet.word('papers.parts.if', { build }),
    tell === undefined ? undefined : `. ${sheet.word('cli.parts.tell', { tell: tellName(sheet, tell) })}`,
  ];
};

/** What every build takes, then what each takes where they differ. */
export const partsTable = (sheet: Sheet, { parts, differs }: RepairPlan): Markup | undefined => {
  const common = parts.map((line) => partRow(sheet, line));
  const own = differs.flatMap((one) => one.parts.map((line) => partRow(sheet, line, onlyIf(sheet, one))));
  if (common.length + own.length === 0) return undefined;
  const columns = [
    { title: sheet.word('papers.part') },
    { title: sheet.word('papers.part.count'), num: true },
    { title: sheet.word('papers.part.price'), num: true },
    { title: sheet.word('cli.parts.stock'), num: true },
  ];
  return table(columns, [...common, ...own], 'parts');
};

const repaired = (sheet: Sheet, plan: RepairPlan): Content => [
  sentences(sheet, plan.advice),
  partsTable(sheet, plan),
  bullets(plan.substitutes.map(({ says }) => sheet.say(says))),
  bullets([...plan.wrong.map(({ says }) => says), ...plan.refused].map(sheet.say), 'refused'),
];

const asks = (sheet: Sheet, { steps }: Pick<WorkPlan, 'steps'>): Content => {
  const list = steps.flatMap((step) => (step.kind === 'gate' ? step.asks : []));
  if (list.length === 0) return undefined;
  return [html('p', { class: 'label' }, sheet.word('papers.gate')), gateAsks(sheet, { asks: list })];
};

const isWork = (step: PlanStep): step is WorkStep => step.kind !== 'gate';

/** Every operation by its order, with a tick where it is done. */
const operations = (sheet: Sheet, plan: WorkPlan): Content => {
  const steps = plan.steps.filter(isWork);
  if (steps.length === 0) return undefined;
  const summary = sheet.word(
    plan.outageMinutes === 0 ? 'papers.plan.summary-water-on' : 'papers.plan.summary',
    {
      count: steps.length,
      done: steps.filter(({ done }) => done).length,
      minutes: minutesName(sheet, plan.minutes),
      outage: minutesName(sheet, plan.outageMinutes),
    },
  );
  return orders(sheet, summary, steps);
};

const orders = (sheet: Sheet, summary: string, steps: readonly WorkStep[]): Markup => {
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
    minutes: minutesName(sheet, way.minutes),
    outage: minutesName(sheet, way.outageMinutes),
  });
  return orders(sheet, summary, way.steps.filter(isWork));
};

/** What must hold before hands go on; the way in has its own where today's work opens nothing. */
const gate = (sheet: Sheet, plan: WorkPlan): Content => {
  const own = asks(sheet, plan);
  return own === undefined && plan.ifOpened !== undefined ? asks(sheet, plan.ifOpened) : own;
};

const planned = (sheet: Sheet, plan: WorkPlan): Content => [
  operations(sheet, plan),
  plan.stopped === undefined
    ? undefined
    : classed('div', 'missing', sentences(sheet, [plan.stopped.why, plan.stopped.mend])),
  sentences(sheet, plan.says, 'says'),
  wayIn(sheet, plan),
];

const besideGate = (sheet: Sheet, plan: WorkPlan): Content => {
  const sides = [planned(sheet, plan), gate(sheet, plan)].filter((side) => written(side) !== '');
  return sides.length === 0
    ? undefined
    : classed(
        'div',
        'two',
        sides.map((side) => html('div', {}, side)),
      );
};

const worked = (sheet: Sheet): boolean => (sheet.visit.done ?? []).length > 0;

export const workSection = (sheet: Sheet): Markup => {
  const { repair, plan } = sheet.assessment.stages;
  return section(
    sheet.word(worked(sheet) ? 'papers.work.done' : 'papers.work.to-do'),
    'work',
    repair.state === 'done' ? repaired(sheet, repair.value) : staged(sheet, repair, () => undefined),
    staged(sheet, plan, (value) => besideGate(sheet, value)),
  );
};
