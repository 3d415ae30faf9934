import type { DatabaseSync, SQLInputValue, StatementSync } from 'node:sqlite';
import { SqliteAdapter, SqliteDialect, type SqliteStatement } from 'kysely';

/** Kysely over Node's own SQLite. Closing the Kysely closes the database. */
export class NodeSqliteDialect extends SqliteDialect {
  constructor(database: DatabaseSync) {
    const statements = new Statements(database);
    super({ database: { close: () => database.close(), prepare: (sql) => statements.of(sql) } });
  }

  override createAdapter(): SqliteAdapter {
    return new TransactionalAdapter();
  }
}

/** SQLite changes tables within a transaction like rows, so a migration happens whole or not at all. */
class TransactionalAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}

/** A batch of each size has a text of its own; more than these are not kept. */
const mostKept = 200;

/** Prepared statements by their text. */
class Statements {
  readonly #database: DatabaseSync;
  readonly #kept = new Map<string, SqliteStatement>();

  constructor(database: DatabaseSync) {
    this.#database = database;
  }

  of(sql: string): SqliteStatement {
    const kept = this.#kept.get(sql);
    if (kept !== undefined) return kept;
    const made = transactionStatement(this.#database, sql) ?? adapt(this.#database.prepare(sql));
    if (this.#kept.size >= mostKept) this.#kept.clear();
    this.#kept.set(sql, made);
    return made;
  }
}

const adapt = (statement: StatementSync): SqliteStatement => ({
  reader: statement.columns().length > 0,
  all: (parameters) => statement.all(...parameters.map(inputOf)),
  run: (parameters) => statement.run(...parameters.map(inputOf)),
  iterate: (parameters) => statement.iterate(...parameters.map(inputOf)),
});

/**
 * SQLite rolls back by itself on some errors (full disk), and a rollback may fail to be sent: neither may leave the
 * one connection in a state where the next transaction cannot begin.
 */
const transactionStatement = (database: DatabaseSync, sql: string): SqliteStatement | undefined => {
  const rollback = () => {
    if (database.isTransaction) database.exec('rollback');
  };
  if (sql === 'rollback') return command(rollback);
  if (sql !== 'begin') return undefined;
  return command(() => {
    rollback();
    database.exec('begin');
  });
};

const command = (run: () => void): SqliteStatement => ({
  reader: false,
  all: () => [],
  run: () => {
    run();
    return { changes: 0, lastInsertRowid: 0 };
  },
  iterate: () => [].values(),
});

const inputOf = (value: unknown): SQLInputValue => {
  if (value === undefined || value === null) return null;
  if (typeof value === 'boolean') return value ? 1 : 0;
  if (value instanceof Date) return value.toISOString();
  if (value instanceof Uint8Array) return value;
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'bigint') return value;
  throw new TypeError(`a ${typeof value} cannot be stored`);
};
