import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runInProcess } from './testing/run-in-process.ts';
import { atPointer, readTranscripts, type Transcript, typeName, wordsOf } from './testing/transcript.ts';

const folder = join(import.meta.dirname, '../test/transcripts');

const holdsInOrder = (lines: readonly string[], wanted: readonly string[]): void => {
  let from = 0;
  for (const text of wanted) {
    const at = lines.findIndex((line, place) => place >= from && line.includes(text));
    expect(at, `no line holds “${text}” after line ${from} of:\n${lines.join('\n')}`).toBeGreaterThanOrEqual(
      0,
    );
    from = at + 1;
  }
};

const check = async (transcript: Transcript): Promise<void> => {
  const { command, files, holds, exactly, lacks, messages, json, code } = transcript;
  const ran = await runInProcess(wordsOf(command), files);
  const lines = ran.out.trimEnd().split('\n');
  holdsInOrder(lines, holds);
  if (exactly.length > 0) expect(lines).toEqual(exactly);
  for (const text of lacks) expect(ran.out).not.toContain(text);
  holdsInOrder(ran.err.split('\n'), messages);
  const data: unknown = json.length > 0 ? JSON.parse(ran.out) : undefined;
  for (const claim of json) {
    const found = atPointer(data, claim.pointer);
    if ('value' in claim) expect(found, claim.pointer).toEqual(claim.value);
    else expect(typeName(found), claim.pointer).toBe(claim.type);
  }
  expect(ran.code, ran.err).toBe(code);
  expect(ran.err).not.toMatch(/^\s+at .*\.ts:\d+/mu);
};

for (const file of readdirSync(folder).toSorted()) {
  describe(file, () => {
    for (const transcript of readTranscripts(readFileSync(join(folder, file), 'utf8')))
      it(transcript.title, () => check(transcript));
  });
}
