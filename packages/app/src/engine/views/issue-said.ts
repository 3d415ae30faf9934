import type { Sheet } from '@brinewright/papers';
import type { Issue } from '@brinewright/words';

export type IssueSaid = { readonly says: string; readonly mend?: string | undefined };

export const issueSaid = (sheet: Sheet, { message, mend }: Issue): IssueSaid => ({
  says: sheet.say(message),
  mend: mend === undefined ? undefined : sheet.say(mend),
});
