import type { Issue, Path, Place, Severity } from '@brinewright/words';
import { message } from '@brinewright/words';
import { type Finding, type Values, wordsOf } from './codes.ts';
import { nearest } from './near.ts';
import { space } from './space.ts';

/** Where a path stands in the files it came from, if it does. */
export type PlaceOf = (path: Path, part?: 'key' | 'value') => Place | undefined;

/** The same, or the nearest thing round it. */
export type Locate = (path: Path, part?: 'key' | 'value') => Place;

export const issueAt = (severity: Severity, at: Path, place: Place | undefined, finding: Finding): Issue => ({
  code: finding.code,
  severity,
  at,
  ...(place === undefined ? {} : { place }),
  ...wordsOf(finding),
});

/** Collects what is wrong while something is read or compiled. */
export type Report = {
  readonly issues: Issue[];
  readonly error: (at: Path, finding: Finding, part?: 'key' | 'value') => void;
  readonly note: (at: Path, finding: Finding, part?: 'key' | 'value') => void;
};

export const createReport = (locate: Locate): Report => {
  const issues: Issue[] = [];
  return {
    issues,
    error: (at, finding, part) => void issues.push(issueAt('error', at, locate(at, part), finding)),
    note: (at, finding, part) => void issues.push(issueAt('note', at, locate(at, part), finding)),
  };
};

export const hasErrors = (issues: readonly Issue[]): boolean =>
  issues.some((issue) => issue.severity === 'error');

/** A line of a stock is said once, however many families are like it. */
export const distinct = (issues: readonly Issue[]): readonly Issue[] => {
  const seen = new Set<string>();
  return issues.filter((issue) => {
    const key = JSON.stringify([issue.code, issue.place, issue.message.values]);
    const isNew = issue.place === undefined || !seen.has(key);
    seen.add(key);
    return isNew;
  });
};

const shown = 12;
const comma = `,${space}`;

/** Known words as one text; a long list is cut, and says so. */
export const listed = (known: Iterable<string>): string => {
  const all = [...known];
  const head = all.slice(0, shown).join(comma);
  return all.length > shown ? `${head}${comma}…\u0020(${all.length})` : head;
};

const few = 3;

/** The first few of many under their name, and how many `more` there are. */
export const short = (name: string, all: readonly string[]): Values => ({
  [name]: all.slice(0, few).join(comma),
  more: Math.max(0, all.length - few),
});

/** A word that is not among those known: the closest is offered, else the list. */
export const unknownWord = (
  code: 'reference.unknown' | 'reference.stray' | 'schema.unknown-key' | 'schema.not-one-of',
  word: string,
  known: readonly string[],
  values: Values = {},
): Finding => {
  const near = nearest(word, known);
  const all = { ...values, word: clipped(word), known: listed(known) };
  if (near !== undefined) return { code, values: all, mend: message('issue.did-you-mean', { near }) };
  if (known.length === 0) return { code, values: all, mend: message('issue.none-known', all) };
  return { code, values: all };
};

/** A value as an error shows it: never longer than a line. */
export const clipped = (value: unknown): string => {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value));
  const flat = text.replaceAll(/\s+/gu, space);
  return [...flat].length > 60 ? `${[...flat].slice(0, 57).join('')}…` : flat;
};
