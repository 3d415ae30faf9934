export { type BackedUp, type BackupOptions, backup } from './backup/backup.ts';
export type { Place } from './backup/place.ts';
export { BadBackup, type Restored, type RestoreOptions, restore } from './backup/restore.ts';
export { type BackupFault, type Verified, verifyBackup } from './backup/verify.ts';
export {
  migratePostgres,
  openPostgres,
  type PostgresOptions,
  type PostgresStore,
} from './open-postgres.ts';
export { openSqlite, type SqliteOptions, type SqliteStore } from './open-sqlite.ts';
export { type Chance, SqlStore } from './sql-store.ts';
export { type FaultCode, StoreFault } from './store-fault.ts';
export type { BegunWorkshop, PairedDevice, WorkshopStore } from './workshop-store.ts';
