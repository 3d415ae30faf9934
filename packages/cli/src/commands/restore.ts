import { resolve } from 'node:path';
import { message } from '@brinewright/words';
import { type Call, print, printJson } from '../call.ts';
import { exit } from '../exit.ts';
import { folderOf, placeOf } from './data-place.ts';
import { withStore } from './with-store.ts';

/** A backup in place of what is there, which is kept. */
export const restoreCommand = (call: Call): Promise<number> =>
  withStore(call, async () => {
    const { restore } = await import('@brinewright/server/store');
    const [file = ''] = call.args;
    const place = await placeOf(call);
    const done = await restore({
      from: resolve(call.io.cwd, file),
      place: place.record,
      now: call.io.now(),
      asideFolder: folderOf(place),
    });
    const { entries, files, aside } = done;
    if (call.json) printJson(call, { ...done, aside: aside ?? null });
    else
      print(call, [
        call.speech.say(message('cli.restore.done', { entries, files })),
        ...(aside === undefined ? [] : [call.speech.say(message('cli.restore.aside', { aside }))]),
      ]);
    return exit.fine;
  });
