import type { Assessment, PlanStep, StackCount, Visit, WorkPlan } from '@brinewright/service';
import { quantity } from '@brinewright/units';
import { formatQuantity, type MessageKey, type Text } from '@brinewright/words';
import { pieceWords } from '../drawings/stack-list.ts';
import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { capital } from '../say.ts';
import { cautionSection, customerSection } from './notes-sections.ts';
import { page } from './page.ts';
import { bullets, section, sentences, staged } from './parts.ts';
import { openSheet, type PaperOptions, type Sheet } from './sheet.ts';
import { signatureBlock, titleBlock } from './title-block.ts';
import { orderOf, tick } from './work-section.ts';

const pieceName = (sheet: Sheet, is: string): string => {
  const known: Readonly<Record<string, MessageKey>> = pieceWords;
  const key = Object.hasOwn(known, is) ? known[is] : undefined;
  return key === undefined ? is : sheet.word(key);
};

/** A box to strike for every piece, kind by kind: counting is done by hand, never by the paper. */
const tally = (sheet: Sheet, count: StackCount): Markup =>
  classed(
    'div',
    'tally',
    Object.entries(count.totals).map(([is, total]) => {
      const counted = count.counted?.[is] ?? 0;
      const boxes = Array.from({ length: total }, (_none, index) =>
        html('i', { class: index < counted ? 'box counted' : 'box' }),
      );
      return html('span', {}, `${capital(pieceName(sheet, is))} ${total}`, boxes);
    }),
  );

type WorkStep = Exclude<PlanStep, { kind: 'gate' }>;

const howOf = (step: WorkStep): readonly Text[] => {
  if (step.kind === 'sweep') return [];
  return step.kind === 'operation' ? step.operation.how : [...(step.of.back?.how ?? []), ...step.lookOvers];
};

const toolName = (sheet: Sheet, id: string): string => {
  const tool = sheet.family?.tools.find((one) => one.id === id);
  return tool === undefined ? id : sheet.text(tool.title);
};

const operationLine = (sheet: Sheet, number: number, step: WorkStep): Markup => {
  const tools = step.kind === 'operation' ? step.tools : [];
  const count = step.kind === 'sweep' ? undefined : step.count;
  const time = step.kind === 'sweep' ? undefined : quantity('time', step.minutes * 60);
  return html(
    'li',
    {},
    html('b', {}, String(number)),
    tick(step.done),
    html(
      'div',
      {},
      html('p', { class: 'order' }, orderOf(sheet, step)),
      tools.length === 0
        ? undefined
        : html('p', { class: 'second' }, tools.map((id) => toolName(sheet, id)).join(', ')),
      bullets(howOf(step).map(sheet.text)),
      count === undefined ? undefined : tally(sheet, count),
    ),
    html('span', { class: 'second' }, time === undefined ? '' : formatQuantity(time, sheet.reader).text),
  );
};

const gateBox = (sheet: Sheet, step: Extract<PlanStep, { kind: 'gate' }>): Markup =>
  html(
    'li',
    { class: 'gate' },
    html('p', { class: 'order' }, sheet.word('papers.gate')),
    html(
      'ul',
      { class: 'ticks' },
      step.asks.map(({ met, says }) => html('li', {}, tick(met), html('span', {}, sheet.say(says)))),
    ),
  );

const operations = (sheet: Sheet, steps: readonly PlanStep[]): Markup => {
  let number = 0;
  const lines = steps.map((step) => {
    if (step.kind === 'gate') return gateBox(sheet, step);
    number += 1;
    return operationLine(sheet, number, step);
  });
  return html('ol', { class: 'steps' }, lines);
};

const planOnPaper = (sheet: Sheet, plan: WorkPlan): Content => [
  sentences(sheet, plan.says),
  plan.stopped === undefined
    ? undefined
    : classed('div', 'missing', sentences(sheet, [plan.stopped.why, plan.stopped.mend])),
  operations(sheet, plan.steps),
  plan.ifOpened === undefined
    ? undefined
    : [
        html(
          'h3',
          {},
          sheet.word('papers.plan.if-opened', {
            minutes: formatQuantity(quantity('time', plan.ifOpened.minutes * 60), sheet.reader).text,
            outage: formatQuantity(quantity('time', plan.ifOpened.outageMinutes * 60), sheet.reader).text,
          }),
        ),
        operations(sheet, plan.ifOpened.steps),
      ],
];

/** The plan to work by and tick off, with boxes for what is counted out and in. */
export const workSheet = (visit: Visit, assessment: Assessment, options: PaperOptions): string => {
  const sheet = openSheet(visit, assessment, options);
  const title = sheet.word('papers.sheet');
  return page(
    { title: `${title}: ${visit.site.name}`, language: options.language, fontUri: options.fontUri },
    titleBlock(sheet, title),
    cautionSection(sheet),
    section(
      sheet.word('papers.sheet.operations'),
      undefined,
      staged(sheet, assessment.stages.plan, (plan) => planOnPaper(sheet, plan)),
    ),
  );
};

const cardOf = (sheet: Sheet, { leaveSafe }: WorkPlan): Content => [
  sentences(sheet, leaveSafe.card),
  leaveSafe.settings.length === 0
    ? undefined
    : [html('h3', {}, sheet.word('papers.card.settings')), bullets(leaveSafe.settings.map(sheet.say))],
  leaveSafe.steps.length === 0
    ? undefined
    : [html('h3', {}, sheet.word('papers.card.steps')), operations(sheet, leaveSafe.steps)],
];

const cardTitle = (sheet: Sheet): string => {
  const { plan } = sheet.assessment.stages;
  if (plan.state === 'blocked') return sheet.word('papers.card');
  return sheet.word(plan.value.leaveSafe.into === 'service' ? 'papers.card.service' : 'papers.card.bypass');
};

/** What stays with the customer when the work stops before its end: state, interim settings, what it costs. */
export const leaveSafeCard = (visit: Visit, assessment: Assessment, options: PaperOptions): string => {
  const sheet = openSheet(visit, assessment, options);
  const title = sheet.word('papers.card');
  return page(
    { title: `${title}: ${visit.site.name}`, language: options.language, fontUri: options.fontUri },
    titleBlock(sheet, title),
    section(
      cardTitle(sheet),
      undefined,
      staged(sheet, assessment.stages.plan, (plan) => cardOf(sheet, plan)),
    ),
    customerSection(sheet),
    signatureBlock(sheet),
  );
};
