import { chmodSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { asFault, StoreFault } from './store-fault.ts';

/**
 * The right to write to a file, held until released or until the process ends, however it ends: an exclusive lock of
 * the system on a side file.
 * @throws StoreFault 'locked' while another holds it
 */
export const lockFile = (path: string): (() => void) => {
  const side = `${path}.lock`;
  try {
    return hold(side);
  } catch (error) {
    const fault = asFault(error, side);
    throw fault instanceof StoreFault && fault.code === 'locked'
      ? new StoreFault('locked', path, error)
      : fault;
  }
};

const hold = (side: string): (() => void) => {
  const lock = new DatabaseSync(side, { timeout: 0 });
  try {
    chmodSync(side, 0o600);
    lock.exec('begin exclusive');
  } catch (error) {
    lock.close();
    throw error;
  }
  return () => lock.close();
};
