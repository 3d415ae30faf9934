import { formatMessage, type Issue, type Language, missingValues } from '@brinewright/words';
import { expect, test } from 'vitest';
import { mutationNames, mutations, randomFrom } from '../../test/mutations.ts';
import { compileDefinitions } from '../compile/compile-definitions.ts';
import { parseDefinition } from '../load/parse-definition.ts';
import { readDefinitions } from './load-equipment.ts';

const { files } = readDefinitions([]);
const sound = files.map(({ file, text }) => parseDefinition(file, text));

const issuesOf = (index: number, text: string): readonly Issue[] => {
  const file = files[index]?.file ?? '';
  const parsed = parseDefinition(file, text);
  if (parsed.state === 'broken') return parsed.issues;
  return compileDefinitions(sound.map((one, place) => (place === index ? parsed : one))).issues;
};

const saidIn = (issue: Issue, language: Language): readonly string[] =>
  [issue.message, issue.mend].flatMap((one) =>
    one === undefined ? [] : [formatMessage(one, { language, system: 'us' })],
  );

/** Why an error is of no use to the person who reads it; nothing where it is fine. */
const complaint = (issue: Issue, texts: ReadonlyMap<string, string>): string | undefined => {
  const { place, mend } = issue;
  if (place === undefined || mend === undefined) return 'no place or no mend';
  const lines = texts.get(place.file)?.split('\n') ?? [];
  if (place.column < 1 || place.column > (lines[place.line - 1]?.length ?? -1) + 1) return 'no such place';
  const missing = [...missingValues(issue.message), ...missingValues(mend)];
  if (missing.length > 0) return missing.join();
  return [...saidIn(issue, 'en'), ...saidIn(issue, 'es')].find(({ length }) => length < 5 || length > 500);
};

const count = 200;

test(`${count} broken definitions: each is still sound, or says where, why and how to mend it`, () => {
  const refused: string[] = [];
  const bad: string[] = [];
  for (let seed = 1; seed <= count; seed += 1) {
    const random = randomFrom(seed);
    const index = Math.floor(random() * files.length);
    const { file = '', text = '' } = files[index] ?? {};
    const name = mutationNames[seed % mutationNames.length] ?? 'null';
    const broken = mutations[name](text, random);
    const texts = new Map([...files.map((one) => [one.file, one.text] as const), [file, broken]]);
    const errors = issuesOf(index, broken).filter(({ severity }) => severity === 'error');
    if (errors.length > 0) refused.push(name);
    for (const issue of errors) {
      const why = complaint(issue, texts);
      if (why !== undefined) bad.push(`seed ${seed}, ${name}, ${file}: ${issue.code}: ${why}`);
    }
  }
  expect(bad).toEqual([]);
  // Every way of breaking is refused at least once; some happen to leave a definition sound.
  expect(mutationNames.filter((name) => !refused.includes(name))).toEqual([]);
  expect(refused.length).toBeGreaterThan(count / 2);
}, 60_000);
