import type { DeviceState } from '@brinewright/journal';
import { v7 } from 'uuid';
import type { AppDatabase } from './database.ts';

/** A name for this device where it has none yet; drawn here and never taken from elsewhere (J2). */
export const settleDevice = (database: AppDatabase, company: string): Promise<DeviceState> =>
  database.transaction('rw', database.device, async () => {
    const known = await database.device.get('state');
    if (known?.company === company) return known;
    const drawn: DeviceState = {
      company,
      device: v7(),
      formerly: [],
      epoch: undefined,
      lamport: 0,
      clock: undefined,
    };
    await database.device.put(drawn, 'state');
    return drawn;
  });
