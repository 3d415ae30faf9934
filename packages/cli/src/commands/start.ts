import { resolve } from 'node:path';
import type { Call } from '../call.ts';
import { hanging } from '../text/lines.ts';
import { assessCommand } from './assess.ts';
import { keepServing } from './serve.ts';

const demo = resolve(import.meta.dirname, '../../../../demo/laundry-fast.yaml');

/** The workshop with the demo; with --once the assessment of a demo visit. */
export const startCommand = (call: Call): number | Promise<number> => {
  if (!call.given.flags.has('once')) return keepServing(call, true);
  if (!call.json) call.io.out(`${hanging('', call.speech.word('cli.start.invented')).join('\n')}\n\n`);
  return assessCommand({ ...call, args: [demo] });
};
