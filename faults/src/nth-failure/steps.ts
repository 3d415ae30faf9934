import { createHash } from 'node:crypto';
import { pullReply, readEntry } from '@brinewright/journal';
import { trialEntry } from '../kills/trial-entry.ts';
import { uuidFrom } from '../kills/uuid.ts';
import type { Random } from '../random.ts';
import { type Answer, jsonIn, type Request } from './answers.ts';

/** One thing a device asks for, and how it is seen whether it is done whole, not at all, or by halves. */
export type Step = {
  readonly request: Request;
  /** Told apart by what a second, undisturbed request says. */
  readonly look: Request;
  readonly seen: (looked: Answer) => 'all' | 'nothing' | 'half';
  /** Whether the answer gives what was asked for. */
  readonly isRight: (answer: Answer) => boolean;
};

export const stepNames = ['push', 'pull', 'file sent', 'file fetched'] as const;
export type StepName = (typeof stepNames)[number];

const json = 'application/json';
const pullAll: Request = {
  method: 'POST',
  url: '/own/api/sync/pull',
  payload: JSON.stringify({ follow: { all: 0 } }),
  type: json,
};

/** A push of three new entries. */
export const pushStep = (random: Random, company: string): Step => {
  const [stream, device] = [uuidFrom(random), uuidFrom(random)];
  const entries = [1, 2, 3].map(
    (seq) =>
      trialEntry({ id: uuidFrom(random), company, stream, device, seq, lamport: seq, note: 'a note' }).entry,
  );
  const ids = new Set(entries.map(({ id }) => id));
  return {
    request: {
      method: 'POST',
      url: '/own/api/sync/push',
      payload: JSON.stringify({ entries: entries.map((entry) => ({ entry })) }),
      type: json,
    },
    look: pullAll,
    seen: (looked) => {
      const held = idsIn(looked)?.filter((id) => ids.has(id)).length;
      if (held === ids.size) return 'all';
      return held === 0 ? 'nothing' : 'half';
    },
    isRight: ({ status, body }) => status === 200 && (body.toString().match(/"kept"/gu) ?? []).length === 3,
  };
};

/** The ids in the whole log; undefined where its places have a gap. */
const idsIn = (looked: Answer): readonly string[] | undefined => {
  const { entries, last } = pullReply.parse(jsonIn(looked));
  const isWhole = entries.length === last && entries.every(({ position }, place) => position === place + 1);
  return isWhole
    ? entries.map((wire) => {
        const read = readEntry(wire);
        return read.ok ? read.sealed.entry.id : '';
      })
    : undefined;
};

/** A pull changes nothing: before, after and in between the whole log is there. */
export const pullStep = (): Step => ({
  request: pullAll,
  look: pullAll,
  seen: (looked) => (idsIn(looked) === undefined ? 'half' : 'all'),
  isRight: (answer) => answer.status === 200 && idsIn(answer) !== undefined,
});

const contentFrom = (random: Random): Buffer =>
  Buffer.from(Array.from({ length: 5000 }, () => random.between(0, 255)));

const fileAt = (content: Buffer): string =>
  `/own/api/files/${createHash('sha256').update(content).digest('hex')}`;

const seenFile =
  (content: Buffer) =>
  ({ status, body }: Answer): 'all' | 'nothing' | 'half' => {
    if (status === 404) return 'nothing';
    return status === 200 && body.equals(content) ? 'all' : 'half';
  };

/** A file of five thousand bytes. */
export const sendStep = (random: Random): Step => {
  const content = contentFrom(random);
  const url = fileAt(content);
  return {
    request: { method: 'PUT', url, payload: content, type: 'application/octet-stream' },
    look: { method: 'GET', url },
    seen: seenFile(content),
    isRight: ({ status }) => status === 204,
  };
};

/** The file that `sent` brought. */
export const fetchStep = ({ request, look, seen }: Step): Step => ({
  request: { method: 'GET', url: request.url },
  look,
  seen,
  isRight: (answer) => seen(answer) === 'all',
});
