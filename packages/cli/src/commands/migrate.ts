import { message } from '@brinewright/words';
import { type Call, print, printJson } from '../call.ts';
import { optionValue } from '../command-line/options.ts';
import { exit } from '../exit.ts';
import { placeOf } from './data-place.ts';
import { withStore } from './with-store.ts';

/** Brings a record to the form of this version; a database by the role that owns its tables. */
export const migrateCommand = (call: Call): Promise<number> =>
  withStore(call, async () => {
    const { migratePostgres, openPostgres, openSqlite } = await import('@brinewright/server/store');
    const { record } = await placeOf(call);
    if (record.kind === 'postgres') await migratePostgres(record.url, optionValue(call.given, 'role'));
    const store = await (record.kind === 'postgres' ? openPostgres(record.url) : openSqlite(record.path));
    await store.close();
    const { where } = store;
    if (call.json) printJson(call, { where });
    else print(call, [call.speech.say(message('cli.migrate.done', { where }))]);
    return exit.fine;
  });
