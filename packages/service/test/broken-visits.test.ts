import { parseVisit, type Visit } from '@brinewright/service';
import { formatMessage, type Issue, missingValues } from '@brinewright/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { assess } from '../src/assess.ts';
import { faultsOf } from '../src/testing/faults-of.ts';
import { shippedEquipment } from '../src/testing/shipped.ts';
import { visitSchema } from '../src/visit/schema.ts';
import { type Mutation, misspelledKey, mutated, mutations, placesIn, without } from './broken.ts';
import { demoVisits } from './demo-visits.ts';

const seed = 20261125;
const equipment = shippedEquipment();
const documents = demoVisits.map(({ text }): unknown => parse(text));

/** Every issue says what and where, and how to mend it, in both languages and in a few lines. */
const readable = (issue: Issue, text: string): readonly string[] => {
  const { place, mend, message } = issue;
  if (place === undefined || mend === undefined) return [`${issue.code}: no place or no mend`];
  const lines = text.split('\n');
  const line = lines[place.line - 1];
  const said = (['en', 'es'] as const).flatMap((language) =>
    [message, mend].map((one) => formatMessage(one, { language, system: 'us' })),
  );
  return [
    ...[message, mend].flatMap(missingValues),
    ...(line === undefined || place.column > line.length + 1 ? [`${issue.code}: no such place`] : []),
    ...said.filter((sentence) => sentence.length === 0 || sentence.length > 900),
  ];
};

const read = (text: string) => {
  const result = parseVisit('visit.yaml', text);
  for (const issue of result.issues) expect(readable(issue, text)).toEqual([]);
  if (!result.ok) expect(result.issues.length).toBeGreaterThan(0);
  return result;
};

const assessed = (visit: Visit): void => {
  const assessment = assess(visit, equipment, { now: '2026-11-25T10:00:00Z', effort: 'quick' });
  expect(faultsOf(assessment)).toEqual([]);
};

const mendOf = ({ mend }: Issue): readonly string[] =>
  mend === undefined ? [] : [formatMessage(mend, { language: 'en', system: 'us' })];

const isNear = (one: readonly unknown[], other: readonly unknown[]): boolean =>
  one.every((key, place) => place >= other.length || key === other[place]);

/** Fifteen places of each mutation, drawn from all demo visits. */
const samples = (mutation: Mutation) =>
  fc.sample(
    fc.constantFrom(
      ...documents.flatMap((data) =>
        placesIn(data)
          .filter(({ at, value }) => mutation.fits(at, value))
          .map(({ at }) => ({ data, at })),
      ),
    ),
    { numRuns: 15, seed },
  );

const cases = mutations.flatMap((mutation) =>
  samples(mutation).map(({ data, at }) => ({
    name: mutation.name,
    at,
    data,
    broken: mutated(data, at, mutation),
  })),
);

describe('a demo visit with something broken in it', () => {
  it('is tried in at least two hundred ways', () => {
    expect(cases.length).toBeGreaterThanOrEqual(200);
  });

  it.each(cases)(
    '$name at $at is said where it stands, and all else is kept',
    ({ name, at, data, broken }) => {
      const text = stringify(broken);
      const result = read(text);
      if (result.ok) assessed(result.value);
      const whole = visitSchema.safeParse(broken);
      if (whole.success) {
        expect(result.ok ? result.value : undefined).toEqual(whole.data);
        return;
      }
      const where = name === misspelledKey ? at.slice(0, -1) : at;
      const near = result.issues.filter((one) => one.severity === 'error' && isNear(one.at, where));
      expect(near).not.toEqual([]);
      if (name === misspelledKey) expect(near.flatMap(mendOf).join()).toContain(String(at.at(-1)));
      const rest = visitSchema.safeParse(without(data, at));
      if (rest.success) expect(result.ok ? result.value : undefined).toEqual(rest.data);
      else keepsOtherParts(result.ok ? result.value : undefined, data, String(at[0]));
    },
  );
});

/** A required value is gone, and with it what cannot be without it; every other part of the document stands. */
const keepsOtherParts = (visit: Visit | undefined, data: unknown, broken: string): void => {
  const required = ['schema', 'id', 'site', 'conditioners', 'subject'];
  if (visit === undefined) {
    expect(required).toContain(broken);
    return;
  }
  const { [broken]: _, ...others } = Object.fromEntries(Object.entries(visitSchema.parse(data)));
  expect(visit).toMatchObject(others);
};

/** Text that a keyboard breaks rather than a program. */
const typed: readonly (readonly [string, (lines: string[], at: number) => string[]])[] = [
  ['a duplicated line', (lines, at) => lines.toSpliced(at, 0, lines[at] ?? '')],
  ['a line moved in by one', (lines, at) => lines.with(at, ` ${lines[at]}`)],
  ['a line moved out by two', (lines, at) => lines.with(at, (lines[at] ?? '').replace(/^ {2}/u, ''))],
  ['a tab before a line', (lines, at) => lines.with(at, `\t${lines[at]}`)],
  ['a quote that is never closed', (lines, at) => lines.with(at, (lines[at] ?? '').replace(': ', ': "'))],
  ['a colon gone', (lines, at) => lines.with(at, (lines[at] ?? '').replace(':', ''))],
  ['a brace gone', (lines, at) => lines.with(at, (lines[at] ?? '').replace(/[{}[\]]/u, ''))],
  ['a line cut in two', (lines, at) => lines.with(at, (lines[at] ?? '').replace(/^(.{7})/u, '$1\n'))],
];

const typedCases = typed.flatMap(([name, change]) =>
  fc
    .sample(fc.tuple(fc.constantFrom(...demoVisits), fc.nat(1000)), { numRuns: 8, seed })
    .map(([demo, place]) => {
      const lines = demo.text.split('\n');
      const at = 1 + (place % (lines.length - 2));
      return { name, file: demo.file, line: at + 1, text: change(lines, at).join('\n') };
    }),
);

describe('a demo visit with a slip of the keyboard', () => {
  it.each(typedCases)(
    '$name in $file line $line never throws, and what is said has its place',
    ({ text }) => {
      const result = read(text);
      if (result.ok) assessed(result.value);
    },
  );
});
