import { describe, expect, it } from 'vitest';
import { tracedPushes } from './judge-trace.ts';
import { readTrace } from './read-trace.ts';

const comes = '70  read(24<socket:[9]>, "POST /api/sync/push HTTP/1.1\\r\\nhost: 127"..., 65536) = 812';
const writesLog = '70  pwrite64(21</d/workshop.sqlite-wal>, "..."..., 4096, 32) = 4096';
const syncsLog = '70  fdatasync(21</d/workshop.sqlite-wal>) = 0';
const answers =
  '70  writev(24<socket:[9]>, [{iov_base="HTTP/1.1 200 OK\\r\\ncontent"..., iov_len=300}, {iov_base="{}"..., iov_len=2}], 2) = 302';

const judged = (...lines: readonly string[]): readonly (number | undefined)[] =>
  tracedPushes(readTrace(lines.join('\n'))).map(({ synced }) => synced);

describe('a trace', () => {
  it('shows a sync of the log between a push and its answer', () => {
    expect(judged(comes, writesLog, syncsLog, answers)).toEqual([3]);
  });

  it.each([
    ['without a sync', [comes, writesLog, answers]],
    ['with the sync after the answer', [comes, writesLog, answers, syncsLog]],
    ['with a sync before the push came', [syncsLog, comes, answers]],
    ['with a sync that failed', [comes, syncsLog.replace('= 0', '= -1 EIO (Input/output error)'), answers]],
    ['with a sync of another file', [comes, syncsLog.replace('-wal', ''), answers]],
    [
      'with a sync that ends after the answer began',
      [
        comes,
        '71  fdatasync(21</d/workshop.sqlite-wal> <unfinished ...>',
        answers,
        '71  <... fdatasync resumed>) = 0',
      ],
    ],
  ])('%s is found out', (_title, lines) => {
    expect(judged(...lines)).toEqual([undefined]);
  });

  it('is read where another thread came between', () => {
    expect(
      judged(
        '70  read(24<socket:[9]>,  <unfinished ...>',
        '71  write(5<anon_inode:[eventfd]>, "\\1\\0", 8) = 8',
        '70  <... read resumed>"POST /api/sync/push HTTP/1.1\\r\\nhost"..., 65536) = 812',
        '70  fdatasync(21</d/workshop.sqlite-wal> <unfinished ...>',
        '71  write(5<anon_inode:[eventfd]>, "\\1\\0", 8) = 8',
        '70  <... fdatasync resumed>)     = 0',
        answers,
      ),
    ).toEqual([6]);
  });

  it('counts each push for itself, by its socket, and nothing else that is answered', () => {
    const other = (line: string): string => line.replaceAll('socket:[9]', 'socket:[10]');
    const pulls = comes.replace('/push', '/pull');
    expect(
      judged(
        comes,
        syncsLog,
        answers,
        pulls,
        answers,
        comes,
        answers,
        other(comes),
        syncsLog,
        other(answers),
      ),
    ).toEqual([2, undefined, 9]);
  });

  it('leaves out what it cannot read', () => {
    expect(
      readTrace('70  +++ exited with 0 +++\n--- SIGTERM ---\n\n70  <... read resumed>"x", 1) = 1'),
    ).toEqual([]);
  });
});
