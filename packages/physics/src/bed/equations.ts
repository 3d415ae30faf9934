import type { Equation } from '../meta/equation.ts';
import { ergun, ergunConstants, ergunWithConstants } from './ergun.ts';
import { expansionErgun, upflowErgun } from './expansion-ergun.ts';
import { bedPressureLoss, liftedBedLoss } from './pressure-loss.ts';
import { expansionRichardsonZaki, richardsonZakiExponent, upflowRichardsonZaki } from './richardson-zaki.ts';
import { rose } from './rose.ts';
import { terminalVelocity } from './terminal-velocity.ts';
import { wenYu } from './wen-yu.ts';

export const bedEquations: readonly Equation[] = [
  ergun,
  ergunWithConstants,
  ergunConstants,
  rose,
  bedPressureLoss,
  liftedBedLoss,
  terminalVelocity,
  richardsonZakiExponent,
  expansionRichardsonZaki,
  upflowRichardsonZaki,
  expansionErgun,
  upflowErgun,
  wenYu,
];
