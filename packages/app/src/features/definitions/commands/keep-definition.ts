import type { Device } from '../../../offline/device-context.ts';
import { addDefinition } from './add-definition.ts';

/** A definition has a few hundred lines; more than this is another file. */
const mostBytes = 1_000_000;

export type Kept = { readonly state: 'kept' | 'too-large' | 'not-read'; readonly name: string };

/** Keeps a definition file on this device and tells the workshop of it; the bytes follow with the other files. */
export const keepDefinition = async (
  { database, session, record }: Pick<Device, 'database' | 'session' | 'record'>,
  file: File,
  now: string,
): Promise<Kept> => {
  const { name } = file;
  if (file.size > mostBytes) return { state: 'too-large', name };
  const bytes = await file.arrayBuffer();
  const text = textOf(bytes);
  if (text === undefined) return { state: 'not-read', name };
  const hash = hexOf(await crypto.subtle.digest('SHA-256', bytes));
  await database.transaction('rw', database.files, database.definitions, async () => {
    await database.files.put({
      hash,
      bytes,
      type: 'application/yaml',
      size: bytes.byteLength,
      state: 'waiting',
      kept: now,
    });
    await database.definitions.put({ name, file: hash, text });
  });
  await record(addDefinition(session.company, name, hash));
  return { state: 'kept', name };
};

const textOf = (bytes: ArrayBuffer): string | undefined => {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
};

const hexOf = (buffer: ArrayBuffer): string =>
  [...new Uint8Array(buffer)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
