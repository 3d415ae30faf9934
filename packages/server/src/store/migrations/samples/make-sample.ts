/*
 * Writes the dumps that stand beside this file, of a small record in the newest tables: run it once after a migration
 * was added, and never again for that number. It needs PostgreSQL's programs.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { postgresPrograms, startCluster } from '../../../testing/cluster.ts';
import { knownMigrations } from '../../migrator.ts';
import { openPostgres } from '../../open-postgres.ts';
import { openSqlite } from '../../open-sqlite.ts';
import { fillSample, sampleChance } from './sample-record.ts';

const fileOf = (flavour: string): string =>
  join(import.meta.dirname, `${knownMigrations.at(-1)?.slice(0, 3)}.${flavour}.sql`);

const keep = (path: string, text: string): void => {
  if (existsSync(path)) throw new Error(`${path} is there and stays as it is`);
  writeFileSync(path, text);
};

const quoted = (value: unknown): string => {
  if (value === null) return 'null';
  return typeof value === 'string' ? `'${value.replaceAll("'", "''")}'` : String(value);
};

const dumpSqlite = (path: string): string => {
  const database = new DatabaseSync(path, { readOnly: true });
  const made = database
    .prepare(`select name, type, sql from sqlite_master where sql is not null order by type = 'index', rowid`)
    .all();
  const rows = made
    .filter(({ type }) => type === 'table')
    .flatMap(({ name }) =>
      database
        .prepare(`select * from "${name}"`)
        .all()
        .map((row) => `insert into "${name}" values (${Object.values(row).map(quoted).join(', ')});`),
    );
  database.close();
  return `${[...made.map(({ sql }) => `${sql};`), ...rows].join('\n')}\n`;
};

const sampleSqlite = async (): Promise<void> => {
  const folder = mkdtempSync(join(tmpdir(), 'bw-sample-'));
  const path = join(folder, 'workshop.sqlite');
  const store = await openSqlite(path, sampleChance());
  await fillSample(store);
  await store.close();
  keep(fileOf('sqlite'), dumpSqlite(path));
  rmSync(folder, { recursive: true });
};

const samplePostgres = async (): Promise<void> => {
  const cluster = await startCluster({ fsync: false });
  try {
    const store = await openPostgres(cluster.url('owner'), sampleChance());
    await fillSample(store);
    await store.close();
    const { stdout } = spawnSync(
      join(postgresPrograms() ?? '', 'pg_dump'),
      ['--inserts', '--no-owner', '--no-privileges', cluster.url('owner')],
      { encoding: 'utf8' },
    );
    const lines = stdout.split('\n').filter((line) => !/^(?:--|\\|$)/u.test(line));
    keep(fileOf('postgres'), `${lines.join('\n')}\n`);
  } finally {
    cluster.stop();
  }
};

await sampleSqlite();
await samplePostgres();
