import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { describe, expect, it } from 'vitest';
import {
  everything,
  fillPlace,
  mainFiles,
  now,
  photoHash,
  type SqlitePlace,
  trialFolder,
} from '../../testing/trial-record.ts';
import { backup } from './backup.ts';
import { BadBackup } from './restore.ts';
import { verifyBackup } from './verify.ts';

const { within, saved, back, sqlitePlace } = trialFolder();

describe('a backup that was changed is refused, each fault named', () => {
  const change = async (work: (database: DatabaseSync) => void): Promise<SqlitePlace> => {
    const place = sqlitePlace('place');
    await fillPlace(place);
    await backup({ place, to: saved(), now });
    const database = new DatabaseSync(saved());
    work(database);
    database.close();
    return place;
  };
  const changes: readonly (readonly [string, string, readonly object[]])[] = [
    [
      'an entry',
      `update entry set body = replace(body, 'note 7"', 'note 8"') where position = 7`,
      [
        { kind: 'rows', table: 'entry' },
        { kind: 'entry', position: 7 },
      ],
    ],
    [
      'the number of an entry',
      'update entry set seq = 99999 where position = 9',
      [
        { kind: 'rows', table: 'entry' },
        { kind: 'entry', position: 9 },
      ],
    ],
    [
      'a missing entry',
      'delete from entry where position in (4, 5)',
      [
        { kind: 'rows', table: 'entry' },
        { kind: 'place', position: 4 },
        { kind: 'place', position: 5 },
      ],
    ],
    [
      'a missing last entry',
      'delete from entry where position = 1203',
      [
        { kind: 'rows', table: 'entry' },
        { kind: 'place', position: 1203 },
      ],
    ],
    [
      'a tombstone',
      `update entry set body = replace(body, '"redacted":"0', '"redacted":"1') where position = 1`,
      [{ kind: 'rows', table: 'entry' }],
    ],
    [
      'who brought an entry',
      `update entry set pusher = 'x' where position = 2`,
      [{ kind: 'rows', table: 'entry' }],
    ],
    ['a device', `update paired_device set name = 'x'`, [{ kind: 'rows', table: 'paired_device' }]],
    [
      'a photo',
      `update file_content set content = x'00'`,
      [
        { kind: 'rows', table: 'file_content' },
        { kind: 'file', hash: photoHash },
      ],
    ],
    ['a missing photo', 'delete from file_content', [{ kind: 'rows', table: 'file_content' }]],
    [
      'a sum',
      `update backup_part set digest = '' where name = 'workshop'`,
      [{ kind: 'rows', table: 'workshop' }],
    ],
    ['a later format', 'update backup_info set format = 2', [{ kind: 'newer', detail: '2' }]],
    [
      'later tables',
      `insert into kysely_migration values ('999-later', '')`,
      [{ kind: 'newer', detail: '999-later' }],
    ],
  ];
  it.each(changes)('%s', async (_, statement, expected) => {
    const place = await change((database) => database.exec(statement));
    const { faults } = verifyBackup(saved());
    expect(faults).toMatchObject(expected);
    expect(faults).toHaveLength(expected.length);
    const before = readFileSync(place.path);
    await expect(back(place)).rejects.toBeInstanceOf(BadBackup);
    expect(readFileSync(place.path).equals(before)).toBe(true);
    expect(mainFiles(within('place'))).toEqual(['files', 'workshop.sqlite', 'workshop.sqlite.lock']);
  });

  it.each([
    ['no file', 'missing', () => rmSync(saved())],
    ['half a file', 'damaged', () => writeFileSync(saved(), readFileSync(saved()).subarray(0, 40_000))],
    ['an empty file', 'not-a-backup', () => writeFileSync(saved(), '')],
    ['another file', 'damaged', () => writeFileSync(saved(), 'text '.repeat(1000))],
  ])('%s', async (_, kind, spoil) => {
    const place = await change(() => {});
    spoil();
    expect(verifyBackup(saved()).faults.map((one) => one.kind)).toContain(kind);
    await expect(back(place)).rejects.toBeInstanceOf(BadBackup);
  });

  it('a record that is no backup', async () => {
    const place = sqlitePlace('place');
    await fillPlace(place);
    expect(verifyBackup(place.path).faults).toEqual([{ kind: 'not-a-backup' }]);
  });

  it('any byte, or it is restored as if it had not been changed', async () => {
    const source = sqlitePlace('source');
    const company = await fillPlace(source);
    const { record } = await everything(source, company);
    await backup({ place: source, to: saved(), now });
    const whole = readFileSync(saved());
    const place = sqlitePlace('place');
    let refused = 0;
    for (let turn = 1; turn <= 60; turn += 1) {
      const spoiled = Buffer.from(whole);
      const at = Math.floor((whole.length * turn * 0.618) % whole.length);
      spoiled.writeUInt8((spoiled.readUInt8(at) + turn) % 256, at);
      writeFileSync(saved(), spoiled);
      if (verifyBackup(saved()).faults.length > 0) refused += 1;
      else {
        await back(place, saved(), `2026-11-25T14:03:${String(turn % 60).padStart(2, '0')}.000Z`);
        expect((await everything(place, company)).record).toEqual(record);
      }
    }
    expect(refused).toBeGreaterThan(40);
  });
});
