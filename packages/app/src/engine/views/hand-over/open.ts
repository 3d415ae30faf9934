import type { Sheet } from '@brinewright/papers';
import { stageNames } from '@brinewright/service';
import type { StageId } from '../../stage-props.ts';

/** Something left undone, and the stage where it is done. */
export type OpenLine = { readonly says: string; readonly stage: StageId };

/** What is open: work begun and not ended, a program not keyed in, checks not read, failed or not decided. */
export const openLines = (sheet: Sheet): readonly OpenLine[] => [
  ...openWork(sheet),
  ...openProgram(sheet),
  ...openProof(sheet),
];

const openWork = (sheet: Sheet): readonly OpenLine[] => {
  const { plan } = sheet.assessment.stages;
  if (plan.state !== 'done' || (sheet.visit.done ?? []).length === 0) return [];
  const { stopped, steps } = plan.value;
  const left = steps.filter((step) => step.kind !== 'gate' && !step.done).length;
  return [
    ...(stopped === undefined ? [] : [{ says: sheet.say(stopped.why), stage: 'work' as const }]),
    ...(left === 0
      ? []
      : [{ says: sheet.word('app.hand-over.open.work', { count: left }), stage: 'work' as const }]),
  ];
};

const openProgram = (sheet: Sheet): readonly OpenLine[] => {
  const { program } = sheet.assessment.stages;
  if (program.state === 'blocked')
    return [{ says: sheet.word('app.hand-over.open.no-program'), stage: 'program' }];
  const isKeyedIn = Object.keys(sheet.visit.settings?.set ?? {}).length > 0;
  const changed = program.value.settings.filter((one) => one.changed).length;
  return isKeyedIn || (changed === 0 && sheet.visit.settings?.found !== undefined)
    ? []
    : [{ says: sheet.word('app.hand-over.open.program'), stage: 'program' }];
};

const openProof = (sheet: Sheet): readonly OpenLine[] => {
  const { proof } = sheet.assessment.stages;
  if (proof.state === 'blocked') return [{ says: sheet.word('app.hand-over.open.no-proof'), stage: 'prove' }];
  const count = (verdict: string, when?: string): number =>
    proof.value.checks.filter((one) => one.verdict === verdict && (when ?? one.when) === one.when).length;
  const lines = [
    ['app.hand-over.open.failed', count('fail')],
    ['app.hand-over.open.not-decided', count('not-decided')],
    ['app.hand-over.open.now', count('open', 'now')],
    ['app.hand-over.open.tomorrow', count('open', 'tomorrow')],
  ] as const;
  return lines.flatMap(([key, number]) =>
    number === 0 ? [] : [{ says: sheet.word(key, { count: number }), stage: 'prove' as const }],
  );
};

/** What no stage could say for want of something, each once. */
export const gapsOf = (sheet: Sheet): readonly string[] => [
  ...new Set(
    stageNames.flatMap((name) => sheet.assessment.stages[name].gaps.map(({ message }) => sheet.say(message))),
  ),
];
