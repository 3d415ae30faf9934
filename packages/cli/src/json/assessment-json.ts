import { type Situation, type StageName, stageNames } from '@brinewright/service';
import type { Issue, Message } from '@brinewright/words';
import { plainIssue } from '../commands/format-issue.ts';
import { issuesBefore } from '../report/issues-before.ts';
import { isMessageKey, placeText, type View } from '../view.ts';

/** The assessment as plain data, and what it says in the reader's language. With a stage: that one alone. */
export const assessmentJson = (view: View, only?: StageName): object => {
  const { engine, definitions, effort, figures, cautions } = view.assessment;
  const names = only === undefined ? stageNames : [only];
  return {
    engine,
    definitions,
    effort,
    visit: view.visit.id,
    ...(view.issues.length === 0
      ? {}
      : { setAside: view.issues.map((issue) => plainIssue(issue, view.reader.language)) }),
    ...(only === undefined ? {} : issuesBeforeJson(view, only)),
    figures,
    stages: Object.fromEntries(names.map((name) => [name, stageJson(view, name)])),
    cautions,
    says: Object.fromEntries(names.map((name) => [name, saidIn(view, name)])),
  };
};

const stageJson = (view: View, name: StageName): unknown => {
  const { stages } = view.assessment;
  const { figures: _, ...stage } = stages[name];
  const issues = stage.issues.map((issue) => issueJson(view, issue));
  const gaps = stage.gaps.map((gap) => ({ ...gap, says: view.say(gap.message) }));
  const value = valueJson(stages, name);
  return plain({ state: stage.state, ...(value === undefined ? {} : { value }), gaps, issues });
};

/** What is odd in the visit that this stage stands on, where there is any. */
const issuesBeforeJson = (view: View, only: StageName): object => {
  const before = issuesBefore(view, only);
  return before.length === 0 ? {} : { issuesBefore: before.map((issue) => issueJson(view, issue)) };
};

const issueJson = (view: View, issue: Issue): object => ({
  ...issue,
  says: view.say(issue.message),
  ...placeOf(view, issue),
});

const placeOf = (view: View, issue: Issue): object => {
  const text = placeText(view, issue);
  return text === '' ? {} : { at: issue.at, where: text.trim().replace(/^\(|\)$/gu, '') };
};

const valueJson = (stages: View['assessment']['stages'], name: StageName): unknown => {
  if (name === 'situation')
    return stages.situation.state === 'done' ? situationJson(stages.situation.value) : undefined;
  const stage = stages[name];
  return stage.state === 'done' ? stage.value : undefined;
};

/** Equipment, family and figures stand elsewhere: here are their ids. */
const situationJson = (s: Situation): object => ({
  visit: s.visit.id,
  equipment: s.equipment.digest,
  subject: s.subject.id,
  family: s.family.id,
  kind: s.kind,
  described: s.described,
  medium: s.medium?.id ?? null,
  controller: s.controller?.id ?? null,
  found: s.found,
  answers: s.answers,
  readings: s.readings.map((reading) => ({ ...reading, test: reading.test.id })),
  changes: s.changes,
  complaints: s.complaints,
  recentlyServiced: s.recentlyServiced,
});

/** Typed arrays become lists; everything else is plain already. */
const plain = (value: unknown): unknown => {
  if (value instanceof Float64Array) return [...value];
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, plain(inner)]));
};

/** Every sentence of a stage, once, in the order it stands. */
const saidIn = (view: View, name: StageName): readonly string[] => {
  const { stages } = view.assessment;
  const said = new Set<string>();
  const walk = (value: unknown): void => {
    if (isMessage(value)) said.add(view.say(value));
    else if (typeof value === 'object' && value !== null)
      for (const inner of Object.values(value)) walk(inner);
  };
  for (const part of [valueJson(stages, name), stages[name].gaps, stages[name].issues]) walk(part);
  return [...said];
};

const isMessage = (value: unknown): value is Message =>
  typeof value === 'object' &&
  value !== null &&
  'key' in value &&
  typeof value.key === 'string' &&
  isMessageKey(value.key);
