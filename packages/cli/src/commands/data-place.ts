import { dirname, resolve } from 'node:path';
import type { DataPlace } from '@brinewright/server';
import type { Call } from '../call.ts';
import { optionValue } from '../command-line/options.ts';

/** Where this call's record lies: by --data and DATABASE_URL, else the user's data folder. */
export const placeOf = async ({ io, given }: Call): Promise<DataPlace> => {
  const { dataPlace } = await import('@brinewright/server');
  const data = optionValue(given, 'data');
  const databaseUrl = io.env.DATABASE_URL;
  return dataPlace(io.env, {
    ...(data === undefined ? {} : { data: resolve(io.cwd, data) }),
    ...(databaseUrl === undefined || databaseUrl === '' ? {} : { databaseUrl }),
  });
};

/** The folder everything lies in that is on this computer. */
export const folderOf = ({ record }: DataPlace): string => dirname(record.files);
