import { createHash } from 'node:crypto';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { backup, openSqlite } from '@brinewright/server/store';
import { companyAt, wayTo } from '../kills/http-way.ts';
import { ServerProcess, serving } from '../kills/server-process.ts';
import { trialEntry } from '../kills/trial-entry.ts';
import { uuidFrom } from '../kills/uuid.ts';
import { randomFrom } from '../random.ts';

/** A workshop with a file, a backup of it, and entries that came after. */
export type SmallRecord = { readonly folder: string; readonly last: number; readonly lastInBackup: number };

const firstEntries = 20;
const laterEntries = 10;

/** Filled by the server itself, as it is in life, and closed. */
export const fillRecord = async (folder: string, seed: number): Promise<SmallRecord> => {
  mkdirSync(folder);
  const data = join(folder, 'workshop.sqlite');
  const server = ServerProcess.spawn(serving(data));
  const address = await server.ready();
  const push = await pusherAt(address, seed);
  await sendFile(address);
  await push(firstEntries);
  const place = { kind: 'sqlite', path: data, files: `${data}-files` } as const;
  const to = join(folder, 'old-backup.sqlite');
  const { entries: lastInBackup } = await backup({ place, to, now: '2026-11-25T12:00:00.000Z' });
  await push(laterEntries);
  await server.end();
  return { folder, lastInBackup, last: lastInBackup + laterEntries };
};

const pusherAt = async (address: string, seed: number): Promise<(count: number) => Promise<void>> => {
  const random = randomFrom(seed);
  const company = await companyAt(address);
  const [stream, device] = [uuidFrom(random), uuidFrom(random)];
  let seq = 0;
  return async (count) => {
    const entries = Array.from({ length: count }, () => {
      seq += 1;
      const numbers = { id: uuidFrom(random), company, stream, device, seq, lamport: seq };
      return { entry: trialEntry({ ...numbers, note: 'x'.repeat(300) }).entry };
    });
    const reply = await wayTo(address).push({ entries });
    if (reply.state !== 'answered') throw new Error('the record could not be filled');
  };
};

const sendFile = async (address: string): Promise<void> => {
  const body = 'a photo of a worn piston';
  const hash = createHash('sha256').update(body).digest('hex');
  const headers = { 'content-type': 'application/octet-stream' };
  const { status } = await fetch(`${address}/own/api/files/${hash}`, { method: 'PUT', headers, body });
  if (status !== 204) throw new Error(`the file was answered with ${status}`);
};

/** How many entries a record holds, whose places have no gap. */
export const lastOf = async (path: string): Promise<number> => {
  const store = await openSqlite(path);
  try {
    const [company = ''] = await store.companies();
    const { last, entries } = await store.pull(company, { all: 0 }, 1000);
    if (entries.some(({ position }, place) => position !== place + 1) || entries.length !== last)
      throw new Error(`places with a gap: ${entries.length} of ${last}`);
    return last;
  } finally {
    await store.close();
  }
};
