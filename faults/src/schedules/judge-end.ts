import {
  byFoldOrder,
  type Entry,
  fold,
  foldStock,
  foldWorkshop,
  type Held,
  isBefore,
  isRedaction,
  type Logged,
  originOf,
  type Sealed,
  type StreamState,
  seal,
  targetOf,
  vectorOf,
} from '@brinewright/journal';
import type { SimDevice } from './sim-device.ts';
import type { TrialWorld } from './trial-world.ts';

/** After all is healed: what is wrong, in words for us. Nothing, where the rules hold. */
export const judgeEnd = async (world: TrialWorld): Promise<readonly string[]> => {
  const log = await world.log();
  const held = new Map<SimDevice, readonly Held[]>();
  for (const device of world.devices) held.set(device, await device.all());
  const end: End = { world, log, held, blurred: blurredIn([...held.values()].flat()) };
  const faults = [...world.faults, ...ofLog(end), ...missing(end), ...altered(end), ...notTakenOut(end)];
  for (const device of world.devices) faults.push(...(await ofDevice(end, device)));
  return faults;
};

type End = {
  readonly world: TrialWorld;
  readonly log: readonly Logged[];
  readonly held: ReadonlyMap<SimDevice, readonly Held[]>;
  /** Origins that a redaction aims at which only those hold who may not send it. */
  readonly blurred: ReadonlySet<string>;
};

const blurredIn = (held: readonly Held[]): ReadonlySet<string> => {
  const origins = new Map(held.map(({ entry }) => [entry.id, originOf(entry)]));
  return new Set(
    held.flatMap(({ entry, refused }) => {
      const target = refused === undefined ? undefined : targetOf(entry);
      return target === undefined ? [] : [target, origins.get(target) ?? target];
    }),
  );
};

const ofLog = ({ log }: End): readonly string[] => {
  const faults: string[] = [];
  for (const [place, { position }] of log.entries())
    if (position !== place + 1) faults.push(`position ${position} stands at ${place + 1}`);
  const numbers = log.map(({ entry }) => `${entry.stream}/${entry.device}/${entry.seq}`);
  if (new Set(numbers).size < numbers.length) faults.push('a number was given twice');
  return faults;
};

/** Everything ever written is on the server, but for what a disaster took and what was refused and lies on a device. */
const missing = ({ world, log, held }: End): readonly string[] => {
  const there = new Set(log.map(({ entry }) => originOf(entry)));
  const refused = new Set(
    [...held.values()].flat().flatMap((one) => (one.refused ? [originOf(one.entry)] : [])),
  );
  return [...world.written]
    .filter(([origin]) => !there.has(origin) && !world.gone.has(origin) && !refused.has(origin))
    .map(
      ([origin, { entry, author }]) => `missing: ${origin} (${entry.kind} by ${author?.label ?? 'server'})`,
    );
};

/** What was said and its place in the order are as they were, unless taken out. */
const altered = ({ world, log }: End): readonly string[] => {
  const origins = new Map(log.map(({ entry }) => [entry.id, originOf(entry)]));
  const meaning = (entry: Entry): string => {
    const { again: _, ...rest } = entry;
    const number = { id: originOf(entry), device: '', seq: 0, seen: {} };
    return seal({ ...rest, ...number, payload: pointing(entry.payload, origins) }).text;
  };
  return log.flatMap(({ entry, redacted }) => {
    const written = world.written.get(originOf(entry))?.entry;
    if (written === undefined) return [`never written: ${entry.id}`];
    return redacted || meaning(written) === meaning(entry) ? [] : [`altered: ${entry.id}`];
  });
};

/** References by origin, since what points at an entry written again may point at either. */
const pointing = (payload: Entry['payload'], origins: ReadonlyMap<string, string>): Entry['payload'] => {
  if (typeof payload !== 'object' || payload === null || Array.isArray(payload)) return payload;
  const { target } = payload;
  return typeof target === 'string' ? { ...payload, target: origins.get(target) ?? target } : payload;
};

/** What a redaction on record aims at has no content on record, however often it was written again (R1). */
const notTakenOut = ({ log }: End): readonly string[] => {
  const origins = new Map(log.map(({ entry }) => [entry.id, originOf(entry)]));
  const targets = new Set(
    log.flatMap(({ entry }) => {
      const target = targetOf(entry);
      return target === undefined ? [] : [origins.get(target) ?? target];
    }),
  );
  return log
    .filter(({ entry, redacted }) => targets.has(originOf(entry)) && !redacted && !isRedaction(entry))
    .map(({ entry }) => `content still on record: ${entry.id}${entry.again ? ', written again' : ''}`);
};

const ofDevice = async (end: End, device: SimDevice): Promise<readonly string[]> => {
  const all = end.held.get(device) ?? [];
  const { state, streams } = await device.store.transact(async (tx) => ({
    state: await tx.state(),
    streams: await tx.streams(),
  }));
  const faults: string[] = [];
  const pending = all.filter(({ refused }) => refused === 'forked');
  if (pending.length > 0) faults.push(`${pending.length} forked entries were not written again`);
  if (all.some(({ entry }) => entry.lamport > state.lamport))
    faults.push('its order lies behind what it holds');
  for (const stream of streams.filter(({ follows }) => follows)) faults.push(...ofStream(end, all, stream));
  return faults.map((fault) => `${device.label}: ${fault}`);
};

/** One that follows a stream holds what the server holds of it, and sees in it what the server would see. */
const ofStream = (end: End, all: readonly Held[], state: StreamState): readonly string[] => {
  const { stream } = state;
  const inStream = all.filter(({ entry }) => entry.stream === stream);
  const standing = inStream.filter(({ displaced, refused }) => displaced !== true && refused === undefined);
  const there = end.log.filter(({ entry }) => entry.stream === stream);
  const here = standing.map(tellOf(end));
  const onServer = there.map(tellOf(end));
  const faults = [
    ...without(here, onServer).map((line) => `only here: ${line}`),
    ...without(onServer, here).map((line) => `only on the server: ${line}`),
    ...vectorFaults(state, inStream),
    ...orderFaults(there),
  ];
  if (faults.length === 0 && folded(end, stream, standing) !== folded(end, stream, there))
    faults.push(`another fold of ${stream}`);
  return faults;
};

const without = (all: readonly string[], others: readonly string[]): readonly string[] => {
  const known = new Set(others);
  return all.filter((one) => !known.has(one));
};

const tellOf =
  ({ blurred }: End) =>
  ({ entry, hash, redacted }: Sealed): string => {
    const isBlurred = blurred.has(entry.id) || blurred.has(originOf(entry));
    return `${entry.kind} ${entry.id} ${hash}${redacted && !isBlurred ? ' taken out' : ''}`;
  };

const vectorFaults = ({ vector }: StreamState, held: readonly Held[]): readonly string[] => {
  const right = Object.fromEntries(vectorOf(held.map(({ entry }) => entry)));
  const isSame = Object.keys({ ...right, ...vector }).every((device) => right[device] === vector[device]);
  return isSame ? [] : [`vector is ${JSON.stringify(vector)}, not ${JSON.stringify(right)}`];
};

/** The order respects what was known (J4, J3). */
const orderFaults = (there: readonly Sealed[]): readonly string[] =>
  there.flatMap((a) =>
    there
      .filter((b) => isBefore(a.entry, b.entry) && byFoldOrder(a.entry, b.entry) > 0)
      .map((b) => `${a.entry.id} was known to ${b.entry.id} and stands behind it`),
  );

const folded = ({ world: { places }, blurred }: End, stream: string, sealed: readonly Sealed[]): string => {
  const entries = sealed
    .map(({ text }): Entry => JSON.parse(text))
    .filter((entry) => !blurred.has(entry.id) && !blurred.has(originOf(entry)));
  if (stream === places.van) return JSON.stringify(foldStock(stream, entries));
  return JSON.stringify(stream === places.company ? foldWorkshop(entries) : fold(entries));
};
