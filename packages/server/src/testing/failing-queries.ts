import type { CompiledQuery, DatabaseConnection, Dialect, Driver, QueryResult } from 'kysely';
import { MeantToFail, type NthFailure } from './nth-failure.ts';

/**
 * A dialect whose n-th query fails: 'before' it is sent, or 'after' it was done, so that the answer is lost. Begin,
 * commit and rollback are queries too.
 */
export const failingQueries =
  (nth: NthFailure, when: 'before' | 'after') =>
  (dialect: Dialect): Dialect => ({
    createDriver: () => watchDriver(dialect.createDriver(), nth, when),
    createQueryCompiler: () => dialect.createQueryCompiler(),
    createAdapter: () => dialect.createAdapter(),
    createIntrospector: (db) => dialect.createIntrospector(db),
  });

const watchDriver = (driver: Driver, nth: NthFailure, when: 'before' | 'after'): Driver => {
  const acquire = driver.acquireConnection.bind(driver);
  const watched = new WeakSet<DatabaseConnection>();
  driver.acquireConnection = async (options) => {
    const connection = await acquire(options);
    if (!watched.has(connection)) watchConnection(connection, nth, when);
    watched.add(connection);
    return connection;
  };
  return driver;
};

/** Methods are put in place of its own, because drivers know their connections by what is private in them. */
const watchConnection = (connection: DatabaseConnection, nth: NthFailure, when: 'before' | 'after'): void => {
  const execute = connection.executeQuery.bind(connection);
  connection.executeQuery = async <R>(query: CompiledQuery): Promise<QueryResult<R>> => {
    const fails = nth.isNow();
    if (fails && when === 'before') throw new MeantToFail(query.sql);
    const result = await execute<R>(query);
    if (fails) throw new MeantToFail(query.sql);
    return result;
  };
};
