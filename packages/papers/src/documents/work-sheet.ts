import type { Assessment, LeaveSafe, Visit, WorkPlan } from '@brinewright/service';
import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { graveCautions, lightCautions } from './cautions-section.ts';
import { minutesName } from './naming.ts';
import { customerSection } from './notes-sections.ts';
import { operationLines } from './operation-lines.ts';
import { page } from './page.ts';
import { bullets, section, sentences, staged } from './parts.ts';
import { settingsList } from './program-section.ts';
import { openSheet, type PaperOptions, type Sheet } from './sheet.ts';
import { signatureBlock, titleBlock } from './title-block.ts';
import { partsTable } from './work-section.ts';

const wayIn = (sheet: Sheet, { ifOpened: way }: WorkPlan): Content =>
  way === undefined
    ? undefined
    : [
        html(
          'h3',
          {},
          sheet.word('papers.plan.if-opened', {
            minutes: minutesName(sheet, way.minutes),
            outage: minutesName(sheet, way.outageMinutes),
          }),
        ),
        operationLines(sheet, way.steps),
      ];

const planOnPaper = (sheet: Sheet, plan: WorkPlan): Content => [
  sentences(sheet, plan.says),
  plan.stopped === undefined
    ? undefined
    : classed('div', 'missing', sentences(sheet, [plan.stopped.why, plan.stopped.mend])),
  operationLines(sheet, plan.steps),
  wayIn(sheet, plan),
];

/** Parts to fetch before hands go on; nothing where none are needed. */
const bring = (sheet: Sheet): Content => {
  const { repair } = sheet.assessment.stages;
  const parts = repair.state === 'done' ? partsTable(sheet, repair.value) : undefined;
  return parts === undefined ? undefined : section(sheet.word('papers.sheet.parts'), undefined, parts);
};

const keyedIn = (sheet: Sheet): Content => {
  const { program } = sheet.assessment.stages;
  return program.state === 'done'
    ? section(sheet.word('papers.settings'), undefined, settingsList(sheet, program.value))
    : undefined;
};

/** The plan to work by and tick off, with boxes for what is counted out and in and for what is looked over. */
export const workSheet = (visit: Visit, assessment: Assessment, options: PaperOptions): string => {
  const sheet = openSheet(visit, assessment, options);
  const title = sheet.word('papers.sheet');
  return page(
    { title: `${title}: ${visit.site.name}`, language: options.language, fontUri: options.fontUri },
    titleBlock(sheet, title),
    graveCautions(sheet),
    bring(sheet),
    section(
      sheet.word('papers.sheet.operations'),
      undefined,
      staged(sheet, assessment.stages.plan, (plan) => planOnPaper(sheet, plan)),
    ),
    keyedIn(sheet),
    lightCautions(sheet),
  );
};

const putBack = (sheet: Sheet, { steps, minutes }: LeaveSafe): Content =>
  steps.length === 0
    ? undefined
    : [
        html('h3', {}, sheet.word('papers.card.steps', { minutes: minutesName(sheet, minutes) })),
        operationLines(sheet, steps),
      ];

const cardOf = (sheet: Sheet, { leaveSafe }: WorkPlan): Content => [
  leaveSafe.steps.length === 0
    ? undefined
    : html('p', { class: 'strong' }, sheet.word('papers.card.once-done')),
  sentences(sheet, leaveSafe.card),
  leaveSafe.settings.length === 0
    ? undefined
    : [html('h3', {}, sheet.word('papers.card.settings')), bullets(leaveSafe.settings.map(sheet.say))],
  putBack(sheet, leaveSafe),
];

const cardTitle = (sheet: Sheet): string => {
  const { plan } = sheet.assessment.stages;
  if (plan.state === 'blocked') return sheet.word('papers.card');
  if (plan.value.leaveSafe.steps.length > 0) return sheet.word('papers.card.pending');
  return sheet.word(plan.value.leaveSafe.into === 'service' ? 'papers.card.service' : 'papers.card.bypass');
};

const stateOfUnit = (sheet: Sheet): Markup =>
  section(
    cardTitle(sheet),
    undefined,
    staged(sheet, sheet.assessment.stages.plan, (plan) => cardOf(sheet, plan)),
  );

/** What stays with the customer when the work stops before its end: state, interim settings, what it costs. */
export const leaveSafeCard = (visit: Visit, assessment: Assessment, options: PaperOptions): string => {
  const sheet = openSheet(visit, assessment, options);
  const title = sheet.word('papers.card');
  return page(
    { title: `${title}: ${visit.site.name}`, language: options.language, fontUri: options.fontUri },
    titleBlock(sheet, title),
    stateOfUnit(sheet),
    customerSection(sheet),
    signatureBlock(sheet),
  );
};
