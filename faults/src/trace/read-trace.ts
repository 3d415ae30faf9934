/*
 * Reads what `strace -f -y -o FILE` wrote: one call a line, or two where another thread came between.
 *
 *     812  fdatasync(21</tmp/a/workshop.sqlite-wal>) = 0
 *     812  read(24<socket:[991]>,  <unfinished ...>
 *     812  <... read resumed>"POST /x HTTP/1.1"..., 65536) = 410
 */
export type SystemCall = {
  readonly name: string;
  /** What the file descriptor of its first argument stands for. */
  readonly on: string;
  readonly args: string;
  readonly result: number;
  /** Lines, counted from 1, in which it began and ended. */
  readonly began: number;
  readonly ended: number;
};

/** In the order in which they ended; calls that never ended are left out. */
export const readTrace = (text: string): readonly SystemCall[] => {
  const calls: SystemCall[] = [];
  const open = new Map<string, { readonly args: string; readonly began: number }>();
  for (const [index, line] of text.split('\n').entries()) {
    const read = readLine(line);
    if (read === undefined) continue;
    const { thread, name, args, result, state } = read;
    const key = `${thread} ${name}`;
    if (state === 'begins') {
      open.set(key, { args, began: index + 1 });
      continue;
    }
    const begun = state === 'ends' ? open.get(key) : { args: '', began: index + 1 };
    if (begun === undefined) continue;
    open.delete(key);
    const whole = begun.args + args;
    calls.push({ name, on: descriptorIn(whole), args: whole, result, began: begun.began, ended: index + 1 });
  }
  return calls;
};

type Line = {
  readonly thread: string;
  readonly name: string;
  readonly args: string;
  readonly result: number;
  readonly state: 'whole' | 'begins' | 'ends';
};

const readLine = (line: string): Line | undefined => {
  const [, thread, rest] = /^(\d+)\s+(.*)$/u.exec(line) ?? [];
  if (thread === undefined || rest === undefined) return undefined;
  const begins = /^(\w+)\((.*?)\s*<unfinished \.\.\.>$/u.exec(rest);
  if (begins !== null) return { thread, ...parts(begins), result: Number.NaN, state: 'begins' };
  const ends = /^<\.\.\. (\w+) resumed>\s?(.*)\)\s+= (-?\d+|\?)/u.exec(rest);
  if (ends !== null) return { thread, ...parts(ends), result: Number(ends[3]), state: 'ends' };
  const whole = /^(\w+)\((.*)\)\s+= (-?\d+|\?)/u.exec(rest);
  return whole === null ? undefined : { thread, ...parts(whole), result: Number(whole[3]), state: 'whole' };
};

const parts = (match: RegExpExecArray): { readonly name: string; readonly args: string } => ({
  name: match[1] ?? '',
  args: match[2] ?? '',
});

const descriptorIn = (args: string): string => /^\d+<((?:[^<>]|->)*)>/u.exec(args)?.[1] ?? '';
