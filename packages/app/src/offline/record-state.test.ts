import 'fake-indexeddb/auto';
import { v7 } from 'uuid';
import { expect, test } from 'vitest';
import { openDatabase } from './database.ts';
import { settleDevice } from './device-name.ts';
import { dexieStore } from './dexie-store.ts';
import { recordEntries } from './record-entries.ts';
import { recordState } from './record-state.ts';

test('the record is on this device, then sent, and back on it when the server lost what it had', async () => {
  const database = openDatabase('record-state');
  await settleDevice(database, '00000000-0000-7000-8000-00000000c0de');
  const stream = v7();
  const drafts = ['One', 'Two'].map((name) => ({
    stream,
    kind: 'site-described/1',
    payload: { name },
    about: {},
  }));
  await recordEntries(database, 'Ines', drafts);
  expect(await recordState(database)).toMatchObject({ state: 'device', counts: { waiting: 2, sent: 0 } });

  const store = dexieStore(database);
  const inEpoch = (epoch: string, some: { readonly refused?: 'too-large' } = {}) =>
    store.transact(async (tx) => {
      await tx.setState({ ...(await tx.state()), epoch });
      const [first, second] = await tx.entriesOf(stream);
      if (first === undefined || second === undefined) throw new Error('two were written');
      await tx.put([
        { ...first, durable: 'e1' },
        { ...second, durable: 'e1', ...some },
      ]);
    });
  await inEpoch('e1');
  expect(await recordState(database)).toMatchObject({ state: 'sent', counts: { waiting: 0, sent: 2 } });
  await inEpoch('e2');
  expect(await recordState(database)).toMatchObject({ state: 'device', counts: { waiting: 2, sent: 0 } });
  await inEpoch('e1', { refused: 'too-large' });
  expect(await recordState(database)).toMatchObject({ state: 'refused', counts: { refused: 1, sent: 1 } });
});
