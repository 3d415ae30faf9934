import { expect, it } from 'vitest';
import type { Transport } from '../sync/transport.ts';
import { allIn } from '../testing/device-store-suite.ts';
import { lossyWay } from '../testing/lossy-way.ts';
import { nextUuid } from '../testing/some-entries.ts';
import { noteIn, Party, type PartyDevice, redactionOf } from '../testing/trial-party.ts';
import { counts, standingIn } from './counts.ts';
import { followAll } from './follow.ts';

/** A device about to meet the server, and how many entries there are in all. */
type Scene = { readonly party: Party; readonly device: PartyDevice; readonly all: number };

const usual = async (): Promise<Scene> => {
  const party = await Party.begin();
  const [device, other] = [await party.device(), await party.device()];
  await other.write(5);
  await other.sync();
  await device.write(5);
  return { party, device, all: 10 };
};

const restored = async (): Promise<Scene> => {
  const scene = await usual();
  await scene.device.sync();
  await scene.device.write(2);
  await scene.party.restore(3);
  return { ...scene, all: 12 };
};

const forked = async (): Promise<Scene> => {
  const { party, device: other } = await usual();
  await other.sync();
  const device = other.copy();
  await other.write(3);
  await other.sync();
  await device.write(3);
  return { party, device, all: 16 };
};

const scenes = [
  ['after a day’s work', usual],
  ['after the server was restored', restored],
  ['with a number that was given twice', forked],
] as const;

/** Breaks a round off at each message in turn; afterwards another round is made. */
const breakEverywhere = async (
  scene: () => Promise<Scene>,
  when: 'before' | 'after',
  judge: (end: Scene, n: number) => Promise<void>,
): Promise<number> => {
  for (let n = 1; n < 100; n += 1) {
    const set = await scene();
    const way = lossyWay(set.device.way(), n, when);
    const { state } = await set.device.sync(way, { most: 2 });
    if (way.calls() < n) return n - 1;
    expect(state).toBe('no-answer');
    expect(await set.device.sync(set.device.way(), { most: 2 })).toMatchObject({ state: 'done' });
    await judge(set, n);
  }
  throw new RangeError('a round has no end');
};

const everythingOnce = async ({ party, device, all }: Scene): Promise<void> => {
  const log = await party.log();
  expect(log.map(({ position }) => position)).toEqual(log.map((_, at) => at + 1));
  expect(log).toHaveLength(all);
  expect(new Set(await party.origins()).size).toBe(all);
  const standing = standingIn(await device.held()).map(({ id }) => id);
  expect(standing.toSorted()).toEqual(log.map(({ entry }) => entry.id).toSorted());
  expect(await counts(device.store)).toEqual({ here: all, sent: all, refused: 0 });
  expect(await device.sync()).toEqual({ state: 'done', sent: 0, received: 0, refused: 0, unreadable: 0 });
};

it.each(
  scenes.flatMap(([name, scene]) => [
    { name, scene, when: 'before' as const },
    { name, scene, when: 'after' as const },
  ]),
)(
  'may break off at any message, lost $when it was done, $name: all is sent and received once then (S1–S4)',
  async ({ scene, when }) => {
    expect(await breakEverywhere(scene, when, everythingOnce)).toBeGreaterThan(5);
  },
);

it('may be done by two tabs at once, while a third writes (J2, S1, S3)', async () => {
  const { party, device } = await forked();
  const rounds = await Promise.all([
    device.sync(device.way(), { most: 2 }),
    device.sync(device.way(), { most: 3 }),
    device.write(2),
  ]);
  expect(rounds.slice(0, 2)).toMatchObject([{ state: 'done' }, { state: 'done' }]);
  await device.sync();
  await everythingOnce({ party, device, all: 18 });
});

it('tells how many went and came, and leaves nothing for the next (S1, S3)', async () => {
  const { device } = await usual();
  const result = await device.sync(device.way(), { most: 2 });
  expect(result).toEqual({ state: 'done', sent: 5, received: 5, refused: 0, unreadable: 0 });
});

it('sends in fold order, in batches no longer than asked, as long as there is more (S1, J4)', async () => {
  const { device } = await usual();
  await device.writeOne(noteIn(nextUuid(), 'elsewhere'));
  await device.sync(lossyWay(device.way(), 2, 'before'));
  const written = await device.write(4);
  const batches: unknown[][] = [];
  const inner = device.way();
  const push: Transport['push'] = (request) => {
    batches.push(request.entries.map(({ entry }) => entry));
    return inner.push(request);
  };
  await device.sync({ ...inner, push }, { most: 3 });
  expect(batches.map(({ length }) => length).every((length) => length <= 3)).toBe(true);
  expect(batches.flat().slice(-4)).toEqual(written.map(({ entry }) => entry));
});

it('puts no more text into one message than the server takes (S1)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  const long = 'x'.repeat(250_000);
  await device.writeDrafts(Array.from({ length: 12 }, () => noteIn(party.stream, long)));
  const lengths: number[] = [];
  const inner = device.way();
  const push: Transport['push'] = (request) => {
    lengths.push(JSON.stringify(request).length);
    return inner.push(request);
  };
  expect(await device.sync({ ...inner, push })).toMatchObject({ sent: 12 });
  expect(lengths.length).toBeGreaterThan(1);
  expect(Math.max(...lengths)).toBeLessThan(2_100_000);
});

it('stops where the device is let in no more, and everything stays (S1)', async () => {
  const { party, device } = await usual();
  const before = (await allIn(device.store)).held;
  const turned = { ...device.way(), push: async () => ({ state: 'not-allowed' as const }) };
  const offered = { ...turned, offer: async () => ({ state: 'not-allowed' as const }) };
  expect(await device.sync(offered)).toMatchObject({ state: 'not-allowed', sent: 0 });
  expect((await allIn(device.store)).held).toEqual(before);
  expect(await party.log()).toHaveLength(5);
  expect(await device.sync()).toMatchObject({ state: 'done', sent: 5, received: 5 });
});

it('keeps what is refused here, visible, and does not send it again (S1)', async () => {
  const { party, device } = await usual();
  await device.sync();
  const [target] = await device.held();
  if (target === undefined) throw new RangeError('ten are held');
  const redaction = await device.writeOne(redactionOf(target));
  expect(await device.sync()).toMatchObject({ state: 'done', sent: 0, refused: 1 });
  expect(await device.find(redaction.entry.id)).toMatchObject({ ...redaction, refused: 'not-owner' });
  expect(await counts(device.store)).toMatchObject({ here: 11, sent: 10, refused: 1 });
  expect(await device.sync()).toMatchObject({ state: 'done', sent: 0, refused: 0 });
  expect(await party.log()).toHaveLength(10);
});

it('sends an order that lay too far ahead again, once others have come within reach of it (J4, S1)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  await device.store.transact(async (tx) => tx.setState({ ...(await tx.state()), lamport: 1_500_000 }));
  const [far] = await device.write(1);
  if (far === undefined) throw new RangeError('one');
  expect(await device.sync()).toMatchObject({ sent: 0, refused: 1 });
  expect(await device.find(far.entry.id)).toMatchObject({ refused: 'lamport' });
  const other = await party.device();
  await other.store.transact(async (tx) => tx.setState({ ...(await tx.state()), lamport: 900_000 }));
  await other.write(1);
  await other.sync();
  expect(await device.sync()).toMatchObject({ sent: 1, refused: 0 });
  expect(await party.origins()).toContain(far.entry.id);
});

it('counts entries it cannot read, holds the others, and goes on behind them', async () => {
  const { device } = await usual();
  const inner = device.way();
  const pull: Transport['pull'] = async (request) => {
    const reply = await inner.pull(request);
    if (reply.state !== 'answered') return reply;
    const [first, ...rest] = reply.value.entries;
    const odd = first === undefined ? [] : [{ ...first, entry: { of: 'another make' } }];
    return { state: 'answered', value: { ...reply.value, entries: [...odd, ...rest] } };
  };
  const { state, received, unreadable } = await device.sync({ ...inner, pull });
  expect([state, received, unreadable]).toEqual(['done', 4, 1]);
});

it('takes an answer with too few verdicts, or a page that promises more and holds nothing, for none', async () => {
  const { device } = await usual();
  const inner = device.way();
  const push: Transport['push'] = async (request) => {
    const reply = await inner.push(request);
    return reply.state === 'answered'
      ? { state: 'answered', value: { ...reply.value, verdicts: reply.value.verdicts.slice(1) } }
      : reply;
  };
  expect(await device.sync({ ...inner, push })).toMatchObject({ state: 'no-answer', sent: 0 });
  const pull: Transport['pull'] = async (request) => {
    const reply = await inner.pull(request);
    return reply.state === 'answered'
      ? { state: 'answered', value: { ...reply.value, entries: [], more: true } }
      : reply;
  };
  expect(await device.sync({ ...inner, pull })).toMatchObject({ state: 'no-answer', received: 0 });
  expect(await device.sync()).toMatchObject({ state: 'done', received: 5 });
});

it('moves the cursor of a page only with the page itself (S3)', async () => {
  const { device } = await usual();
  const office = await device.party.device();
  await office.store.transact(followAll);
  let pages = 0;
  const inner = office.way();
  const pull: Transport['pull'] = async (request) => {
    pages += 1;
    return pages > 2 ? { state: 'no-answer' } : inner.pull(request);
  };
  await office.sync({ ...inner, pull }, { most: 2 });
  expect(await office.state()).toMatchObject({ all: 4 });
  expect(await office.held()).toHaveLength(4);
});

it('notes how far the server is ahead of its clock, by the middle of the way there and back (J5)', async () => {
  const { device } = await usual();
  let time = Date.UTC(2026, 10, 25, 9) - 1_000;
  const now = (): number => {
    time += 1_000;
    return time;
  };
  await device.sync(lossyWay(device.way(), 2, 'before'), { now });
  expect((await device.state()).clock).toBe(59_500);
});
