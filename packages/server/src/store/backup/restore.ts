import { randomUUID } from 'node:crypto';
import type { Place } from './place.ts';
import { restorePostgres } from './restore-postgres.ts';
import { restoreSqlite } from './restore-sqlite.ts';
import { type BackupFault, verifyBackup } from './verify.ts';

/** The backup has faults; nothing was touched. */
export class BadBackup extends Error {
  override readonly name = 'BadBackup';
  readonly path: string;
  readonly faults: readonly BackupFault[];

  constructor(path: string, faults: readonly BackupFault[]) {
    super(`${path}: ${JSON.stringify(faults.slice(0, 3))}`);
    this.path = path;
    this.faults = faults;
  }
}

export type RestoreOptions = {
  readonly from: string;
  readonly place: Place;
  /** ISO, of the server's clock; stands in the name of what is kept aside. */
  readonly now: string;
  /** Where PostgreSQL's record is kept before it is replaced; a folder. */
  readonly asideFolder: string;
  /** Gives the new epoch and the new own device. */
  readonly draw?: () => string;
};

export type Restored = {
  readonly company: string;
  readonly epoch: string;
  readonly entries: number;
  readonly files: number;
  /** What was there before; undefined where nothing was. */
  readonly aside: string | undefined;
};

/**
 * Puts a backup in place of what is there, which is kept aside. The record gets a new epoch and a new own device, so
 * that devices send again what the backup lacks (S4, J2); devices that were paired stay so.
 * @throws BadBackup; StoreFault 'locked' while a server runs on the file, 'other-workshop', 'newer', 'store-away'
 */
export const restore = async ({ draw = randomUUID, ...options }: RestoreOptions): Promise<Restored> => {
  const { faults, company, entries, files } = verifyBackup(options.from);
  if (faults.length > 0) throw new BadBackup(options.from, faults);
  const fresh = { epoch: draw(), device: draw() };
  const { place, ...rest } = options;
  const aside =
    place.kind === 'sqlite'
      ? await restoreSqlite({ ...rest, ...fresh, place, company })
      : await restorePostgres({ ...rest, ...fresh, place, company });
  return { company, epoch: fresh.epoch, entries, files, aside };
};
