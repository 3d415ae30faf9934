import { expect, it } from 'vitest';
import type { Reply, Transport } from '../sync/transport.ts';
import { Party, type PartyDevice } from '../testing/trial-party.ts';
import { type DriveOptions, driveSync, type Nap } from './drive-sync.ts';

/** A clock that stands still: naps are noted, and end when the test says so. */
const stillClock = () => {
  const naps: number[] = [];
  let wake: () => void = () => undefined;
  let asleep: () => void = () => undefined;
  let nextNap = new Promise<void>((resolve) => {
    asleep = resolve;
  });
  const sleep = (milliseconds: number): Nap => {
    naps.push(milliseconds);
    const over = new Promise<void>((resolve) => {
      wake = resolve;
    });
    asleep();
    return { over, cancel: () => wake() };
  };
  return {
    naps,
    sleep,
    /** Until the driver sleeps for the next time. */
    asleep: async (): Promise<void> => {
      await nextNap;
      nextNap = new Promise<void>((resolve) => {
        asleep = resolve;
      });
    },
    pass: (): void => wake(),
  };
};

const waits = { idle: 60_000, shortest: 1_000, longest: 6_000 };

const drive = (device: PartyDevice, way: Transport, more: Partial<DriveOptions> = {}) => {
  const clock = stillClock();
  const told: unknown[] = [];
  const driver = driveSync(device.store, way, {
    ...device.options,
    sleep: clock.sleep,
    chance: () => 1,
    tell: (result) => told.push(result),
    waits,
    ...more,
  });
  return { clock, told, driver };
};

/** A way on which all is answered so, as long as `state` says. */
const shut = (inner: Transport) => {
  const way: { state: 'no-answer' | 'not-allowed' | 'open'; calls: number } = {
    state: 'no-answer',
    calls: 0,
  };
  const through = async <T>(send: () => Promise<Reply<T>>): Promise<Reply<T>> => {
    way.calls += 1;
    return way.state === 'open' ? send() : { state: way.state };
  };
  const transport: Transport = {
    ...inner,
    push: (request) => through(() => inner.push(request)),
    pull: (request) => through(() => inner.pull(request)),
    offer: (request) => through(() => inner.offer(request)),
  };
  return { way, transport };
};

const aDevice = async () => {
  const party = await Party.begin();
  const device = await party.device();
  await device.write(1);
  return { party, device };
};

it('waits twice as long after each failure, up to the longest, and anew after a meeting that went well', async () => {
  const { device } = await aDevice();
  const { way, transport } = shut(device.way());
  const { clock, driver } = drive(device, transport);
  for (let times = 0; times < 5; times += 1) {
    await clock.asleep();
    clock.pass();
  }
  await clock.asleep();
  expect(clock.naps).toEqual([1_000, 2_000, 4_000, 6_000, 6_000, 6_000]);
  way.state = 'open';
  clock.pass();
  await clock.asleep();
  expect(clock.naps.at(-1)).toBe(60_000);
  way.state = 'no-answer';
  clock.pass();
  await clock.asleep();
  expect(clock.naps.at(-1)).toBe(1_000);
  driver.stop();
  await driver.ended;
});

it('waits from half to the whole of that, by chance', async () => {
  const { device } = await aDevice();
  const { transport } = shut(device.way());
  const { clock, driver } = drive(device, transport, { chance: () => 0 });
  await clock.asleep();
  clock.pass();
  await clock.asleep();
  expect(clock.naps).toEqual([500, 1_000]);
  driver.stop();
  await driver.ended;
});

it('tells how each meeting went', async () => {
  const { device } = await aDevice();
  const { way, transport } = shut(device.way());
  const { clock, driver, told } = drive(device, transport);
  await clock.asleep();
  way.state = 'open';
  clock.pass();
  await clock.asleep();
  expect(told).toMatchObject([
    { state: 'no-answer', sent: 0 },
    { state: 'done', sent: 1 },
  ]);
  driver.stop();
  await driver.ended;
});

it('meets the server at once when there is news, though it sleeps', async () => {
  const { device, party } = await aDevice();
  const { clock, driver } = drive(device, device.way());
  await clock.asleep();
  await device.write(1);
  driver.nudge();
  await clock.asleep();
  expect(await party.log()).toHaveLength(2);
  expect(clock.naps).toEqual([60_000, 60_000]);
  driver.stop();
  await driver.ended;
});

it('meets the server again without sleep when news comes during a meeting', async () => {
  const { device } = await aDevice();
  const inner = device.way();
  let rounds = 0;
  const transport: Transport = {
    ...inner,
    offer: (request) => {
      driven.driver.nudge();
      return inner.offer(request);
    },
  };
  const driven = drive(device, transport, {
    tell: () => {
      rounds += 1;
    },
  });
  await driven.clock.asleep();
  expect([rounds, driven.clock.naps]).toEqual([2, [60_000]]);
  driven.driver.stop();
  await driven.driver.ended;
});

it('ends when it is stopped, asleep or at work, and sends nothing from then on', async () => {
  const { device } = await aDevice();
  const { way, transport } = shut(device.way());
  const { clock, driver } = drive(device, transport);
  await clock.asleep();
  driver.stop();
  await driver.ended;
  const { calls } = way;
  driver.nudge();
  expect(way.calls).toBe(calls);

  const other = drive(device, transport);
  other.driver.stop();
  await other.driver.ended;
  expect(other.clock.naps).toEqual([]);
  expect(other.told).toHaveLength(1);
});

it('ends by itself where the server turns the device away', async () => {
  const { device } = await aDevice();
  const { way, transport } = shut(device.way());
  way.state = 'not-allowed';
  const { driver, told, clock } = drive(device, transport);
  await driver.ended;
  expect(told).toMatchObject([{ state: 'not-allowed' }]);
  expect(clock.naps).toEqual([]);
  expect(await device.held()).toHaveLength(1);
});

it('tells where the storage of the device fails, and tries again', async () => {
  const { device, party } = await aDevice();
  device.before = (call) => {
    if (call === 'quota') throw new RangeError('no room');
  };
  const { clock, driver, told } = drive(device, device.way());
  await clock.asleep();
  expect(told).toMatchObject([{ state: 'failed', error: new RangeError('no room') }]);
  expect(clock.naps).toEqual([1_000]);
  device.before = () => undefined;
  clock.pass();
  await clock.asleep();
  expect(told.at(-1)).toMatchObject({ state: 'done' });
  expect(await party.log()).toHaveLength(1);
  driver.stop();
  await driver.ended;
});
