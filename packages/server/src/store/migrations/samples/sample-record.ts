import { type Sealed, seal } from '@brinewright/journal';
import type { Chance, SqlStore } from '../../sql-store.ts';

/* What the dumps hold: a little of everything a store keeps, the same in every one of them. */

const id = (place: number): string => `00000000-0000-7000-8000-${place.toString(16).padStart(12, '0')}`;

export const company = id(0xc0);
const hand = { company, stream: id(0x51), device: id(0xd1) };

export const sampleChance = (): Chance => {
  let drawn = 0;
  return {
    now: () => '2026-11-25T09:00:00.000Z',
    draw: () => {
      drawn += 1;
      return id(0xe00 + drawn);
    },
  };
};

const entry = (seq: number, payload: Sealed['entry']['payload'], kind = 'visit-noted/1'): Sealed =>
  seal({
    id: id(0x100 + seq),
    ...hand,
    seq,
    lamport: seq,
    seen: {},
    kind,
    payload,
    author: 'Sample Hand',
    wall: '2026-11-25T08:00:00.000Z',
    zone: 'America/Chicago',
    app: 'sample',
    about: {},
  });

export const told = entry(1, { text: "It's hard water: 25 gpg, ñ, \u0000 and 🧂" });
export const secret = entry(2, { text: 'gate code' });
export const redaction = entry(3, { target: secret.entry.id, reason: 'asked for' }, 'redacted/1');
export const later = entry(4, { text: 'from a later version', more: [1, null, true] }, 'something-later/7');
/** It has not come; its redaction has. */
export const missing = entry(6, { text: 'not yet here' });
export const early = entry(5, { target: missing.entry.id, reason: 'asked for' }, 'redacted/1');

export const fillSample = async (store: SqlStore): Promise<void> => {
  await store.beginWorkshop(company, 'Ana');
  await store.pairDevice({ company, id: id(0xf1), name: 'van phone', keyHash: 'a1'.repeat(32) });
  await store.pairDevice({ company, id: id(0xf2), name: 'lost phone', keyHash: 'b2'.repeat(32) });
  await store.touchDevice(company, id(0xf1));
  await store.revokeDevice(company, id(0xf2));
  await store.push({
    company,
    pusher: id(0xf1),
    isOwner: true,
    received: '2026-11-25T09:00:00.000Z',
    entries: [told, secret, redaction, later, early],
  });
};
