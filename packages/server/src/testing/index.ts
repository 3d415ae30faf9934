export { type BareTable, barePostgres, bareSqlite } from './bare-insert.ts';
export {
  type Cluster,
  postgresMissing,
  postgresPrograms,
  type Role,
  startCluster,
} from './cluster.ts';
export { failingDisk } from './failing-disk.ts';
export { failingQueries } from './failing-queries.ts';
export { MeantToFail, NthFailure } from './nth-failure.ts';
export { serverOn } from './server-on.ts';
