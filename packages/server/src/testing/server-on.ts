import { readDefinitions } from '@brinewright/equipment/load-files';
import { type Disk, realDisk } from '../files/disk.ts';
import { openFiles } from '../files/file-store.ts';
import { buildServer } from '../http/build-server.ts';
import { usualTimes } from '../http/limits.ts';
import type { SqlStore } from '../store/index.ts';
import { baseOf } from '../workshop/definitions.ts';
import { openHouse } from '../workshop/open-house.ts';

export type TrialRecord = {
  readonly store: SqlStore;
  /** The folder of its files. */
  readonly files: string;
  /** Wraps the way to the disk, so that trials can let the n-th call fail. */
  readonly around: (disk: Disk) => Disk;
};

/** The server on a record that a trial made, to be asked without a socket by `inject`. */
export const serverOn = async ({ store, files, around }: TrialRecord) => {
  const read = baseOf(readDefinitions([]));
  if (!read.ok) throw new Error('the shipped definitions have errors');
  const house = await openHouse({
    own: { store, files: await openFiles(files, { disk: around(realDisk) }) },
    demo: undefined,
    base: read.base,
    lan: () => undefined,
    dataPlace: 'a trial',
    app: undefined,
    usualLanguage: 'en',
    demoName: '',
    now: () => new Date('2026-11-25T15:00:00.000Z'),
  });
  return buildServer(house, { side: 'loopback', times: usualTimes, logger: false });
};
