import type { QuantityProblemName } from '@brinewright/units';
import {
  catalogues,
  type Issue,
  type Message,
  type MessageKey,
  type MessageValue,
  message,
} from '@brinewright/words';

type CodeOf<Key> = Key extends `issue.${infer Code}.mend` ? Code : never;

/** Every code has a sentence that says why and one that says how to mend it. */
export type IssueCode = CodeOf<MessageKey>;

export type Values = Readonly<Record<string, MessageValue>>;

/** What is wrong, by code; `mend` where the usual one is not the best: 'write x', where something close is known. */
type Coded = { readonly code: IssueCode; readonly values?: Values; readonly mend?: Message };

/** What is wrong with a quantity, in the words that go with it. */
type Said = {
  readonly code: `quantity.${QuantityProblemName}`;
  readonly message: Message;
  readonly mend: Message;
};

export type Finding = Coded | Said;

export const isIssueCode = (code: string): code is IssueCode =>
  Object.hasOwn(catalogues.en, `issue.${code}.mend`);

/** Message and mend of a finding, from the catalogue. */
export const wordsOf = (finding: Finding): Pick<Issue, 'message' | 'mend'> => {
  if ('message' in finding) return { message: finding.message, mend: finding.mend };
  const values = shortened(finding.values ?? {});
  return {
    message: message(`issue.${finding.code}`, values),
    mend: finding.mend ?? message(`issue.${finding.code}.mend`, values),
  };
};

const longest = 240;

/** A value is never longer than a few lines, whatever stands in the file. */
const shortened = (values: Values): Values =>
  Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      typeof value === 'string' && value.length > longest ? `${value.slice(0, longest)}…` : value,
    ]),
  );
