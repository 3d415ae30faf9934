import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Client } from '../kills/client.ts';
import { companyAt, wayTo } from '../kills/http-way.ts';
import { ServerProcess, serving } from '../kills/server-process.ts';
import { uuidFrom } from '../kills/uuid.ts';
import { randomFrom } from '../random.ts';
import { type TracedPush, tracedPushes } from './judge-trace.ts';
import { readTrace } from './read-trace.ts';

/** What is written out is watched, and also what is read in, for that says when a push came. */
const watched = 'fsync,fdatasync,read,readv,recvfrom,recvmsg,write,writev,sendto,sendmsg';

/** `pushes` single pushes, one after another, at a server on SQLite whose system calls are written down. */
export const runTrace = async (pushes: number, seed: number): Promise<readonly TracedPush[]> => {
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-trace-'));
  const file = join(folder, 'trace.txt');
  try {
    const tracer = ['strace', '-D', '-f', '-y', '-s', '80', '-e', `trace=${watched}`, '-o', file];
    const server = ServerProcess.spawn(serving(join(folder, 'workshop.sqlite'), tracer));
    const address = await server.ready();
    const client = new Client({
      name: 'traced',
      company: await companyAt(address),
      streams: [uuidFrom(randomFrom(seed))],
      random: randomFrom(seed + 1),
      record: () => undefined,
    });
    for (let n = 0; n < pushes; n += 1)
      if (!(await client.push(wayTo(address)))) throw new Error('a push failed');
    await server.end();
    return tracedPushes(readTrace(readFileSync(file, 'utf8')));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
