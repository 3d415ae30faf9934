import { randomUUID } from 'node:crypto';
import type {
  Batch,
  Heads,
  JournalStore,
  Logged,
  LogState,
  Sealed,
  Vector,
  Wanted,
} from '@brinewright/journal';
import type { Kysely, Transaction } from 'kysely';
import { inSnapshot, logState, type Pulled, pull } from './pull.ts';
import { keepOwn, lockLog, type PushAllNew, type Pushed, push } from './push.ts';
import { loggedOf, shownColumns } from './rows.ts';
import type { Database } from './schema.ts';
import { asFault } from './store-fault.ts';
import { vectors } from './vectors.ts';
import {
  type BegunWorkshop,
  begunWorkshop,
  type PairedDevice,
  pairedOf,
  type WorkshopStore,
} from './workshop-store.ts';

/** What trials with a seed put in place of chance and clock. */
export type Chance = {
  /** Gives epochs and own devices. */
  readonly draw?: () => string;
  /** The server's clock, ISO. */
  readonly now?: () => string;
};

export type SqlStoreParts = Chance & {
  readonly db: Kysely<Database>;
  /** How this database best takes what is new. */
  readonly quickly: PushAllNew;
  /** As shown in faults. */
  readonly where: string;
  readonly afterClose?: () => void;
};

/** The journal and the workshop in a database; which one, its Kysely knows. */
export class SqlStore implements JournalStore, WorkshopStore {
  /** The file, or the database without its password. */
  readonly where: string;
  readonly #db: Kysely<Database>;
  readonly #quickly: PushAllNew;
  readonly #draw: () => string;
  readonly #now: () => string;
  readonly #afterClose: () => void;
  #closing: Promise<void> | undefined;

  constructor({ db, quickly, where, draw, now, afterClose }: SqlStoreParts) {
    this.#db = db;
    this.#quickly = quickly;
    this.where = where;
    this.#draw = draw ?? randomUUID;
    this.#now = now ?? (() => new Date().toISOString());
    this.#afterClose = afterClose ?? (() => undefined);
  }

  begin(company: string): Promise<void> {
    return this.#within((tx) => this.#begin(tx, company));
  }

  companies(): Promise<readonly string[]> {
    return this.#guard(async (db) => {
      const rows = await db.selectFrom('company_log').select('company').orderBy('company').execute();
      return rows.map(({ company }) => company);
    });
  }

  state(company: string): Promise<LogState> {
    return this.#guard((db) => logState(db, company));
  }

  push(batch: Batch): Promise<Pushed> {
    return this.#guard((db) => push(db, batch, this.#quickly));
  }

  write(
    from: Omit<Batch, 'entries' | 'isOwner'>,
    streams: readonly string[],
    compose: (heads: Heads) => readonly Sealed[],
  ): Promise<LogState & { readonly kept: readonly Logged[] }> {
    return this.#within(async (tx) => {
      const log = await lockLog(tx, from.company);
      const { device, lamport, epoch } = log;
      const entries = compose({ device, lamport, vectors: await vectors(tx, from.company, streams) });
      const { added, last } = await keepOwn(tx, log, { ...from, entries, isOwner: true });
      return { epoch, last, kept: added };
    });
  }

  pull(company: string, wanted: Wanted, most: number): Promise<Pulled> {
    return this.#guard((db) => pull(db, company, wanted, most));
  }

  vectors(company: string, streams: readonly string[]): Promise<ReadonlyMap<string, Vector>> {
    return this.#guard((db) => inSnapshot(db, (tx) => vectors(tx, company, streams)));
  }

  find(company: string, id: string): Promise<Logged | undefined> {
    return this.#guard(async (db) => {
      const row = await db
        .selectFrom('entry')
        .select([...shownColumns])
        .where('company', '=', company)
        .where('id', '=', id)
        .executeTakeFirst();
      return row === undefined ? undefined : loggedOf(row);
    });
  }

  workshop(): Promise<BegunWorkshop | undefined> {
    return this.#guard(begunWorkshop);
  }

  beginWorkshop(company: string, author: string): Promise<BegunWorkshop> {
    return this.#within(async (tx) => {
      const there = await begunWorkshop(tx);
      if (there !== undefined) throw new RangeError(`the workshop of ${there.company} was begun`);
      const begun = { company, author, begunAt: this.#now() };
      await this.#begin(tx, company);
      await tx.insertInto('workshop').values({ company, author, begun_at: begun.begunAt }).execute();
      return begun;
    });
  }

  pairDevice(device: Pick<PairedDevice, 'company' | 'id' | 'name' | 'keyHash'>): Promise<PairedDevice> {
    return this.#guard(async (db) => {
      const { keyHash, ...rest } = device;
      const row = { ...rest, key_hash: keyHash, paired_at: this.#now(), seen_at: null, revoked_at: null };
      await db.insertInto('paired_device').values(row).execute();
      return pairedOf(row);
    });
  }

  deviceByKey(keyHash: string): Promise<PairedDevice | undefined> {
    return this.#guard(async (db) => {
      const row = await db
        .selectFrom('paired_device')
        .selectAll()
        .where('key_hash', '=', keyHash)
        .where('revoked_at', 'is', null)
        .executeTakeFirst();
      return row === undefined ? undefined : pairedOf(row);
    });
  }

  devices(company: string): Promise<readonly PairedDevice[]> {
    return this.#guard(async (db) => {
      const rows = await db
        .selectFrom('paired_device')
        .selectAll()
        .where('company', '=', company)
        .orderBy('paired_at')
        .orderBy('id')
        .execute();
      return rows.map(pairedOf);
    });
  }

  revokeDevice(company: string, id: string): Promise<void> {
    return this.#guard(async (db) => {
      await db
        .updateTable('paired_device')
        .set({ revoked_at: this.#now() })
        .where('company', '=', company)
        .where('id', '=', id)
        .where('revoked_at', 'is', null)
        .execute();
    });
  }

  touchDevice(company: string, id: string): Promise<void> {
    return this.#guard(async (db) => {
      await db
        .updateTable('paired_device')
        .set({ seen_at: this.#now() })
        .where('company', '=', company)
        .where('id', '=', id)
        .execute();
    });
  }

  close(): Promise<void> {
    this.#closing ??= this.#db.destroy().finally(this.#afterClose);
    return this.#closing;
  }

  async #begin(tx: Transaction<Database>, company: string): Promise<void> {
    const device = this.#draw();
    const { numInsertedOrUpdatedRows } = await tx
      .insertInto('company_log')
      .values({ company, last: 0, lamport: 0, epoch: this.#draw(), device, waiting: 0 })
      .onConflict((it) => it.doNothing())
      .executeTakeFirst();
    if (numInsertedOrUpdatedRows === 0n) return;
    await tx.insertInto('own_device').values({ company, device, since: this.#now() }).execute();
  }

  #within<T>(work: (tx: Transaction<Database>) => Promise<T>): Promise<T> {
    return this.#guard((db) => db.transaction().execute(work));
  }

  async #guard<T>(work: (db: Kysely<Database>) => Promise<T>): Promise<T> {
    try {
      return await work(this.#db);
    } catch (error) {
      throw asFault(error, this.where);
    }
  }
}
