import { randomFrom } from '../random.ts';
import type { TrialWorld } from './trial-world.ts';

const mostRounds = 20;

/** No more trouble: all meet the server until nobody has anything new. */
export const heal = async (world: TrialWorld): Promise<void> => {
  const random = randomFrom(1);
  for (const message of world.late.splice(0)) await message();
  for (let round = 0; round < mostRounds; round += 1) {
    const before = await world.server.store.state(world.places.company);
    let isQuiet = true;
    for (const device of world.devices) {
      const result = await world.sync(device, random);
      if (result?.state !== 'done')
        world.faults.push(`${device.label} cannot meet the server: ${result?.state}`);
      else if (result.sent + result.received > 0) isQuiet = false;
    }
    const after = await world.server.store.state(world.places.company);
    if (isQuiet && after.last === before.last && round > 0) return;
  }
  world.faults.push(`not quiet after ${mostRounds} rounds`);
};
