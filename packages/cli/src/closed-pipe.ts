import type { Writable } from 'node:stream';
import { exit } from './exit.ts';

/** `brinewright assess … | head`: who has read enough closes the pipe, and that is no mistake. */
export const endQuietly = (stream: Writable): void => {
  stream.on('error', (error: Error) => {
    if (!('code' in error) || error.code !== 'EPIPE') throw error;
    process.exit(exit.fine);
  });
};
