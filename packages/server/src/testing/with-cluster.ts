import { afterAll, beforeAll, describe, it } from 'vitest';
import { type Cluster, postgresMissing, postgresPrograms, startCluster } from './cluster.ts';

/**
 * Tests that need PostgreSQL, sharing one cluster. Where its programs are missing they are skipped with what to type;
 * where everything has to be tried, that is a failure.
 */
export const withCluster = (title: string, tests: (cluster: () => Cluster) => void): void => {
  if (postgresPrograms() !== undefined) describe(title, () => tests(sharedCluster()));
  else if (process.env.CI === 'true') it(title, noCluster);
  else describe.skip(`${title} (${postgresMissing})`, () => tests(noCluster));
};

const sharedCluster = (): (() => Cluster) => {
  let cluster: Cluster | undefined;
  beforeAll(async () => {
    cluster = await startCluster({ fsync: false });
  }, 120_000);
  afterAll(() => cluster?.stop());
  return () => cluster ?? noCluster();
};

const noCluster = (): never => {
  throw new Error(postgresMissing);
};
