import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readEntry } from '../src/entry/read-entry.ts';
import { readPayload } from '../src/kinds/read-payload.ts';
import { everWritten } from '../src/kinds/versions.ts';

/*
 * One entry of every kind and version ever written, as it lies in somebody's journal. A sample is never changed: a
 * program that cannot read one any more has lost somebody's visit.
 */

const folder = join(import.meta.dirname, '../samples');
const fileOf = (kind: string): string => join(folder, `${kind.replace('/', '-')}.json`);

describe.each(everWritten())('%s', (kind) => {
  it('has a sample', () => {
    expect(existsSync(fileOf(kind))).toBe(true);
  });

  it('is read by this program as it was written, envelope, hash and payload', () => {
    const { hash, entry } = JSON.parse(readFileSync(fileOf(kind), 'utf8'));
    const read = readEntry({ entry });
    if (!read.ok) throw new Error(read.reason);
    expect(read.sealed.entry.kind).toBe(kind);
    expect(read.sealed.hash).toBe(hash);
    expect(readPayload(read.sealed.entry, read.sealed.entry.payload).state).toBe('read');
  });
});

it('no sample is without its kind', () => {
  expect(readdirSync(folder).toSorted()).toEqual(
    everWritten()
      .map((kind) => `${kind.replace('/', '-')}.json`)
      .toSorted(),
  );
});
