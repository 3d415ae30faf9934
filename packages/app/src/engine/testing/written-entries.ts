import type { Draft, Entry } from '@brinewright/journal';

const uuid = (number: number): string => `00000000-0000-7000-8000-${String(number).padStart(12, '0')}`;

export const testStream = uuid(2);

/** Drafts as one device would have written them, one after the other. */
export const writtenEntries = (drafts: readonly Draft[]): readonly Entry[] =>
  drafts.map(({ stream, kind, payload, about }, place) => ({
    id: uuid(1000 + place),
    company: uuid(1),
    stream,
    device: uuid(3),
    seq: place + 1,
    lamport: place + 1,
    seen: {},
    kind,
    payload,
    author: 'Ines Marlow',
    wall: '2026-11-25T09:00:00Z',
    zone: 'America/New_York',
    app: 'test',
    about,
  }));
