import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openSqlite } from '@brinewright/server/store';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Ran, runInProcess } from './testing/run-in-process.ts';

let folder = '';
let record = '';
let file = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'bw-record-'));
  record = join(folder, 'workshop.sqlite');
  file = join(folder, 'copy.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const run = (...argv: readonly string[]): Promise<Ran> =>
  runInProcess([...argv, '--data', record], new Map(), { BRINEWRIGHT_LOG: 'silent' });

const serve = (...more: readonly string[]): Promise<Ran> => run('serve', '--port', '0', ...more);

const company = '0199f3a0-0000-7000-8000-000000000100';

/** A workshop that somebody has begun. */
const begun = async (): Promise<void> => {
  const store = await openSqlite(record);
  await store.beginWorkshop(company, 'Dana Whitlock');
  await store.close();
};

describe('serve', () => {
  test('prints one line when it can be used, and ends well when asked to stop', async () => {
    const { code, out } = await serve();
    expect([code, out]).toEqual([0, expect.stringMatching(/^Ready: http:\/\/127\.0\.0\.1:\d+\n$/u)]);
  });

  test('says with --json where it listens and whether a workshop was begun', async () => {
    await begun();
    const { out } = await serve('--json', '--demo');
    expect(JSON.parse(out)).toMatchObject({
      url: expect.stringContaining('http://127.0.0.1:'),
      hasBegun: true,
    });
  });

  test('is refused on a record that another one has open, with its path and the mend', async () => {
    const other = await openSqlite(record);
    const { code, out, err } = await serve();
    await other.close();
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(record);
    expect((await serve()).code).toBe(0);
  });

  test('does not begin on a wrecked record, and says that a backup mends it', async () => {
    writeFileSync(record, 'x'.repeat(5000));
    const { code, err } = await serve();
    expect([code, err]).toEqual([1, expect.stringContaining('restore')]);
    expect(readFileSync(record, 'utf8')).toBe('x'.repeat(5000));
  });

  test.each([
    ['--host', '192.0.2.1'],
    ['--lan', '--certificate', 'cert.pem'],
    ['--lan', '--behind-proxy', '--certificate', 'a.pem', '--key', 'b.pem'],
  ])('takes %s %s only together with what belongs to it', async (...argv) => {
    expect((await serve(...argv.filter((one) => one !== undefined))).code).toBe(2);
  });

  test('names a port that is none', async () => {
    const { code, err } = await run('serve', '--port', '99999');
    expect([code, err]).toEqual([2, expect.stringContaining('99999')]);
  });
});

describe('backup and restore', () => {
  test('put a wrecked record back, and keep the wreck', async () => {
    await begun();
    expect(await run('backup', file)).toMatchObject({ code: 0, out: expect.stringContaining(file) });
    writeFileSync(record, 'wrecked');
    expect((await serve()).code).toBe(1);
    const restored = JSON.parse((await run('restore', file, '--json')).out);
    expect(readFileSync(restored.aside, 'utf8')).toBe('wrecked');
    expect((await serve()).code).toBe(0);
    const store = await openSqlite(record);
    expect(await store.workshop()).toMatchObject({ company, author: 'Dana Whitlock' });
    await store.close();
  });

  test('never write over a file that is there', async () => {
    await begun();
    writeFileSync(file, 'mine');
    const { code, err } = await run('backup', file);
    expect([code, err, readFileSync(file, 'utf8')]).toEqual([1, expect.stringContaining(file), 'mine']);
  });

  test('refuse a backup that was changed, and leave the record as it is', async () => {
    await begun();
    await run('backup', file);
    const bytes = readFileSync(file);
    const at = bytes.indexOf('Dana Whitlock');
    expect(at).toBeGreaterThan(0);
    bytes.fill(0, 0, 64);
    writeFileSync(file, bytes);
    const { code, err } = await run('restore', file);
    expect([code, err]).toEqual([1, expect.stringContaining(file)]);
    expect((await serve('--json')).out).toContain('"hasBegun": true');
  });

  test('say in Spanish what is not there', async () => {
    const { code, err } = await run('restore', join(folder, 'nothing.sqlite'), '--lang', 'es');
    expect([code, err]).toEqual([1, expect.stringContaining('nothing.sqlite')]);
    expect(err).not.toMatch(/\bthe\b/u);
  });
});
