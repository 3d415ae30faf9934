import type { AppDatabase } from './database.ts';

/** Unfinished fields, read at the start and kept in step with the database from then on. */
export class Drafts {
  readonly #database: AppDatabase;
  readonly #held: Map<string, unknown>;
  readonly #listeners = new Set<() => void>();

  private constructor(database: AppDatabase, held: Map<string, unknown>) {
    this.#database = database;
    this.#held = held;
  }

  static async open(database: AppDatabase): Promise<Drafts> {
    const rows = await database.drafts.toArray();
    return new Drafts(database, new Map(rows.map(({ key, value }) => [key, value])));
  }

  get(key: string): unknown {
    return this.#held.get(key);
  }

  /** Shown at once; the database follows. Nothing of the journal depends on it. */
  set(key: string, value: unknown): void {
    this.#held.set(key, value);
    this.#tell();
    void this.#database.drafts.put({ key, value });
  }

  forget(key: string): void {
    this.#held.delete(key);
    this.#tell();
    void this.#database.drafts.delete(key);
  }

  listen(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  #tell(): void {
    for (const listener of this.#listeners) listener();
  }
}
