import type { DeviceState, Held, StreamState } from '@brinewright/journal';
import { Dexie, type EntityTable, type Table } from 'dexie';

/** An entry with what it is looked up by. */
export type EntryRow = {
  readonly id: string;
  readonly stream: string;
  readonly device: string;
  readonly seq: number;
  readonly origin: string;
  /** Refused and displaced ones are not sent. */
  readonly standing: 'taken' | 'refused' | 'displaced';
  /** Epoch in which it is durable at the server; empty where it is not. */
  readonly durableIn: string;
  readonly held: Held;
};

/** A file by its SHA-256; the bytes go only after the server has confirmed them durable (A1). */
export type FileRow = {
  readonly hash: string;
  readonly bytes: ArrayBuffer;
  readonly type: string;
  readonly size: number;
  readonly state: 'waiting' | 'durable' | 'refused';
  readonly kept: string;
};

export type DraftRow = { readonly key: string; readonly value: unknown };
export type SettingRow = { readonly key: string; readonly value: unknown };

/** A definition file of the workshop that is on this device. */
export type DefinitionRow = { readonly name: string; readonly file: string; readonly text: string };

export type AppDatabase = Dexie & {
  readonly entries: EntityTable<EntryRow, 'id'>;
  readonly streams: EntityTable<StreamState, 'stream'>;
  readonly device: Table<DeviceState, 'state'>;
  readonly files: EntityTable<FileRow, 'hash'>;
  readonly drafts: EntityTable<DraftRow, 'key'>;
  readonly settings: EntityTable<SettingRow, 'key'>;
  readonly definitions: EntityTable<DefinitionRow, 'name'>;
};

export type IndexedDb = { readonly indexedDB: IDBFactory; readonly IDBKeyRange: typeof IDBKeyRange };

class OpenDatabase extends Dexie {
  declare readonly entries: EntityTable<EntryRow, 'id'>;
  declare readonly streams: EntityTable<StreamState, 'stream'>;
  declare readonly device: Table<DeviceState, 'state'>;
  declare readonly files: EntityTable<FileRow, 'hash'>;
  declare readonly drafts: EntityTable<DraftRow, 'key'>;
  declare readonly settings: EntityTable<SettingRow, 'key'>;
  declare readonly definitions: EntityTable<DefinitionRow, 'name'>;
}

/** Written with strict durability: an entry that was acknowledged survives a power cut. */
export const openDatabase = (name: string, from?: IndexedDb): AppDatabase => {
  const database = new OpenDatabase(name, { chromeTransactionDurability: 'strict', ...from });
  database.version(1).stores({
    entries: 'id, stream, [stream+device+seq], origin, standing, [standing+durableIn]',
    streams: 'stream',
    device: '',
    files: 'hash, state',
    drafts: 'key',
    settings: 'key',
    definitions: 'name',
  });
  return database;
};
