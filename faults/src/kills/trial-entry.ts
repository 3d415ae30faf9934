import { type Sealed, seal } from '@brinewright/journal';

/** An entry of a kind that no version knows, which is kept all the same. */
export const trialEntry = (what: {
  readonly id: string;
  readonly company: string;
  readonly stream: string;
  readonly device: string;
  readonly seq: number;
  readonly lamport: number;
  readonly note: string;
}): Sealed => {
  const { note, ...numbers } = what;
  return seal({
    ...numbers,
    seen: {},
    kind: 'trial-noted/1',
    payload: { note },
    author: 'trial',
    wall: '2026-11-25T09:00:00Z',
    zone: 'UTC',
    app: 'faults',
    about: {},
  });
};
