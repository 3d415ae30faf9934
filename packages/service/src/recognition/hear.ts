import type { Situation } from '../situation/situation.ts';
import type { TellAnswer } from '../visit/schema.ts';
import { at } from './bayes.ts';
import { answered, type Evidence, type Heard, nothingHeard, sortedOnce } from './evidence.ts';
import { unknownAnswer } from './hear-issues.ts';
import { hearSize } from './hear-size.ts';
import { hearTold } from './hear-told.ts';
import { type TellTable, tellTables, trustOf } from './tell-table.ts';

/** Everything that speaks of the variant: answers to tells, and features that were told or read from papers. */
export const hear = (s: Situation): Heard => {
  const heard = [...s.answers.map((answer) => hearAnswer(s, answer)), hearTold(s)];
  return {
    evidence: sortedOnce(heard.flatMap(({ evidence }) => evidence)),
    issues: heard.flatMap(({ issues }) => issues),
  };
};

/** Not seen, or seen and not sure of anything: an answer all the same, and it says nothing. */
const saysNothing = (answer: string): boolean => answer === 'cannot-see' || answer === 'unsure';

const hearAnswer = (s: Situation, answer: TellAnswer): Heard => {
  const tell = s.family.tells.find(({ id }) => id === answer.tell);
  const table = tellTables(s.family).get(answer.tell);
  if (tell === undefined || table === undefined || saysNothing(answer.answer)) return nothingHeard;
  if (tell.kind === 'measured') return hearSize(s, tell, answer);
  const place = table.answers.indexOf(answer.answer);
  if (place < 0) return { evidence: [], issues: [unknownAnswer(s, tell, answer, table.answers)] };
  return { evidence: [hearSeen(answer, table, place, trustOf(tell))], issues: [] };
};

const hearSeen = (answer: TellAnswer, table: TellTable, place: number, trust: number): Evidence => {
  const row = table.rows[place] ?? new Float64Array();
  const allowed = table.allows[place] ?? new Uint8Array();
  const told = (v: number) => table.allows.some((allows) => at(allows, v) === 1);
  const denied = allowed.map((yes, v) => (yes === 0 && told(v) ? 1 : 0));
  return answered(answer, row, denied, trust);
};
