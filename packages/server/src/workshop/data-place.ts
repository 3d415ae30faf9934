import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Place } from '../store/index.ts';

/** Where everything of a workshop lies: the record with its files, and the certificates made for the network. */
export type DataPlace = { readonly record: Place; readonly certificates: string };

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * By default in the user's data folder, which XDG_DATA_HOME moves. With a file named, everything else lies beside it:
 * FILE-files, FILE-certificates. With a database only the files and certificates lie on this computer.
 */
export const dataPlace = (
  env: Environment,
  {
    data,
    databaseUrl,
  }: { readonly data?: string | undefined; readonly databaseUrl?: string | undefined } = {},
): DataPlace => {
  const { path, files, certificates } = data === undefined ? usual(env) : beside(resolve(data));
  return {
    certificates,
    record:
      databaseUrl === undefined
        ? { kind: 'sqlite', path, files }
        : { kind: 'postgres', url: databaseUrl, files },
  };
};

const usual = ({ XDG_DATA_HOME: given }: Environment) => {
  const home = given === undefined || given === '' ? join(homedir(), '.local', 'share') : given;
  const folder = join(home, 'brinewright');
  return {
    path: join(folder, 'workshop.sqlite'),
    files: join(folder, 'files'),
    certificates: join(folder, 'certificates'),
  };
};

const beside = (path: string) => ({ path, files: `${path}-files`, certificates: `${path}-certificates` });
