import 'fake-indexeddb/auto';
import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import { saveBundle, takeBundle } from './bundle-file.ts';
import { openDatabase } from './database.ts';
import { settleDevice } from './device-name.ts';
import { recordEntries } from './record-entries.ts';

const company = '00000000-0000-7000-8000-00000000c0de';
const now = '2026-11-25T09:00:00Z';

const deviceOf = async (name: string, of = company) => {
  const database = openDatabase(name);
  const state = await settleDevice(database, of);
  return { database, state };
};

describe('everything on the device as one file', () => {
  test('read on another device all entries and photos are there, under a name of its own', async () => {
    const here = await deviceOf('here');
    const stream = v7();
    await recordEntries(here.database, 'Ines', [
      { stream, kind: 'site-opened/1', payload: { name: 'Saltmere Laundry' }, about: {} },
    ]);
    const bytes = new TextEncoder().encode('abc').buffer;
    const hash = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
    await here.database.files.put({ hash, bytes, type: 'image/jpeg', size: 3, state: 'waiting', kept: now });

    const there = await deviceOf('there');
    const text = await (await saveBundle(here.database)).text();
    expect(await takeBundle(there.database, text, now)).toEqual({ state: 'taken', fresh: 1 });
    expect((await there.database.entries.toArray()).map(({ stream: of }) => of)).toEqual([stream]);
    expect((await there.database.files.get(hash))?.size).toBe(3);
    const named = (await there.database.device.get('state'))?.device;
    expect(named).not.toBe(there.state.device);
    expect(named).not.toBe(here.state.device);
    expect(await takeBundle(there.database, text, now)).toEqual({ state: 'taken', fresh: 0 });
  });

  test('a photo that is not what its name says is left out', async () => {
    const { database } = await deviceOf('damaged');
    const bundle = {
      schema: 1,
      company,
      entries: [],
      files: [{ hash: 'f'.repeat(64), type: 'image/jpeg', base64: 'YWJj' }],
    };
    expect(await takeBundle(database, JSON.stringify(bundle), now)).toEqual({ state: 'taken', fresh: 0 });
    expect(await database.files.count()).toBe(0);
  });

  test('a file of another workshop, or no such file at all, changes nothing', async () => {
    const { database } = await deviceOf('mine');
    const other = await deviceOf('other', '00000000-0000-7000-8000-00000000beef');
    const text = await (await saveBundle(other.database)).text();
    expect(await takeBundle(database, text, now)).toEqual({ state: 'other-company' });
    expect(await takeBundle(database, 'not json', now)).toEqual({ state: 'no-bundle' });
    expect(await database.entries.count()).toBe(0);
  });
});
