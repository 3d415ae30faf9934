import { expect, it } from 'vitest';
import { MemoryStore } from '../store/memory-store.ts';
import { aHand, anEntry, nextUuid } from '../testing/some-entries.ts';
import { sent, transportSuite } from '../testing/transport-suite.ts';
import { type LoopbackOptions, loopback } from './loopback.ts';

const now = () => '2026-11-25T12:00:00.000Z';

const sessionOf = (company: string) => ({ company, pusher: 'phone', isOwner: false });

transportSuite('loopback', async () => {
  const company = nextUuid();
  const store = new MemoryStore(nextUuid);
  await store.begin(company);
  let state: ReturnType<NonNullable<LoopbackOptions['way']>> = 'open';
  return {
    transport: loopback({ store, session: sessionOf(company), now, way: () => state }),
    company,
    store,
    cut: async () => {
      state = 'no-answer';
    },
    turnAway: async () => {
      state = 'not-allowed';
    },
    close: () => store.close(),
  };
});

it('gives no answer where the store behind it fails', async () => {
  const company = nextUuid();
  const unbegun = loopback({ store: new MemoryStore(nextUuid), session: sessionOf(company), now });
  expect(await unbegun.push(sent([anEntry(aHand({ company }), 1)]))).toEqual({ state: 'no-answer' });
  expect(await unbegun.pull({ follow: { all: 0 } })).toEqual({ state: 'no-answer' });
  expect(await unbegun.offer({ have: [] })).toEqual({ state: 'no-answer' });
});

it('shares nothing with the store but what a message carries', async () => {
  const company = nextUuid();
  const store = new MemoryStore(nextUuid);
  await store.begin(company);
  const way = loopback({ store, session: sessionOf(company), now });
  const one = anEntry(aHand({ company }), 1);
  await way.push(sent([one]));
  const pulled = await way.pull({ follow: { all: 0 } });
  if (pulled.state !== 'answered') throw new Error(pulled.state);
  expect(pulled.value.entries[0]?.entry).toEqual(one.entry);
  expect(pulled.value.entries[0]?.entry).not.toBe((await store.find(company, one.entry.id))?.entry);
});
