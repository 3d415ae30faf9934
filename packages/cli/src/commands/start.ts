import { resolve } from 'node:path';
import type { Call } from '../call.ts';
import { hanging } from '../text/lines.ts';
import { assessCommand } from './assess.ts';

const demo = resolve(import.meta.dirname, '../../../../demo/laundry-fast.yaml');

/** The assessment of the demo visit; the server will take this place. */
export const startCommand = (call: Call): number => {
  if (!call.json) call.io.out(`${hanging('', call.speech.word('cli.start.invented')).join('\n')}\n\n`);
  return assessCommand({ ...call, args: [demo] });
};
