import type { CautionDefinition } from '@brinewright/equipment';
import type { AppliedCaution, Gap, StageName } from '@brinewright/service';
import { stageNames } from '@brinewright/service';
import type { Issue, MessageKey } from '@brinewright/words';
import type { Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { bullets, section } from './parts.ts';
import type { Sheet } from './sheet.ts';
import { tick } from './work-section.ts';

const signals: Readonly<Record<CautionDefinition['signal'], MessageKey>> = {
  danger: 'caution.danger',
  warning: 'caution.warning',
  caution: 'caution.caution',
  notice: 'caution.notice',
};

const order: Readonly<Record<CautionDefinition['signal'], number>> = {
  danger: 0,
  warning: 1,
  caution: 2,
  notice: 3,
};

const fact = (sheet: Sheet, definition: CautionDefinition, acknowledged: boolean): Markup | undefined =>
  definition.fact === undefined
    ? undefined
    : html(
        'p',
        { class: 'fact' },
        tick(acknowledged),
        html(
          'span',
          {},
          sheet.word(acknowledged ? 'papers.fact.seen' : 'papers.fact.open', {
            fact: sheet.text(definition.fact),
          }),
        ),
      );

const cautionBox = (sheet: Sheet, definition: CautionDefinition, applied: AppliedCaution): Markup =>
  classed(
    'div',
    `caution ${definition.signal}`,
    html(
      'p',
      {},
      html('b', { class: 'signal' }, sheet.word(signals[definition.signal])),
      html('b', {}, ` ${sheet.text(definition.title)}`),
    ),
    html('p', {}, sheet.text(definition.does)),
    bullets(definition.act.map(sheet.text)),
    fact(sheet, definition, applied.acknowledged),
  );

/** The cautions that apply, the gravest first. */
export const cautionSection = (sheet: Sheet): Markup | undefined => {
  const known = sheet.assessment.cautions
    .flatMap((applied) => {
      const definition = sheet.family?.cautions.find(({ id }) => id === applied.caution);
      return definition === undefined ? [] : [{ definition, applied }];
    })
    .toSorted((a, b) => order[a.definition.signal] - order[b.definition.signal]);
  if (known.length === 0) return undefined;
  return section(
    sheet.word('papers.cautions'),
    undefined,
    classed(
      'div',
      'cautions',
      known.map(({ definition, applied }) => cautionBox(sheet, definition, applied)),
    ),
    html('p', { class: 'second codes' }, sheet.word('caution.codes')),
  );
};

const stageWords: Readonly<Record<StageName, MessageKey>> = {
  situation: 'papers.stage.situation',
  recognition: 'papers.stage.recognition',
  diagnosis: 'papers.stage.diagnosis',
  repair: 'papers.stage.repair',
  plan: 'papers.stage.plan',
  program: 'papers.stage.program',
  proof: 'papers.stage.proof',
};

const everyGap = (sheet: Sheet): readonly Gap[] => {
  const gaps = stageNames.flatMap((name) => sheet.assessment.stages[name].gaps);
  const said = gaps.map(({ message }) => sheet.say(message));
  return gaps.filter((_gap, index) => said.indexOf(said[index] ?? '') === index);
};

const gapLine = (sheet: Sheet, gap: Gap): string => {
  const settles = gap.settles.map((name) => sheet.word(stageWords[name])).join(', ');
  const says = sheet.say(gap.message);
  return settles === '' ? says : sheet.word('papers.gap', { says, settles });
};

export const gapSection = (sheet: Sheet): Markup | undefined => {
  const gaps = everyGap(sheet);
  return gaps.length === 0
    ? undefined
    : section(
        sheet.word('papers.gaps'),
        undefined,
        bullets(
          gaps.map((gap) => gapLine(sheet, gap)),
          'gaps',
        ),
      );
};

/** What was doubtful in the inputs; what the water section shows already is left to it. */
const doubts = (sheet: Sheet): readonly Issue[] => {
  const issues = stageNames
    .flatMap((name) => sheet.assessment.stages[name].issues)
    .filter(({ severity, at }) => severity !== 'note' && at[0] !== 'water');
  const said = issues.map(({ message }) => sheet.say(message));
  return issues.filter((_issue, index) => said.indexOf(said[index] ?? '') === index);
};

export const doubtSection = (sheet: Sheet): Markup | undefined => {
  const issues = doubts(sheet);
  const lines = issues.map(({ message, mend }) =>
    mend === undefined ? sheet.say(message) : `${sheet.say(message)} ${sheet.say(mend)}`,
  );
  return lines.length === 0 ? undefined : section(sheet.word('papers.doubts'), undefined, bullets(lines));
};

const softenerNotes = [
  'papers.customer.flush',
  'papers.customer.sodium',
  'papers.customer.unsafe',
  'papers.customer.salt',
] as const;
const filterNotes = ['papers.customer.flush', 'papers.customer.unsafe'] as const;

const customerNotes = ({ subject }: Sheet): readonly MessageKey[] => {
  if (subject?.kind !== 'softener') return filterNotes;
  return subject.salt === 'potassium'
    ? softenerNotes.map((key) => (key === 'papers.customer.sodium' ? 'papers.customer.potassium' : key))
    : softenerNotes;
};

export const customerSection = (sheet: Sheet): Markup => {
  const { note, handOver } = sheet.visit;
  const own = [note, handOver?.said].filter((one) => one !== undefined).map(sheet.text);
  return section(
    sheet.word('papers.customer'),
    undefined,
    own.map((words) => html('p', {}, words)),
    bullets(customerNotes(sheet).map((key) => sheet.word(key))),
  );
};
