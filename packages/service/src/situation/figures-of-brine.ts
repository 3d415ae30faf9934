import { quantity } from '@brinewright/units';
import type { Ledger } from '../derivation/ledger.ts';
import type { Conditioner, Visit } from '../visit/schema.ts';
import { rawWater } from './figures-of-water.ts';

const sixtyFahrenheit = 288.705_556;

/** The brine stands at the room's temperature between regenerations: measured, else as cold as the water, else 60 °F. */
export const putBrineTank = (visit: Visit, conditioner: Conditioner, ledger: Ledger): void => {
  const { brineTank } = conditioner;
  if (brineTank?.temperature !== undefined)
    ledger.given('situation.brine.temperature', brineTank.temperature);
  else
    ledger.assume(
      'situation.brine.temperature',
      quantity('temperature', rawWater(visit)?.temperature?.value.si ?? sixtyFahrenheit),
      'ours',
    );
  if (brineTank?.diameter !== undefined) ledger.given('situation.brine.diameter', brineTank.diameter);
  if (brineTank?.level !== undefined) ledger.given('situation.brine.level', brineTank.level);
};
