import { type PullReply, type Reply, readEntry, type Sealed, type Transport } from '@brinewright/journal';
import type { Happening } from '../history/event.ts';
import type { Random } from '../random.ts';
import { trialEntry } from './trial-entry.ts';
import { uuidFrom } from './uuid.ts';

/** How a client reaches the server; where it stands may change from one life of the server to the next. */
export type Way = Pick<Transport, 'push' | 'pull'>;

export type ClientOptions = {
  readonly name: string;
  readonly company: string;
  readonly streams: readonly [string, ...string[]];
  readonly random: Random;
  readonly record: (event: Happening) => void;
};

/**
 * A device that knows nothing of the server's inside: it writes, sends what was not acknowledged, pulls the whole log
 * from its cursor, and says what it saw. It lives on while servers die.
 */
export class Client {
  readonly #options: ClientOptions;
  readonly #device: string;
  readonly #seqs = new Map<string, number>();
  #lamport = 0;
  #cursor = 0;
  #unsent: Sealed[] = [];
  /** Answers that no server should give. */
  readonly oddities: string[] = [];

  constructor(options: ClientOptions) {
    this.#options = options;
    this.#device = uuidFrom(options.random);
  }

  /** Pushes and pulls as fast as it can until told to stop. */
  async work(way: Way, isStopped: () => boolean): Promise<void> {
    const { random } = this.#options;
    while (!isStopped()) {
      const ok = random.next() < 0.75 ? await this.push(way) : await this.#pull(way);
      if (!ok) await later(10);
    }
  }

  async push(way: Way): Promise<boolean> {
    const { name, random, record } = this.#options;
    const room = Math.min(random.between(1, 20), mostUnsent - this.#unsent.length);
    this.#unsent = [...this.#unsent, ...Array.from({ length: room }, () => this.#write())];
    const batch = this.#unsent;
    for (const { entry, hash } of batch) record({ kind: 'sent', client: name, id: entry.id, hash });
    const reply = await way.push({ entries: batch.map(({ entry }) => ({ entry })) });
    if (reply.state === 'not-allowed') this.oddities.push(`${name}: a push was not allowed`);
    if (reply.state !== 'answered') return false;
    const { epoch, verdicts } = reply.value;
    for (const [place, { entry, hash }] of batch.entries()) {
      const verdict = verdicts[place];
      if (verdict?.state === 'kept' && verdict.id === entry.id)
        record({ kind: 'acknowledged', client: name, id: entry.id, hash, position: verdict.position, epoch });
      else this.oddities.push(`${name}: ${entry.id} got ${JSON.stringify(verdict)}`);
    }
    this.#unsent = this.#unsent.slice(batch.length);
    return true;
  }

  async #pull(way: Way): Promise<boolean> {
    const { name, record } = this.#options;
    const reply = await way.pull({ follow: { all: this.#cursor }, most: pageSize });
    if (reply.state !== 'answered') return false;
    const { epoch, entries } = reply.value;
    const kept = this.#recordRead(name, reply.value);
    this.#lamport = Math.max(this.#lamport, ...kept.map(({ entry }) => entry.lamport));
    this.#cursor = entries.at(-1)?.position ?? this.#cursor;
    record({ kind: 'cursor', client: name, position: this.#cursor, epoch });
    return true;
  }

  /** Reads the whole log from its start, as a device does that has just been put up. */
  async readAll(way: Way, reader: string): Promise<{ readonly epoch: string; readonly last: number }> {
    const { record } = this.#options;
    let page = answered(await way.pull({ follow: { all: 0 } }));
    record({ kind: 'reading', client: reader, epoch: page.epoch });
    this.#recordRead(reader, page);
    while (page.more) {
      page = answered(await way.pull({ follow: { all: page.entries.at(-1)?.position ?? 0 } }));
      this.#recordRead(reader, page);
    }
    const { epoch, last } = page;
    record({ kind: 'read-through', client: reader, last, epoch });
    return { epoch, last };
  }

  #recordRead(reader: string, { epoch, entries }: PullReply): readonly Sealed[] {
    const kept: Sealed[] = [];
    for (const { position, entry, hash } of entries) {
      const read = readEntry({ entry, hash });
      if (!read.ok) this.oddities.push(`${reader}: position ${position} cannot be read: ${read.reason}`);
      else {
        kept.push(read.sealed);
        const { id } = read.sealed.entry;
        this.#options.record({ kind: 'read', client: reader, id, hash: read.sealed.hash, position, epoch });
      }
    }
    return kept;
  }

  #write(): Sealed {
    const { company, streams, random } = this.#options;
    const stream = random.pick(streams);
    const seq = (this.#seqs.get(stream) ?? 0) + 1;
    this.#seqs.set(stream, seq);
    this.#lamport += 1;
    return trialEntry({
      id: uuidFrom(random),
      company,
      stream,
      device: this.#device,
      seq,
      lamport: this.#lamport,
      note: 'x'.repeat(random.between(0, 400)),
    });
  }
}

const mostUnsent = 200;
const pageSize = 100;

const answered = (reply: Reply<PullReply>): PullReply => {
  if (reply.state !== 'answered') throw new Error(`the log could not be read: ${reply.state}`);
  return reply.value;
};

export const later = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => void setTimeout(resolve, milliseconds));
