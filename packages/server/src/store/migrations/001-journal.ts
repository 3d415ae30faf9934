import { type ColumnDataType, type Kysely, type RawBuilder, sql } from 'kysely';
import type { Flavour } from '../flavour.ts';

type Types = Readonly<Record<'uuid' | 'word' | 'text' | 'whole', ColumnDataType | RawBuilder<unknown>>>;

/** Text is compared by code unit in both: names and ids have one order everywhere (J4). */
const typesOf: Readonly<Record<Flavour, Types>> = {
  sqlite: { uuid: 'text', word: 'text', text: 'text', whole: 'integer' },
  postgres: { uuid: 'uuid', word: sql`text collate "C"`, text: sql`text collate "C"`, whole: 'bigint' },
};

export const journal001 = (flavour: Flavour) => ({
  up: async (db: Kysely<never>): Promise<void> => {
    const types = typesOf[flavour];
    const end = flavour === 'sqlite' ? sql`strict` : sql``;
    const table = (name: string) => db.schema.createTable(name).modifyEnd(end);

    await table('company_log')
      .addColumn('company', types.uuid, (it) => it.primaryKey())
      .addColumn('last', types.whole, (it) => it.notNull())
      .addColumn('lamport', types.whole, (it) => it.notNull())
      .addColumn('epoch', types.text, (it) => it.notNull())
      .addColumn('device', types.uuid, (it) => it.notNull())
      .addColumn('waiting', types.whole, (it) => it.notNull())
      .execute();

    await table('entry')
      .addColumn('company', types.uuid, (it) => it.notNull())
      .addColumn('position', types.whole, (it) => it.notNull())
      .addColumn('id', types.uuid, (it) => it.notNull())
      .addColumn('stream', types.uuid, (it) => it.notNull())
      .addColumn('device', types.uuid, (it) => it.notNull())
      .addColumn('seq', types.whole, (it) => it.notNull())
      .addColumn('lamport', types.whole, (it) => it.notNull())
      .addColumn('kind', types.word, (it) => it.notNull())
      .addColumn('hash', types.word, (it) => it.notNull())
      .addColumn('body', types.text, (it) => it.notNull())
      .addColumn('pusher', types.text, (it) => it.notNull())
      .addColumn('received', types.text, (it) => it.notNull())
      .addColumn('redacts', types.uuid)
      .addPrimaryKeyConstraint('entry_place', ['company', 'position'])
      .addUniqueConstraint('entry_id', ['company', 'id'])
      .addUniqueConstraint('entry_number', ['company', 'stream', 'device', 'seq'])
      .execute();
    await db.schema
      .createIndex('entry_stream')
      .on('entry')
      .columns(['company', 'stream', 'position'])
      .execute();
    await sql`create index entry_redacts on entry (company, redacts) where redacts is not null`.execute(db);

    await table('own_device')
      .addColumn('company', types.uuid, (it) => it.notNull())
      .addColumn('device', types.uuid, (it) => it.notNull())
      .addColumn('since', types.text, (it) => it.notNull())
      .addPrimaryKeyConstraint('own_device_key', ['company', 'device'])
      .execute();

    await table('paired_device')
      .addColumn('company', types.uuid, (it) => it.notNull())
      .addColumn('id', types.uuid, (it) => it.notNull())
      .addColumn('name', types.text, (it) => it.notNull())
      .addColumn('key_hash', types.word, (it) => it.notNull())
      .addColumn('paired_at', types.text, (it) => it.notNull())
      .addColumn('seen_at', types.text)
      .addColumn('revoked_at', types.text)
      .addPrimaryKeyConstraint('paired_device_id', ['company', 'id'])
      .addUniqueConstraint('paired_device_key', ['key_hash'])
      .execute();

    await table('workshop')
      .addColumn('company', types.uuid, (it) => it.primaryKey().references('company_log.company'))
      .addColumn('author', types.text, (it) => it.notNull())
      .addColumn('begun_at', types.text, (it) => it.notNull())
      .execute();
  },
});
