import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkHistory } from '../history/check-history.ts';
import type { HistoryEvent } from '../history/event.ts';
import { Client } from '../kills/client.ts';
import { companyAt, wayTo } from '../kills/http-way.ts';
import { ServerProcess, serving } from '../kills/server-process.ts';
import { uuidFrom } from '../kills/uuid.ts';
import { randomFrom } from '../random.ts';
import { smallDisk } from './small-disk.ts';

export type DiskFullResult =
  | { readonly state: 'skipped'; readonly why: string }
  | {
      readonly state: 'tried';
      readonly acknowledged: number;
      /** HTTP status of the push that found no room. */
      readonly refusedWith: number | undefined;
      readonly faults: readonly string[];
    };

const roomInMegabytes = 8;
const mostPushes = 5_000;

/** Pushes until the disk is full, makes room, pushes on; then reads everything back. */
export const runDiskFull = async (seed: number): Promise<DiskFullResult> => {
  const disk = smallDisk(roomInMegabytes);
  if (disk === undefined)
    return { state: 'skipped', why: 'a file system of its own can be mounted by root only' };
  const ballast = join(disk.folder, 'ballast');
  writeFileSync(ballast, Buffer.alloc(2 ** 21));
  const server = ServerProcess.spawn(serving(join(disk.folder, 'workshop.sqlite')));
  try {
    return await fillAndFree(await server.ready(), () => rmSync(ballast), seed);
  } finally {
    await server.end();
    disk.close();
  }
};

const fillAndFree = async (address: string, makeRoom: () => void, seed: number): Promise<DiskFullResult> => {
  const history: HistoryEvent[] = [];
  const statuses: number[] = [];
  const way = wayTo(address, (status) => void statuses.push(status));
  const client = new Client({
    name: 'filler',
    company: await companyAt(address),
    streams: [uuidFrom(randomFrom(seed))],
    random: randomFrom(seed + 1),
    record: (event) => void history.push({ ...event, at: history.length }),
  });
  const faults: string[] = [];
  let pushes = 0;
  while (pushes < mostPushes && (await client.push(way))) pushes += 1;
  const refusedWith = statuses.at(-1);
  if (refusedWith !== 507) faults.push(`a full disk was answered with ${refusedWith}, not 507`);
  await client.readAll(way, 'while-full');
  makeRoom();
  if (!(await client.push(way))) faults.push('no push went through after room was made');
  await client.readAll(way, 'with-room');
  faults.push(...client.oddities, ...checkHistory(history).map(({ rule, what }) => `${rule}: ${what}`));
  const acknowledged = history.filter(({ kind }) => kind === 'acknowledged').length;
  return { state: 'tried', acknowledged, refusedWith, faults };
};
