import type { Sheet } from '@brinewright/papers';
import type { Stage } from '@brinewright/service';
import { alone } from './names.ts';

/** What a stage still needs, and what is odd about what it was given; each once. */
export type Lacks = { readonly gaps: readonly string[]; readonly doubts: readonly string[] };

export const lacksOf = (sheet: Sheet, { gaps, issues }: Stage<unknown>): Lacks => ({
  gaps: [...new Set(gaps.map(({ message }) => sheet.say(message)))],
  doubts: [
    ...new Set(
      issues.map(({ severity, message, mend }) =>
        [
          `${alone(sheet.word(`equipment.severity.${severity}`))}: ${sheet.say(message)}`,
          ...(mend === undefined ? [] : [sheet.say(mend)]),
        ].join(' '),
      ),
    ),
  ],
});
