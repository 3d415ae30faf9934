import type { Control } from '@brinewright/equipment';
import { quantity } from '@brinewright/units';
import type { FigureId } from '../derivation/figure.ts';
import type { Ledger } from '../derivation/ledger.ts';
import type { Situation } from '../situation/situation.ts';
import type { BackwashWindow } from './program-advice.ts';

type DrainStep = 'backwash' | 'fast-rinse';

/** The drain control that goes in because the fitted one is clearly outside the window. */
export const controlToFit = (s: Situation, window: BackwashWindow | undefined): Control | undefined =>
  window?.state === 'open' && window.clearly
    ? s.family.controls.drain.find(({ id }) => id === window.choice)
    : undefined;

/** Another drain control sets backwash and fast rinse; the program is made for it. */
export const putRatesToCome = (s: Situation, ledger: Ledger, window: BackwashWindow | undefined): void => {
  const control = controlToFit(s, window);
  if (control === undefined) return;
  ledger.define('program.rate.backwash', control.rate, control.id);
  const as = 'program.rate.backwash';
  ledger.choose(
    'program.rate.fast-rinse',
    quantity('flow', control.rate.si),
    'same-drain-control',
    { backwash: as },
    { as },
  );
};

/** The found program ran with what is fitted; every other one runs with what will be. */
export const rateOf = (ledger: Ledger, at: string, step: DrainStep): FigureId => {
  const toCome = `program.rate.${step}`;
  return at !== 'program.found' && ledger.has(toCome) ? toCome : `situation.rate.${step}`;
};
