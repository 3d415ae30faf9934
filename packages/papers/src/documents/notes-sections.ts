import type { Gap, StageName } from '@brinewright/service';
import { stageNames } from '@brinewright/service';
import type { Issue, MessageKey } from '@brinewright/words';
import type { Markup } from '../markup/element.ts';
import { html } from '../markup/html.ts';
import { bullets, section } from './parts.ts';
import type { Sheet } from './sheet.ts';

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

/** What was doubtful in the inputs, wild readings too; what the water section shows already is left to it. */
const doubts = (sheet: Sheet): readonly Issue[] => {
  const issues = stageNames
    .flatMap((name) => sheet.assessment.stages[name].issues)
    .filter(({ at }) => at[0] !== 'water');
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

export const customerNotes = ({ subject }: Sheet): readonly MessageKey[] => {
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
