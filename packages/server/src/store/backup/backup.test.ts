import { existsSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setImmediate as breathe } from 'node:timers/promises';
import { aHand, aRedaction, batchOf, entriesOf, nextUuid } from '@brinewright/journal/testing';
import { beforeAll, describe, expect, it } from 'vitest';
import { openFiles } from '../../files/file-store.ts';
import {
  codeOf,
  everything,
  fillPlace,
  mainFiles,
  now,
  openPlace,
  ownDeviceOf,
  type PostgresPlace,
  photoHash,
  trialFolder,
} from '../../testing/trial-record.ts';
import { withCluster } from '../../testing/with-cluster.ts';
import { migratePostgres, openPostgres } from '../open-postgres.ts';
import { openSqlite } from '../open-sqlite.ts';
import { backup } from './backup.ts';
import type { Place } from './place.ts';
import { verifyBackup } from './verify.ts';

const { within, saved, back, sqlitePlace } = trialFolder();

const rules = (newPlace: () => Promise<Place>): void => {
  it('gives back the whole record, with a new epoch and a new own device', async () => {
    const place = await newPlace();
    const company = await fillPlace(place);
    const before = await everything(place, company);
    const device = await ownDeviceOf(place, company);
    const made = await backup({ place, to: saved(), now });
    expect(made).toEqual({ path: saved(), company, entries: 1203, files: 1, spoiled: [] });
    expect(statSync(saved()).mode & 0o777).toBe(0o600);
    expect(verifyBackup(saved())).toEqual({ faults: [], company, madeAt: now, entries: 1203, files: 1 });

    const store = await openPlace(place);
    await store.push(batchOf(company, entriesOf(aHand({ company }), 5)));
    await store.close();
    await (await openFiles(place.files)).remove(company, photoHash);

    const restored = await back(place);
    expect(restored).toMatchObject({ company, entries: 1203, files: 1 });
    const after = await everything(place, company);
    expect(after.record).toEqual(before.record);
    expect(after.epoch).toBe(restored.epoch);
    expect(after.epoch).not.toBe(before.epoch);
    expect(await ownDeviceOf(place, company)).not.toBe(device);
    await expectOwnStill(place, company, device);
  });

  it('keeps what was there aside, entries that the backup lacks too', async () => {
    const place = await newPlace();
    const company = await fillPlace(place);
    await backup({ place, to: saved(), now });
    const store = await openPlace(place);
    await store.push(batchOf(company, entriesOf(aHand({ company }), 5)));
    await store.close();
    const before = await everything(place, company);
    const { aside } = await back(place);
    if (aside === undefined) throw new Error('nothing was kept aside');
    const elsewhere = sqlitePlace('elsewhere');
    if (place.kind === 'postgres') await back(elsewhere, aside);
    const kept = place.kind === 'postgres' ? elsewhere : { ...place, path: aside };
    expect((await everything(kept, company)).record).toEqual(before.record);
  });

  it('is one moment of a record that is being written to', async () => {
    const place = await newPlace();
    const company = await fillPlace(place);
    const store = await openPlace(place);
    const hand = aHand({ company });
    let isDone = false;
    let pushed = 0;
    const pushing = (async () => {
      for (; !isDone && pushed < 2000; pushed += 20) {
        await store.push(batchOf(company, entriesOf(hand, 20, pushed + 1)));
        await breathe();
      }
    })();
    const made = await backup({ place, to: saved(), now });
    isDone = true;
    await pushing;
    expect(pushed).toBeGreaterThan(0);
    expect(verifyBackup(saved()).faults).toEqual([]);
    expect((made.entries - 1203) % 20).toBe(0);
    expect(await store.state(company)).toMatchObject({ last: 1203 + pushed });
    await store.close();
    const copy = sqlitePlace('copy');
    await back(copy);
    expect((await everything(copy, company)).record.last).toBe(made.entries);
  });

  it('goes to the other kind of store and back with every hash', async () => {
    const place = await newPlace();
    const company = await fillPlace(place);
    const before = await everything(place, company);
    await backup({ place, to: saved(), now });
    const copy = sqlitePlace('copy');
    expect((await back(copy)).aside).toBeUndefined();
    expect((await everything(copy, company)).record).toEqual(before.record);
    const second = within('second.backup');
    await backup({ place: copy, to: second, now });
    await back(place, second);
    expect((await everything(place, company)).record).toEqual(before.record);
  });

  it('is not written where there is no workshop, nor over a file that is there', async () => {
    const place = await newPlace();
    expect(await codeOf(backup({ place, to: saved(), now }))).toBe('nothing-here');
    await fillPlace(place);
    writeFileSync(saved(), 'precious');
    expect(await codeOf(backup({ place, to: saved(), now }))).toBe('exists');
    expect(readFileSync(saved(), 'utf8')).toBe('precious');
    expect(existsSync(`${saved()}.part`)).toBe(false);
  });

  it('leaves out a file that is not what its name says, and says so', async () => {
    const place = await newPlace();
    const company = await fillPlace(place);
    writeFileSync(join(place.files, company, photoHash.slice(0, 2), photoHash), 'spoiled');
    expect(await backup({ place, to: saved(), now })).toMatchObject({ files: 0, spoiled: [photoHash] });
    expect(verifyBackup(saved()).faults).toEqual([]);
  });
};

/** A redaction by the device that was its own before the restore is taken from anyone still. */
const expectOwnStill = async (place: Place, company: string, device: string): Promise<void> => {
  const store = await openPlace(place);
  const redaction = aRedaction({ company, stream: company, device }, 2, nextUuid());
  const { verdicts } = await store.push(batchOf(company, [redaction]));
  expect(verdicts).toMatchObject([{ state: 'kept' }]);
  await store.close();
};

describe('a backup of a record on SQLite', () => {
  rules(async () => sqlitePlace('place'));

  it('is not put in place while a server has the record open', async () => {
    const place = sqlitePlace('place');
    const company = await fillPlace(place);
    await backup({ place, to: saved(), now });
    const store = await openSqlite(place.path);
    expect(await codeOf(back(place))).toBe('locked');
    expect((await store.state(company)).last).toBe(1203);
    await store.close();
  });

  it('restores a record whose file was wrecked, and keeps the wreck', async () => {
    const place = sqlitePlace('place');
    const company = await fillPlace(place);
    const before = await everything(place, company);
    await backup({ place, to: saved(), now });
    writeFileSync(place.path, 'wreck');
    writeFileSync(`${place.path}-wal`, 'its log');
    const { aside } = await back(place);
    expect(readFileSync(aside ?? '', 'utf8')).toBe('wreck');
    expect(readFileSync(`${aside}-wal`, 'utf8')).toBe('its log');
    expect((await everything(place, company)).record).toEqual(before.record);
  });

  it.each(['before anything was moved', 'between the old and the new'])(
    'is finished at the next opening when the restore was cut short %s',
    async (when) => {
      const place = sqlitePlace('place');
      const company = await fillPlace(place);
      const before = await everything(place, company);
      await backup({ place, to: saved(), now });
      const made = sqlitePlace('made');
      const { epoch } = await back(made);
      renameSync(made.path, `${place.path}.restored-20261125T140302Z`);
      if (when === 'between the old and the new')
        renameSync(place.path, `${place.path}.before-restore-20261125T140302Z`);
      const after = await everything(place, company);
      expect(after).toEqual({ record: before.record, epoch });
      expect(mainFiles(within('place'))).toEqual([
        'files',
        'workshop.sqlite',
        'workshop.sqlite.before-restore-20261125T140302Z',
        'workshop.sqlite.lock',
      ]);
    },
  );
});

withCluster('a backup of a record on PostgreSQL', (cluster) => {
  let drawn = 0;
  const newPlace = async (): Promise<PostgresPlace> => {
    drawn += 1;
    cluster().createDatabase(`place${drawn}`);
    const url = cluster().url('owner', `place${drawn}`);
    await migratePostgres(url, 'app');
    return { kind: 'postgres', url, files: within(`files${drawn}`) };
  };
  beforeAll(() => migratePostgres(cluster().url('owner')));
  rules(newPlace);

  it('leaves other companies of the database alone', async () => {
    const place = await newPlace();
    const store = await openPostgres(place.url);
    const other = aHand();
    await store.begin(other.company);
    await store.push(batchOf(other.company, entriesOf(other, 3)));
    await store.close();
    const company = await fillPlace(place);
    await backup({ place, to: saved(), now });
    await back(place);
    const after = await openPostgres(place.url);
    expect((await after.state(other.company)).last).toBe(3);
    expect((await after.state(company)).last).toBe(1203);
    await after.close();
  });

  it('is not put over the workshop of another company', async () => {
    const place = await newPlace();
    const source = sqlitePlace('source');
    const company = await fillPlace(place);
    await fillPlace(source);
    await backup({ place: source, to: saved(), now });
    expect(await codeOf(back(place))).toBe('other-workshop');
    expect((await everything(place, company)).record.last).toBe(1203);
  });

  it('can be made by the role of the server, but not be put in place by it', async () => {
    const place = await newPlace();
    const company = await fillPlace(place);
    const asApp: Place = { ...place, url: place.url.replace('owner@', 'app@') };
    await backup({ place: asApp, to: saved(), now });
    expect(await codeOf(back(asApp))).toBe('not-allowed');
    expect((await everything(place, company)).record.last).toBe(1203);
  });

  it('lets pushes that came during the restore follow the restored entries', async () => {
    const place = await newPlace();
    const company = await fillPlace(place);
    await backup({ place, to: saved(), now });
    const store = await openPostgres(place.url);
    const hands = Array.from({ length: 5 }, () => aHand({ company }));
    const restoring = back(place);
    const pushes = hands.map((hand) => store.push(batchOf(company, entriesOf(hand, 2))));
    const replies = await Promise.all(pushes);
    const { epoch } = await restoring;
    const { entries, last } = await store.pull(company, { all: 0 }, 5000);
    expect(entries.map(({ position }) => position)).toEqual(Array.from({ length: last }, (_, at) => at + 1));
    const held = new Set(entries.map(({ entry }) => entry.id));
    for (const reply of replies.filter((one) => one.epoch === epoch))
      for (const { id } of reply.verdicts) expect(held.has(id)).toBe(true);
    await store.close();
  });
});
