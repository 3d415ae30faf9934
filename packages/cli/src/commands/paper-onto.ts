import { resolve, sep } from 'node:path';
import { type Message, message } from '@brinewright/words';
import type { Call } from '../call.ts';
import { papersAsked } from './papers.ts';

/** A paper that would overwrite what is read, or another paper; told before anything is done. */
export const paperOnto = (call: Call): Message | undefined => {
  const taken = new Map<string, string>();
  for (const { option, file } of papersAsked(call)) {
    const at = trueAt(call, file);
    if (isRead(call, at)) return message('cli.onto-input', { option: `--${option}`, file });
    const other = taken.get(at);
    if (other !== undefined) return message('cli.onto-paper', { option: `--${option}`, file, other });
    taken.set(at, `--${option}`);
  }
  return undefined;
};

const trueAt = ({ io }: Call, path: string): string => io.realPath(resolve(io.cwd, path));

/** The visit, a file of definitions, or one in a folder of them. */
const isRead = (call: Call, at: string): boolean =>
  call.args.some((path) => trueAt(call, path) === at) ||
  call.equipment
    .map((path) => trueAt(call, path))
    .some((path) => path === at || (at.startsWith(`${path}${sep}`) && /\.ya?ml$/u.test(at)));
