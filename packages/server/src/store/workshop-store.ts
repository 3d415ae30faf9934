import type { Kysely } from 'kysely';
import type { Database, PairedDeviceTable } from './schema.ts';

/** Whose workshop this server is: its company, and the name entries made here are signed with. */
export type BegunWorkshop = { readonly company: string; readonly author: string; readonly begunAt: string };

export type PairedDevice = {
  readonly company: string;
  readonly id: string;
  readonly name: string;
  /** SHA-256 of its key; the key is nowhere but on the device. */
  readonly keyHash: string;
  readonly pairedAt: string;
  readonly seenAt: string | undefined;
  readonly revokedAt: string | undefined;
};

/** What a server keeps beside the journal. */
export interface WorkshopStore {
  workshop(): Promise<BegunWorkshop | undefined>;
  /** Once: a server serves one company. @throws RangeError where one was begun. */
  beginWorkshop(company: string, author: string): Promise<BegunWorkshop>;
  pairDevice(device: Pick<PairedDevice, 'company' | 'id' | 'name' | 'keyHash'>): Promise<PairedDevice>;
  /** The device the key belongs to, unless it was revoked. */
  deviceByKey(keyHash: string): Promise<PairedDevice | undefined>;
  /** In the order they were paired, those that were revoked too. */
  devices(company: string): Promise<readonly PairedDevice[]>;
  revokeDevice(company: string, id: string): Promise<void>;
  /** It was here now. */
  touchDevice(company: string, id: string): Promise<void>;
}

export const pairedOf = (row: PairedDeviceTable): PairedDevice => ({
  company: row.company,
  id: row.id,
  name: row.name,
  keyHash: row.key_hash,
  pairedAt: row.paired_at,
  seenAt: row.seen_at ?? undefined,
  revokedAt: row.revoked_at ?? undefined,
});

export const begunWorkshop = async (db: Kysely<Database>): Promise<BegunWorkshop | undefined> => {
  const row = await db.selectFrom('workshop').selectAll().executeTakeFirst();
  return row === undefined ? undefined : { company: row.company, author: row.author, begunAt: row.begun_at };
};
