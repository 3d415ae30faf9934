import { type JournalStore, type Logged, MemoryStore } from '@brinewright/journal';
import type { TrialGround, TrialServer, TrialServerOptions } from './trial-server.ts';

export const memoryGround: TrialGround = {
  name: 'memory',
  newServer: async (options) => {
    const store = new MemoryStore(options.draw);
    await store.begin(options.company);
    return new MemoryServer(store, options);
  },
  close: async () => undefined,
};

class MemoryServer implements TrialServer {
  readonly company: string;
  readonly #draw: () => string;
  readonly #backups: (readonly Logged[])[] = [];
  #store: JournalStore;

  constructor(store: JournalStore, { company, draw }: TrialServerOptions) {
    this.company = company;
    this.#draw = draw;
    this.#store = store;
  }

  get store(): JournalStore {
    return this.#store;
  }

  /** Memory has no disk to come back from; only the object is another way in. */
  async restart(): Promise<void> {}

  async backup(): Promise<void> {
    this.#backups.push((await this.#store.pull(this.company, { all: 0 }, Number.MAX_SAFE_INTEGER)).entries);
  }

  async restoreOldest(): Promise<boolean> {
    const [entries] = this.#backups;
    if (entries === undefined) return false;
    const store = new MemoryStore(this.#draw);
    await store.begin(this.company);
    const from = { company: this.company, isOwner: true };
    for (const { pusher, received, ...sealed } of entries)
      await store.push({ ...from, pusher, received, entries: [sealed] });
    this.#store = store;
    return true;
  }

  async close(): Promise<void> {}
}
