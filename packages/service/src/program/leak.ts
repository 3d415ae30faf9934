import { leakPerDay, useOverTime } from '@brinewright/physics';
import { fromUnit, quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { Ledger } from '../derivation/ledger.ts';

/** The stock's test of the drain line in service. */
const drainInService = 'reading.drain-in-service';
const nothing = fromUnit(0.03, 'gpm', 'flow').si;
const year = 365.25 * 86_400;

/** Water that trickles to the drain in service, a day and a year. */
export const putLeak = (ledger: Ledger): readonly Message[] => {
  if ((ledger.value(drainInService) ?? 0) <= nothing) return [];
  ledger.derive(leakPerDay, { leakFlow: drainInService }, { leakPerDay: 'program.leak.day' });
  ledger.assume('program.rule.year', quantity('time', year), 'definition');
  ledger.derive(
    useOverTime,
    { dailyUse: 'program.leak.day', serviceTime: 'program.rule.year' },
    { serviceVolume: 'program.leak.year' },
  );
  return [
    message('program.leak', {
      day: quantity('volume', ledger.need('program.leak.day')),
      year: quantity('volume', ledger.need('program.leak.year')),
    }),
  ];
};
