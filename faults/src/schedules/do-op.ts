import {
  bundleOf,
  type Draft,
  type Entry,
  follow,
  followAll,
  importBundle,
  isRedaction,
  isTombstone,
  readBundle,
  seal,
  unfollow,
} from '@brinewright/journal';
import { type Random, randomFrom } from '../random.ts';
import type { Op, OpKind } from './ops.ts';
import { Crash, SimDevice } from './sim-device.ts';
import { someDraft } from './some-drafts.ts';
import type { TrialWorld } from './trial-world.ts';
import type { Trouble } from './way.ts';

type Scene = {
  readonly world: TrialWorld;
  readonly random: Random;
  readonly device: SimDevice;
  readonly stream: string;
};

export const doOp = async (world: TrialWorld, op: Op): Promise<void> => {
  const random = randomFrom(op.salt);
  world.tick();
  const at = op.at ?? random.between(0, world.devices.length - 1);
  const device = world.devices.at(at % world.devices.length);
  const streams = world.streams;
  const stream = streams[(op.stream ?? random.between(0, streams.length - 1)) % streams.length];
  if (device === undefined || stream === undefined) return;
  await does[op.kind]({ world, random, device, stream });
};

const mostDevices = 9;
const year = 365 * 24 * 3600 * 1000;

const does: Readonly<Record<OpKind, (scene: Scene) => Promise<void>>> = {
  write: async (scene) => {
    await scene.world.write(scene.device, someDrafts(scene));
  },
  correct: async ({ world, random, device, stream }) => {
    const target = await someHeld(device, random, stream);
    if (target === undefined) return;
    const payload = someDraft(random, world.places, target.stream).payload;
    const how = random.between(1, 4) === 1 ? { withdrawn: 'typed at the wrong unit' } : { payload };
    await world.write(device, [draftOn(target, 'corrected/1', { target: target.id, ...how })]);
  },
  redact: async ({ world, random, device, stream }) => {
    const target = await someHeld(device, random, stream);
    const mayTry = device.isOwner || random.between(1, 3) === 1;
    if (target === undefined || !mayTry) return;
    await world.write(device, [draftOn(target, 'redacted/1', { target: target.id, reason: 'asked for' })]);
  },
  'write-and-crash': async (scene) => {
    const { world, random, device } = scene;
    device.dieAfter(random.between(1, 6));
    try {
      await world.write(device, someDrafts(scene));
    } catch (error) {
      if (!(error instanceof Crash)) throw error;
      world.reached.mark('crash in a write');
    } finally {
      device.live();
    }
  },
  sync: async ({ world, random, device }) => {
    await world.sync(device, random);
  },
  'sync-cut': async ({ world, random, device }) => {
    await world.sync(device, random, someCut(random));
  },
  'sync-rough': async ({ world, random, device }) => {
    await world.sync(device, random, random.between(1, 3) === 1 ? someCut(random) : { kind: 'none' }, true);
  },
  'sync-crash': async ({ world, random, device }) => {
    const result = await world.sync(device, random, { kind: 'crash-in-page', write: random.between(3, 30) });
    if (result === undefined) world.reached.mark('crash between page and cursor');
  },
  'sync-two-tabs': async (scene) => {
    const { world, random, device } = scene;
    world.reached.mark('two tabs at once');
    const other = randomFrom(random.between(1, 1_000_000));
    await Promise.all([
      world.sync(device, random),
      world.sync(device, other, { kind: 'none' }, true),
      world.write(device, someDrafts(scene)),
    ]);
  },
  late: async ({ world, random }) => {
    const [message] = world.late.splice(random.between(0, Math.max(0, world.late.length - 1)), 1);
    if (message === undefined) return;
    world.reached.mark('delivered late');
    await message();
  },
  clock: async ({ world, random, device }) => {
    const years = random.between(-3, 3);
    device.clockError = years * year + random.between(-600, 600) * 1000;
    if (years !== 0) world.reached.mark('clock years off');
  },
  copy: async ({ world, device }) => {
    if (world.devices.length >= mostDevices) return;
    world.devices.push(device.copy({ ...device, label: `${device.label}, copied` }));
    world.reached.mark('profile copied');
  },
  evict: ({ world, device }) =>
    world.losing('evicting', true, async () => {
      const fresh = SimDevice.fresh(device, world.places.company, world.newId());
      await followAsBefore(device, fresh);
      world.devices[world.devices.indexOf(device)] = fresh;
      world.reached.mark('storage evicted');
    }),
  follow: async ({ world, device, stream }) => {
    await device.store.transact(async (tx) => {
      if (device.isOffice) await followAll(tx);
      const state = await tx.stream(stream);
      if (state !== undefined && !state.follows) world.reached.mark('followed anew');
      await follow(tx, stream);
    });
  },
  unfollow: ({ world, device, stream }) =>
    world.losing('letting go', false, async () => {
      const options = world.optionsOf(device, 10);
      const { state } = await unfollow(device.store, world.wayOf(device), stream, options);
      if (state === 'let-go') world.reached.mark('let go of a stream');
      if (state === 'unsent') world.reached.mark('stream not let go of: unsent');
    }),
  import: async (scene) => {
    const { world, random, device } = scene;
    if (device.isSpoiled) return;
    const into = intoWhich(scene);
    const bundle = readBundle(JSON.parse(JSON.stringify(await bundleOf(device.store))));
    if (bundle.state !== 'read' || bundle.refused.length > 0) {
      world.faults.push(`the bundle of ${device.label} cannot be read`);
      return;
    }
    const writer = random.pick([device, into]);
    await Promise.all([
      importBundle(into.store, bundle, world.newId),
      world.write(writer, someDrafts(scene)),
      world.sync(device, random),
    ]);
    world.reached.mark('import while another device writes');
  },
  'spoil-order': async (scene) => {
    const { world, device } = scene;
    if (device.isOffice || device.isSpoiled) return;
    device.isSpoiled = true;
    await device.store.transact(async (tx) => {
      const state = await tx.state();
      await tx.setState({ ...state, lamport: state.lamport + 3_000_000 });
    });
    await world.write(device, someDrafts(scene));
  },
  'server-write': (scene) => serverWrite(scene),
  'server-restart': async ({ world }) => {
    const before = JSON.stringify(await world.log());
    await world.server.restart();
    if (JSON.stringify(await world.log()) !== before) world.faults.push('a restart changed the log');
    world.reached.mark('server restarted');
  },
  'server-backup': ({ world }) => world.server.backup(),
  'server-restore': ({ world }) =>
    world.losing('restoring', true, async () => {
      const before = await world.log();
      if (!(await world.server.restoreOldest())) return;
      world.restores += 1;
      world.reached.mark('restored from an old backup');
      if ((await world.log()).length < before.length)
        world.reached.mark('restored without what it had acknowledged');
    }),
};

const someDrafts = ({ world, random, stream }: Scene): readonly Draft[] =>
  Array.from({ length: random.between(1, 4) }, () => someDraft(random, world.places, stream));

const draftOn = ({ stream, about }: Entry, kind: string, payload: Draft['payload']): Draft => ({
  stream,
  kind,
  payload,
  about,
});

/** One that may be corrected or redacted. */
const someHeld = async (device: SimDevice, random: Random, stream: string): Promise<Entry | undefined> => {
  const held = (await device.all())
    .map(({ entry }) => entry)
    .filter((entry) => entry.stream === stream && !isTombstone(entry))
    .filter((entry) => !isRedaction(entry) && !entry.kind.startsWith('corrected/'));
  return held[random.between(0, Math.max(0, held.length - 1))];
};

const someCut = (random: Random): Trouble =>
  random.pick<Trouble>([
    { kind: 'request-lost', call: random.between(1, 6) },
    { kind: 'reply-lost', call: random.between(1, 6) },
    { kind: 'turned-away', call: random.between(1, 6) },
    { kind: 'cut-between-pages' },
    { kind: 'killed-before-pull' },
  ]);

const intoWhich = ({ world, random, device }: Scene): SimDevice => {
  const others = world.devices.filter((one) => one !== device);
  if (others.length >= mostDevices - 1 || random.between(1, 3) === 1)
    return others[random.between(0, others.length - 1)] ?? device;
  const label = `${device.label}, from a bundle`;
  const fresh = SimDevice.fresh({ ...device, label }, world.places.company, world.newId());
  world.devices.push(fresh);
  return fresh;
};

const followAsBefore = async (old: SimDevice, fresh: SimDevice): Promise<void> => {
  const followed = await old.store.transact((tx) => tx.streams());
  await fresh.store.transact(async (tx) => {
    if (old.isOffice) await followAll(tx);
    for (const { stream, follows } of followed) if (follows) await follow(tx, stream);
  });
};

/** What is entered on the workshop's own page. */
const serverWrite = async (scene: Scene): Promise<void> => {
  const { world, stream } = scene;
  const { company } = world.places;
  const from = { company, pusher: 'workshop', received: world.serverNow() };
  const drafts = someDrafts(scene);
  const { kept } = await world.server.store.write(from, [stream], ({ device, lamport, vectors }) => {
    const { [device]: own = 0, ...seen } = Object.fromEntries(vectors.get(stream) ?? []);
    return drafts.map((draft, place) =>
      seal({
        ...draft,
        id: world.newId(),
        company,
        device,
        seq: own + place + 1,
        lamport: lamport + place + 1,
        seen,
        author: 'workshop',
        wall: world.serverNow(),
        zone: 'America/Chicago',
        app: 'trial',
      }),
    );
  });
  for (const { entry } of kept) world.written.set(entry.id, { entry, author: undefined });
  world.reached.mark('own device of the server wrote');
};
