import type { Writable } from 'node:stream';
import { exit } from './exit.ts';

/**
 * `brinewright assess … | head`: who has read enough closes the pipe, and that is no mistake. Any other loss, a full
 * disk for instance, is told where that can still be done.
 */
export const endQuietly = (stream: Writable, told: (why: string) => void): void => {
  stream.on('error', (error: Error) => {
    const why = 'code' in error ? String(error.code) : error.message;
    if (why === 'EPIPE') process.exit(exit.fine);
    told(why);
    process.exit(exit.faulty);
  });
};
