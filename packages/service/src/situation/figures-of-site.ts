import { quantity } from '@brinewright/units';
import { message } from '@brinewright/words';
import type { Ledger } from '../derivation/ledger.ts';
import type { Gap } from '../stage/stage.ts';
import type { Visit } from '../visit/schema.ts';

export const putSupply = (visit: Visit, ledger: Ledger): void => {
  const { supply } = visit;
  if (supply?.pressure !== undefined) ledger.given('situation.supply.pressure', supply.pressure);
  if (supply?.flow !== undefined) ledger.given('situation.supply.flow', supply.flow);
  if (supply?.drain !== undefined) ledger.given('situation.drain.carries', supply.drain);
  if (supply?.drainPipe !== undefined)
    ledger.given('situation.drain.pipe', { value: supply.drainPipe, how: 'measured' });
  else ledger.assume('situation.drain.pipe', quantity('length', 0.01905), 'ours');
};

export const putDemand = (visit: Visit, ledger: Ledger): readonly Gap[] => {
  const { demand } = visit;
  if (demand?.daily !== undefined) ledger.given('situation.demand.daily', demand.daily);
  if (demand?.peak !== undefined) ledger.given('situation.demand.peak', demand.peak);
  if (demand?.usual !== undefined) ledger.given('situation.demand.usual', demand.usual);
  if (ledger.has('situation.demand.daily')) return [];
  return [{ needs: ['demand', 'daily'], message: message('situation.gap.demand'), settles: ['program'] }];
};

export const putPrices = (visit: Visit, ledger: Ledger): void => {
  const prices = visit.site.prices;
  if (prices?.salt !== undefined) ledger.given('situation.price.salt', { value: prices.salt, how: 'told' });
  if (prices?.water !== undefined)
    ledger.given('situation.price.water', { value: prices.water, how: 'told' });
  if (prices?.sewer !== undefined)
    ledger.given('situation.price.sewer', { value: prices.sewer, how: 'told' });
  else if (prices?.water !== undefined)
    ledger.assume('situation.price.sewer', quantity('price-volume', 0), 'ours');
};
