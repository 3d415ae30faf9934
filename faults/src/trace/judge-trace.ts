import type { SystemCall } from './read-trace.ts';

/** One push, as the system saw it: come in, synced to disk or not, and answered. */
export type TracedPush = {
  readonly socket: string;
  /** Lines of the trace. */
  readonly came: number;
  readonly synced: number | undefined;
  readonly answered: number;
};

/**
 * Of every push answered with 200: whether the write-ahead log was synced after the push had come and before the
 * answer left. Pushes are sent one at a time, so a sync between belongs to the push.
 */
export const tracedPushes = (calls: readonly SystemCall[]): readonly TracedPush[] => {
  const came = new Map<string, number>();
  const pushes: TracedPush[] = [];
  for (const call of calls.toSorted((a, b) => momentOf(a) - momentOf(b))) {
    if (isPush(call)) came.set(call.on, call.ended);
    const since = came.get(call.on);
    if (!isAnswer(call) || since === undefined) continue;
    came.delete(call.on);
    pushes.push({
      socket: call.on,
      came: since,
      synced: syncWithin(calls, since, call.began),
      answered: call.began,
    });
  }
  return pushes;
};

/** What comes in is there when its call ends; what goes out may be gone as soon as its call begins. */
const momentOf = (call: SystemCall): number => (isOutgoing(call) ? call.began : call.ended);

const isOutgoing = ({ name }: SystemCall): boolean => /^(?:write|writev|sendto|sendmsg)$/u.test(name);

const isPush = ({ name, args }: SystemCall): boolean =>
  /^(?:read|readv|recvfrom|recvmsg)$/u.test(name) && /"POST \S*\/push /u.test(args);

const isAnswer = (call: SystemCall): boolean => isOutgoing(call) && call.args.includes('"HTTP/1.1 200 ');

const syncWithin = (calls: readonly SystemCall[], after: number, before: number): number | undefined =>
  calls.find(
    ({ name, on, result, began, ended }) =>
      /^f(?:data)?sync$/u.test(name) &&
      on.endsWith('-wal') &&
      result === 0 &&
      began > after &&
      ended < before,
  )?.ended;
