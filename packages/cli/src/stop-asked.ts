import process from 'node:process';

/**
 * Ctrl-C under npm comes twice within moments, once from the terminal and once from npm. A second one means it when it
 * comes later than this, in milliseconds.
 */
const oneGesture = 500;

/** Resolves at the first SIGINT or SIGTERM; the second ends the program where it stands. */
export const stopAsked = (): Promise<void> =>
  new Promise((resolve) => {
    let first: number | undefined;
    const asked = (): void => {
      if (first === undefined) {
        first = performance.now();
        resolve();
      } else if (performance.now() - first > oneGesture) process.exit(130);
    };
    process.on('SIGINT', asked);
    process.on('SIGTERM', asked);
  });
