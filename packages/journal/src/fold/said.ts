import type { Entry } from '../entry/entry.ts';
import type { Said } from './folded.ts';

/** From here on a clock is called wrong (J5). */
const wrongFrom = 5 * 60_000;

/** Who wrote an entry and when, by the server's clock where the device has met it (J5). */
export const saidOf = ({ id, author, wall, zone, clock = 0 }: Entry): Said => {
  const at = new Date(Date.parse(wall) + clock);
  return {
    entry: id,
    author,
    zone,
    at: Number.isNaN(at.getTime()) ? wall : at.toISOString(),
    ...(Math.abs(clock) < wrongFrom ? {} : { clockOff: clock }),
  };
};
