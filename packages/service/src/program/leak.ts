import { leakPerDay, useOverTime, waterCost } from '@brinewright/physics';
import { fromUnit, quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { Ledger } from '../derivation/ledger.ts';
import { stockIds } from '../stock-ids.ts';

const drainInService = `reading.${stockIds.tests.drainInService}`;
const nothing = fromUnit(0.03, 'gpm', 'flow').si;
const year = fromUnit(365.25, 'd', 'time');

/** Water that trickles to the drain in service, a day and a year, and what a day of it costs. */
export const putLeak = (ledger: Ledger): readonly Message[] => {
  if ((ledger.value(drainInService) ?? 0) <= nothing) return [];
  ledger.derive(leakPerDay, { leakFlow: drainInService }, { leakPerDay: 'program.leak.day' });
  ledger.assume('program.rule.year', year, 'definition');
  ledger.derive(
    useOverTime,
    { dailyUse: 'program.leak.day', serviceTime: 'program.rule.year' },
    { serviceVolume: 'program.leak.year' },
  );
  const priced = ledger.derive(
    waterCost,
    {
      waterVolume: 'program.leak.day',
      waterPrice: 'situation.price.water',
      sewerPrice: 'situation.price.sewer',
    },
    { waterCost: 'program.leak.cost-day' },
  );
  const values = {
    day: quantity('volume', ledger.need('program.leak.day')),
    year: quantity('volume', ledger.need('program.leak.year')),
  };
  return priced
    ? [
        message('program.leak-cost', {
          ...values,
          cost: quantity('money', ledger.need('program.leak.cost-day')),
        }),
      ]
    : [message('program.leak', values)];
};
