import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { failingDisk } from '../testing/failing-disk.ts';
import { MeantToFail, NthFailure } from '../testing/nth-failure.ts';
import { realDisk } from './disk.ts';
import { type FileStore, openFiles } from './file-store.ts';

const company = '00000000-0000-7000-8000-00000000c001';
const other = '00000000-0000-7000-8000-00000000c002';

let root = '';
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'bw-files-'));
});
afterEach(() => rmSync(root, { recursive: true }));

async function* parts(...texts: readonly string[]): AsyncGenerator<Uint8Array> {
  for (const text of texts) yield Buffer.from(text);
}

const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex');

const textOf = async (files: FileStore, of: string, hash: string): Promise<string | undefined> => {
  const file = await files.open(of, hash);
  if (file === undefined) return undefined;
  const read: Uint8Array[] = [];
  for await (const part of file.bytes) read.push(part);
  return Buffer.concat(read).toString();
};

const everything = (): readonly string[] =>
  readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile())
    .map((one) => one.name);

describe('a received file', () => {
  it('is given back, listed, and removed for good', async () => {
    const files = await openFiles(root);
    const hash = hashOf('photo of a valve');
    expect(await files.receive(company, hash, parts('photo of', ' a valve'))).toBe('durable');
    expect(await textOf(files, company, hash)).toBe('photo of a valve');
    expect(await files.open(company, hash)).toMatchObject({ size: 16 });
    expect(await files.list(company)).toEqual([hash]);
    await files.remove(company, hash);
    expect(await files.has(company, hash)).toBe(false);
    expect(everything()).toEqual([]);
  });

  it('is not read again when it is there', async () => {
    const files = await openFiles(root);
    const hash = hashOf('one');
    await files.receive(company, hash, parts('one'));
    let wasRead = false;
    const again = (async function* () {
      wasRead = true;
      yield Buffer.from('one');
    })();
    expect(await files.receive(company, hash, again)).toBe('durable');
    expect(wasRead).toBe(false);
  });

  it('belongs to its company alone', async () => {
    const files = await openFiles(root);
    const hash = hashOf('ours');
    await files.receive(company, hash, parts('ours'));
    expect(await files.has(other, hash)).toBe(false);
    expect(await files.list(other)).toEqual([]);
    await files.remove(other, hash);
    expect(await textOf(files, company, hash)).toBe('ours');
  });

  it('may be empty', async () => {
    const files = await openFiles(root);
    expect(await files.receive(company, hashOf(''), parts(), 0)).toBe('durable');
    expect(await textOf(files, company, hashOf(''))).toBe('');
  });

  it('can be read by its owner only', async () => {
    const files = await openFiles(root);
    const hash = hashOf('private');
    await files.receive(company, hash, parts('private'));
    expect(statSync(join(root, company, hash.slice(0, 2), hash)).mode & 0o777).toBe(0o600);
    expect(statSync(join(root, company)).mode & 0o777).toBe(0o700);
  });

  it('comes once when it is sent twice at the same time', async () => {
    const files = await openFiles(root);
    const hash = hashOf('twice');
    const both = await Promise.all([1, 2].map(() => files.receive(company, hash, parts('tw', 'ice'))));
    expect(both).toEqual(['durable', 'durable']);
    expect(everything()).toEqual([hash]);
  });
});

describe('nothing is left behind', () => {
  it('by a file that is not what its name says', async () => {
    const files = await openFiles(root);
    expect(await files.receive(company, hashOf('a'), parts('b'))).toBe('wrong-hash');
    expect(await files.receive(company, hashOf('whole'), parts('who'))).toBe('wrong-hash');
    expect(await files.receive(company, hashOf('whole'), parts('whole'), 6)).toBe('wrong-hash');
    expect(everything()).toEqual([]);
  });

  it('by one that is too large, said before or not', async () => {
    const files = await openFiles(root, { most: 10 });
    const text = '0123456789x';
    expect(await files.receive(company, hashOf(text), parts(text))).toBe('too-large');
    expect(await files.receive(company, hashOf(text), parts(text), 11)).toBe('too-large');
    expect(await files.receive(company, hashOf('0123456789'), parts('0123456789'))).toBe('durable');
    expect(everything()).toHaveLength(1);
  });

  it('by a sender that goes away in the middle', async () => {
    const files = await openFiles(root);
    const cut = (async function* () {
      yield Buffer.from('half');
      throw new Error('gone away');
    })();
    await expect(files.receive(company, hashOf('half and half'), cut)).rejects.toThrow('gone away');
    expect(everything()).toEqual([]);
  });

  it('by a crash, once the files are opened again', async () => {
    mkdirSync(join(root, 'incoming'));
    writeFileSync(join(root, 'incoming', 'half'), 'half');
    await openFiles(root);
    expect(everything()).toEqual([]);
  });
});

it.each([
  '../../../etc/passwd',
  `../${'a'.repeat(61)}`,
  'A'.repeat(64),
  `${'a'.repeat(63)}\n`,
  `${'a'.repeat(64)}\n`,
  `${'a'.repeat(63)}\u0000`,
  '',
  'incoming',
])('takes no name but 64 lower-case hex digits: %j', async (name) => {
  const files = await openFiles(root);
  expect(await files.receive(company, name, parts('x'))).toBe('wrong-hash');
  expect(await files.receive(name, hashOf('x'), parts('x'))).toBe('wrong-hash');
  expect(await files.open(company, name)).toBeUndefined();
  expect(await files.list(name)).toEqual([]);
  await files.remove(company, name);
  expect(everything()).toEqual([]);
});

it('stays whole whichever call to the disk fails', async () => {
  const nth = new NthFailure();
  const hash = hashOf('first part, second part');
  const send = (files: FileStore) => files.receive(company, hash, parts('first part, ', 'second part'));
  let tried = 0;
  let hasFailed = true;
  while (hasFailed) {
    tried += 1;
    rmSync(root, { recursive: true });
    const files = await openFiles(root, { disk: failingDisk(realDisk, nth) });
    nth.arm(tried);
    const came = await send(files).catch((error: unknown) => error);
    hasFailed = nth.hasFailed;
    nth.arm();
    if (hasFailed) expect(came).toBeInstanceOf(MeantToFail);
    const held = await textOf(files, company, hash);
    expect(held === undefined || held === 'first part, second part').toBe(true);
    expect(await send(await openFiles(root))).toBe('durable');
    expect(everything()).toEqual([hash]);
  }
  expect(tried).toBeGreaterThan(9);
});
