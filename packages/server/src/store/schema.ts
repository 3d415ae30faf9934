/*
 * The tables as queries see them. Company stands on every row; ids are lower-case text in both databases, numbers are
 * numbers, times are ISO text.
 */

export type EntryTable = {
  company: string;
  /** The place in the company's log (S2). */
  position: number;
  id: string;
  stream: string;
  device: string;
  seq: number;
  lamport: number;
  kind: string;
  hash: string;
  /** Canonical form, as written; of a redacted entry the tombstone (R1). */
  body: string;
  pusher: string;
  received: string;
  /** Of a redaction: the entry it takes out. */
  redacts: string | null;
};

export type CompanyLogTable = {
  company: string;
  last: number;
  /** The highest of any entry of the company (J4). */
  lamport: number;
  /** Drawn anew at every restore (S4). */
  epoch: string;
  /** The own device that writes now (J2). */
  device: string;
  /** How many redactions wait for an entry that has not come. */
  waiting: number;
};

/** Every device this store ever wrote as. */
export type OwnDeviceTable = { company: string; device: string; since: string };

export type PairedDeviceTable = {
  company: string;
  id: string;
  name: string;
  key_hash: string;
  paired_at: string;
  seen_at: string | null;
  revoked_at: string | null;
};

/** Whose workshop this server is. */
export type WorkshopTable = { company: string; author: string; begun_at: string };

export type Database = {
  entry: EntryTable;
  company_log: CompanyLogTable;
  own_device: OwnDeviceTable;
  paired_device: PairedDeviceTable;
  workshop: WorkshopTable;
};
