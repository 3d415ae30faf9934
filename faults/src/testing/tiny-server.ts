/*
 * A server of a few lines, to try the trials themselves: an honest one loses nothing to a kill, one that answers
 * before it has written does. `node tiny-server.ts FILE honest|hasty`
 */
import { appendFileSync, existsSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { pullRequest, pushRequest, readEntry } from '@brinewright/journal';

const [file = '', manner = 'honest'] = process.argv.slice(2);
const epoch = 'tiny';
const now = '2026-11-25T09:00:00Z';

type Kept = { readonly id: string; readonly entry: unknown };

const log: Kept[] = existsSync(file)
  ? readFileSync(file, 'utf8')
      .split('\n')
      .filter((line) => line !== '')
      .map((line): Kept => JSON.parse(line))
  : [];

const keep = (kept: Kept): number => {
  const known = log.findIndex(({ id }) => id === kept.id);
  if (known >= 0) return known + 1;
  log.push(kept);
  const write = (): void => appendFileSync(file, `${JSON.stringify(kept)}\n`);
  if (manner === 'hasty') setTimeout(write, 40);
  else write();
  return log.length;
};

const push = (body: unknown) => {
  const { entries } = pushRequest.parse(body);
  const verdicts = entries.map((wire) => {
    const read = readEntry(wire);
    return read.ok
      ? {
          id: read.sealed.entry.id,
          state: 'kept',
          position: keep({ id: read.sealed.entry.id, entry: wire.entry }),
        }
      : { state: 'refused', reason: read.reason };
  });
  return { epoch, now, last: log.length, verdicts };
};

const pull = (body: unknown) => {
  const { follow, most = 500 } = pullRequest.parse(body);
  const after = 'all' in follow ? follow.all : 0;
  const entries = log
    .slice(after, after + most)
    .map(({ entry }, place) => ({ position: after + place + 1, entry }));
  return { epoch, now, last: log.length, entries, more: after + most < log.length };
};

const server = createServer(async (request, response) => {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part);
  const body: unknown = JSON.parse(Buffer.concat(parts).toString());
  response.setHeader('content-type', 'application/json');
  response.end(JSON.stringify(request.url === '/own/api/sync/push' ? push(body) : pull(body)));
});

server.listen(0, '127.0.0.1', () => {
  const address = server.address();
  if (typeof address === 'object') console.log(`Ready: http://127.0.0.1:${address?.port}`);
});
process.on('SIGINT', () => process.exit(0));
