import { DatabaseSync } from 'node:sqlite';
import type { Logged } from '@brinewright/journal';
import pg from 'pg';
import { rowOf } from '../store/rows.ts';

/*
 * The yardstick for pushes: the same rows in a table with the same keys, in one statement with many rows through the
 * plain driver, and nothing else. What it costs is what the database costs.
 */

export type BareTable = {
  readonly insert: (entries: readonly Logged[]) => Promise<void>;
  readonly close: () => Promise<void>;
};

const columns = [
  'company',
  'position',
  'id',
  'stream',
  'device',
  'seq',
  'lamport',
  'kind',
  'hash',
  'body',
  'pusher',
  'received',
  'redacts',
] as const;

const keys = [
  'primary key (company, position)',
  'unique (company, id)',
  'unique (company, stream, device, seq)',
];

const index = 'create index bare_stream on bare (company, stream, position)';

export const bareSqlite = (path: string): BareTable => {
  const database = new DatabaseSync(path);
  database.exec('pragma journal_mode = wal; pragma synchronous = full');
  database.exec(
    `create table bare (${columns.map(typedForSqlite).join(', ')}, ${keys.join(', ')}) strict; ${index}`,
  );
  const statementFor = kept((text) => database.prepare(text));
  return {
    insert: async (entries) => {
      statementFor(insertOf(entries.length, () => '?')).run(...valuesOf(entries));
    },
    close: async () => database.close(),
  };
};

/** Its table is made by the first that opens it, and shared by the others. */
export const barePostgres = async (url: string): Promise<BareTable> => {
  const client = new pg.Client({ connectionString: url, options: '-c synchronous_commit=on' });
  await client.connect();
  const { rows } = await client.query(`select to_regclass('bare') as found`);
  if (rows[0].found === null)
    await client.query(
      `create table bare (${columns.map(typedForPostgres).join(', ')}, ${keys.join(', ')}); ${index}`,
    );
  return {
    insert: async (entries) => {
      await client.query(
        insertOf(entries.length, (place) => `$${place}`),
        valuesOf(entries),
      );
    },
    close: () => client.end(),
  };
};

type Column = (typeof columns)[number];
const ids: readonly Column[] = ['company', 'id', 'stream', 'device', 'redacts'];
const numbers: readonly Column[] = ['position', 'seq', 'lamport'];

const typedForSqlite = (column: Column): string =>
  `${column} ${numbers.includes(column) ? 'integer' : 'text'}${column === 'redacts' ? '' : ' not null'}`;

const typedForPostgres = (column: Column): string => {
  const type = ids.includes(column) ? 'uuid' : numbers.includes(column) ? 'bigint' : 'text collate "C"';
  return `${column} ${type}${column === 'redacts' ? '' : ' not null'}`;
};

const kept = <T>(make: (text: string) => T): ((text: string) => T) => {
  const made = new Map<string, T>();
  return (text) => {
    const one = made.get(text) ?? make(text);
    made.set(text, one);
    return one;
  };
};

const insertOf = (rows: number, mark: (place: number) => string): string => {
  const row = (at: number) =>
    `(${columns.map((_, place) => mark(at * columns.length + place + 1)).join(', ')})`;
  return `insert into bare (${columns.join(', ')}) values ${Array.from({ length: rows }, (_, at) => row(at)).join(', ')}`;
};

const valuesOf = (entries: readonly Logged[]) =>
  entries.map(rowOf).flatMap((row) => columns.map((column) => row[column]));
