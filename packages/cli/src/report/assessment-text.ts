import type { StageName } from '@brinewright/service';
import type { MessageKey } from '@brinewright/words';
import { heading, stacked } from '../text/lines.ts';
import type { View } from '../view.ts';
import { assumed } from './assumed.ts';
import { cautions } from './cautions.ts';
import { issueLines } from './common.ts';
import { diagnosis } from './diagnosis.ts';
import { issuesBefore } from './issues-before.ts';
import { known } from './known.ts';
import { measureFirstInProgram } from './measure-first.ts';
import { plan } from './plan.ts';
import { program } from './program.ts';
import { proof } from './proof.ts';
import { recognition } from './recognition.ts';
import { repair } from './repair.ts';
import { titleBlock } from './title.ts';

export type ShownStage = Exclude<StageName, 'situation'>;

const stages: Readonly<
  Record<ShownStage, { readonly title: MessageKey; readonly lines: (view: View) => string[] }>
> = {
  recognition: { title: 'cli.stage.recognition', lines: recognition },
  diagnosis: { title: 'cli.stage.diagnosis', lines: diagnosis },
  repair: { title: 'cli.stage.repair', lines: repair },
  plan: { title: 'cli.stage.plan', lines: plan },
  program: { title: 'cli.stage.program', lines: program },
  proof: { title: 'cli.stage.proof', lines: (view) => proof(view) },
};

/** The whole assessment, top-down in the order of the visit; cautions stand before the work. */
export const assessmentText = (view: View): string[] =>
  isBlocked(view) ? whyBlocked(view) : wholeText(view);

const isBlocked = ({ assessment }: View): boolean => assessment.stages.situation.state === 'blocked';

/** Nobody knows which unit is meant or what it is: that alone is said. */
const whyBlocked = (view: View): string[] =>
  stacked(titleBlock(view), section(view, 'cli.known', known(view)));

const wholeText = (view: View): string[] =>
  stacked(
    titleBlock(view),
    section(view, 'cli.known', known(view)),
    stage(view, 'recognition'),
    stage(view, 'diagnosis'),
    stage(view, 'repair'),
    section(view, 'cli.cautions', cautions(view)),
    stage(view, 'plan'),
    stage(view, 'program'),
    section(view, stages.proof.title, proof(view, measureFirstInProgram(view))),
    section(view, 'cli.assumed', assumed(view)),
  );

/** One stage of the same assessment; the work never without its cautions. */
export const stageText = (view: View, name: ShownStage): string[] =>
  isBlocked(view)
    ? whyBlocked(view)
    : stacked(
        titleBlock(view),
        section(view, 'cli.before', issueLines(view, issuesBefore(view, name))),
        name === 'plan' ? section(view, 'cli.cautions', cautions(view)) : [],
        stage(view, name),
      );

const stage = (view: View, name: ShownStage): string[] =>
  section(view, stages[name].title, stages[name].lines(view));

const section = (view: View, title: MessageKey, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [...heading(view.word(title)), ...lines];
