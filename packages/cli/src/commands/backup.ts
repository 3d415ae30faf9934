import { resolve } from 'node:path';
import { message } from '@brinewright/words';
import { type Call, complain, print, printJson } from '../call.ts';
import { exit } from '../exit.ts';
import { placeOf } from './data-place.ts';
import { withStore } from './with-store.ts';

/** Everything in one file, also while a server runs. */
export const backupCommand = (call: Call): Promise<number> =>
  withStore(call, async () => {
    const { backup } = await import('@brinewright/server/store');
    const [file = ''] = call.args;
    const { record: place } = await placeOf(call);
    const done = await backup({ place, to: resolve(call.io.cwd, file), now: call.io.now() });
    const { path, entries, files, spoiled } = done;
    if (call.json) printJson(call, done);
    else print(call, [call.speech.say(message('cli.backup.done', { file: path, entries, files }))]);
    if (spoiled.length === 0) return exit.fine;
    const hashes = spoiled.join(', ');
    complain(call, message('cli.backup.spoiled', { count: spoiled.length, hashes }));
    complain(call, message('cli.backup.spoiled.mend'));
    return exit.faulty;
  });
