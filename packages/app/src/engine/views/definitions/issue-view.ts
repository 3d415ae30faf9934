import type { Issue } from '@brinewright/words';
import type { Speech } from '../../speech.ts';

/** What is wrong with a definition: where, why, and how to mend it. */
export type IssueView = {
  readonly key: string;
  readonly severity: Issue['severity'];
  readonly word: string;
  readonly place?: string | undefined;
  readonly says: string;
  readonly mend?: string | undefined;
};

export const issueView = (issue: Issue, speech: Speech): IssueView => {
  const { severity, code, message, mend, place } = issue;
  const at = place === undefined ? undefined : `${place.file}:${place.line}:${place.column}`;
  const says = speech.say(message);
  return {
    key: [code, at ?? '', says].join(' '),
    severity,
    word: speech.word(`equipment.severity.${severity}`),
    place: at,
    says,
    mend: mend === undefined ? undefined : speech.say(mend),
  };
};
