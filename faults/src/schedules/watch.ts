import {
  type Entry,
  originOf,
  type PullReply,
  type PushReply,
  readEntry,
  targetOf,
  type WireEntry,
} from '@brinewright/journal';
import type { SimDevice } from './sim-device.ts';
import { newerKinds } from './some-drafts.ts';
import type { Reached } from './states.ts';

/** What the world knows that a device does not. */
export type World = {
  readonly isAlive: (device: SimDevice) => boolean;
  readonly restores: () => number;
  readonly authorOf: (origin: string) => SimDevice | undefined;
};

/** Looks at what passes between devices and server, and notes which states were reached. */
export class Watch {
  readonly #reached: Reached;
  readonly #world: World;

  constructor(reached: Reached, world: World) {
    this.#reached = reached;
    this.#world = world;
  }

  async sawVerdicts(
    device: SimDevice,
    sent: readonly WireEntry[],
    verdicts: PushReply['verdicts'],
  ): Promise<void> {
    for (const [place, verdict] of verdicts.entries()) {
      const read = readEntry(sent[place] ?? { entry: undefined });
      if (!read.ok) continue;
      const { entry } = read.sealed;
      if (verdict.state === 'refused') this.#sawRefusal(entry, verdict.reason);
      else this.#sawKept(device, entry);
    }
  }

  async sawPage(device: SimDevice, entries: PullReply['entries']): Promise<void> {
    const all = await device.all();
    const held = new Map(all.map((one) => [one.entry.id, one]));
    const { device: name, epoch } = await device.store.transact((tx) => tx.state());
    const isTaken = (entry: Entry): boolean =>
      all.some((one) => isSameNumber(one.entry, entry) && one.durable !== epoch && one.displaced !== true);
    for (const wire of entries) {
      const read = readEntry(wire);
      if (!read.ok) continue;
      const { entry } = read.sealed;
      if (held.has(entry.id)) continue;
      if (isTaken(entry)) this.#reached.mark('fork found at pull');
      if (
        entry.device === name &&
        !isBelow(
          all.map((one) => one.entry),
          entry,
        )
      )
        this.#reached.mark('twin found by its entries');
      if (newerKinds.includes(entry.kind)) this.#reached.mark('newer kind passed on');
      this.#sawBeforeTarget(entry, held);
      held.set(entry.id, read.sealed);
    }
  }

  #sawBeforeTarget(entry: Entry, held: ReadonlyMap<string, unknown>): void {
    const redacts = targetOf(entry);
    if (redacts !== undefined && !held.has(redacts)) this.#reached.mark('redaction before its target');
    if (!entry.kind.startsWith('corrected/')) return;
    const { payload } = entry;
    if (typeof payload !== 'object' || payload === null || Array.isArray(payload)) return;
    if (typeof payload.target === 'string' && !held.has(payload.target))
      this.#reached.mark('correction before its target');
  }

  #sawRefusal(entry: Entry, reason: string): void {
    if (reason === 'lamport') this.#reached.mark('lamport refused');
    if (reason === 'not-owner') this.#reached.mark('redaction refused');
    if (reason !== 'forked') return;
    this.#reached.mark('fork found at push');
    const author = this.#world.authorOf(originOf(entry));
    if (this.#world.restores() > 0 && author !== undefined && !this.#world.isAlive(author))
      this.#reached.mark('fork after a restore with its author gone');
  }

  #sawKept(device: SimDevice, entry: Entry): void {
    const author = this.#world.authorOf(originOf(entry));
    if (author === device) return;
    if (entry.again !== undefined) this.#reached.mark('written again by another than the author');
    else if (this.#world.restores() > 0) this.#reached.mark('healed by another than the author');
  }
}

const isSameNumber = (a: Entry, b: Entry): boolean =>
  a.stream === b.stream && a.device === b.device && a.seq === b.seq;

const isBelow = (held: readonly Entry[], { stream, device, seq }: Entry): boolean =>
  held.some((one) => one.stream === stream && one.device === device && one.seq >= seq);
