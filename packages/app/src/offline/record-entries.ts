import { type Draft, writeEntries } from '@brinewright/journal';
import { v7 } from 'uuid';
import type { AppDatabase } from './database.ts';
import { dexieStore } from './dexie-store.ts';

const app = 'brinewright-app/0.1.0';

/** Writes drafts in one transaction with strict durability; what was acknowledged here is not lost. */
export const recordEntries = async (
  database: AppDatabase,
  author: string,
  drafts: readonly Draft[],
): Promise<readonly string[]> => {
  const hand = {
    author,
    wall: new Date().toISOString(),
    zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    app,
    newId: () => v7(),
  };
  const written = await dexieStore(database).transact((tx) => writeEntries(tx, drafts, hand));
  return written.map(({ entry }) => entry.id);
};
