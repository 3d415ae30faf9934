import { type Entry, isTombstone, type Logged, targetOf } from '@brinewright/journal';
import type { EntryTable } from './schema.ts';

/** Bodies were checked when they came; they are read back as they were written. */
export const entryOf = (body: string): Entry => {
  const entry: Entry = JSON.parse(body);
  return entry;
};

export const shownColumns = ['position', 'hash', 'body', 'pusher', 'received'] as const;

export const loggedOf = ({
  position,
  hash,
  body,
  pusher,
  received,
}: Pick<EntryTable, (typeof shownColumns)[number]>): Logged => {
  const entry = entryOf(body);
  const logged = { entry, text: body, hash, position, pusher, received };
  return isTombstone(entry) ? { ...logged, redacted: true } : logged;
};

export const rowOf = ({ entry, text, hash, position, pusher, received }: Logged): EntryTable => ({
  company: entry.company,
  position,
  id: entry.id,
  stream: entry.stream,
  device: entry.device,
  seq: entry.seq,
  lamport: entry.lamport,
  kind: entry.kind,
  hash,
  body: text,
  pusher,
  received,
  redacts: targetOf(entry) ?? null,
});
