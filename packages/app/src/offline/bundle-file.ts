import { bundleOf, importBundle, readBundle, sha256Hex } from '@brinewright/journal';
import { v7 } from 'uuid';
import { fromBase64, toBase64 } from './base64.ts';
import type { AppDatabase } from './database.ts';
import { dexieStore } from './dexie-store.ts';

type FileText = { readonly hash: string; readonly type: string; readonly base64: string };

/** All entries and photos of this device in one file, for another device or for safe keeping. */
export const saveBundle = async (database: AppDatabase): Promise<Blob> => {
  const bundle = await bundleOf(dexieStore(database));
  const files = (await database.files.toArray()).map(
    ({ hash, type, bytes }): FileText => ({ hash, type, base64: toBase64(new Uint8Array(bytes)) }),
  );
  return new Blob([JSON.stringify({ ...bundle, files })], { type: 'application/json' });
};

export type BundleTaken =
  | { readonly state: 'taken'; readonly fresh: number }
  | { readonly state: 'no-bundle' }
  | { readonly state: 'other-company' };

/** Takes a saved file in; whoever does so is a new device from then on (J2). */
export const takeBundle = async (database: AppDatabase, text: string, now: string): Promise<BundleTaken> => {
  const given = readJson(text);
  const read = readBundle(given);
  if (read.state === 'no-bundle') return read;
  const store = dexieStore(database);
  const { company } = await store.transact((tx) => tx.state());
  if (read.company !== company) return { state: 'other-company' };
  const fresh = await importBundle(store, read, () => v7());
  await takeFiles(database, given, now);
  return { state: 'taken', fresh };
};

const readJson = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

const takeFiles = async (database: AppDatabase, given: unknown, now: string): Promise<void> => {
  for (const { hash, type, base64 } of filesIn(given)) {
    const bytes = fromBase64(base64);
    if (sha256Hex(bytes) !== hash || (await database.files.get(hash)) !== undefined) continue;
    await database.files.put({
      hash,
      type,
      bytes: bytes.buffer,
      size: bytes.length,
      state: 'waiting',
      kept: now,
    });
  }
};

const filesIn = (given: unknown): readonly FileText[] => {
  const files = typeof given === 'object' && given !== null && 'files' in given ? given.files : [];
  return Array.isArray(files) ? files.filter(isFileText) : [];
};

const isFileText = (value: unknown): value is FileText =>
  typeof value === 'object' &&
  value !== null &&
  'hash' in value &&
  'type' in value &&
  'base64' in value &&
  [value.hash, value.type, value.base64].every((one) => typeof one === 'string');
