import { type Batch, type Logged, type Sealed, seal } from '@brinewright/journal';
import { seeded } from './yardstick.ts';

/** A batch, and its rows with the places they get. */
export type Work = { readonly batch: Batch; readonly rows: readonly Logged[] };

export const batchSize = 20;
const received = '2026-11-25T12:00:00.000Z';
const pusher = '00000000-0000-7000-8000-0000000000f1';

/** Makes batches as phones send them: the next twenty readings of one device at one site. */
export class BatchMaker {
  readonly #random = seeded(20261126);
  readonly #places = new Map<string, number>();
  readonly #seqs = new Map<string, number>();
  #time = 0;

  uuid(): string {
    this.#time += 1;
    return `01940000-${hex(this.#time, 4)}-7${hex(this.#random() * 4096, 3)}-8${hex(this.#random() * 4096, 3)}-${hex(this.#random() * 2 ** 48, 12)}`;
  }

  /** The next batch of a hand that is known by its stream. */
  next(company: string, stream: string, device: string): Work {
    const seq = this.#seqs.get(stream) ?? 0;
    const place = this.#places.get(company) ?? 0;
    this.#seqs.set(stream, seq + batchSize);
    this.#places.set(company, place + batchSize);
    const entries = Array.from({ length: batchSize }, (_, at) =>
      this.#entry({ company, stream, device, seq: seq + at + 1 }),
    );
    const rows = entries.map((sealed, at) => ({ ...sealed, position: place + at + 1, pusher, received }));
    return { batch: { company, entries, pusher, received, isOwner: false }, rows };
  }

  #entry(numbered: Pick<Sealed['entry'], 'company' | 'stream' | 'device' | 'seq'>): Sealed {
    return seal({
      id: this.uuid(),
      ...numbered,
      lamport: numbered.seq,
      seen: { [pusher]: numbered.seq },
      kind: 'reading-taken/1',
      payload: { test: 'drain-flow', reading: { value: '2.4 gpm', how: 'measured' }, note: 'pail and watch' },
      author: 'Bench Hand',
      wall: '2026-11-25T10:00:00.000Z',
      zone: 'America/Chicago',
      app: 'bench',
      about: { visit: 'visit-one', conditioner: 'twin' },
    });
  }
}

const hex = (value: number, digits: number): string =>
  Math.floor(value).toString(16).padStart(digits, '0').slice(-digits);
