import type { Medium } from '@brinewright/equipment';
import {
  ergunConstants,
  expansionAtFreeHeight,
  expansionErgun,
  expansionRichardsonZaki,
  flowForUpflow,
  upflowErgun,
  upflowRate,
  upflowRichardsonZaki,
  waterDensity,
  waterViscosity,
} from '@brinewright/physics';
import { quantity } from '@brinewright/units';
import type { FigureId } from '../derivation/figure.ts';
import type { Ledger } from '../derivation/ledger.ts';
import { rules } from './rules.ts';

type Season = 'coldest' | 'mean' | 'warmest';

/** Which lift, in which water, makes which edge of the window. */
const edges = [
  ['ceiling', 'coldest', 'program.window.expansion.most'],
  ['floor', 'warmest', 'program.window.expansion.least'],
  ['aim', 'mean', 'program.window.expansion.aim'],
] as const;

const grains = {
  diameter: 'situation.bed.grain',
  particleDensity: 'situation.bed.grain-density',
  voidage: 'situation.bed.voidage',
} as const;

const water = (season: Season) => ({
  density: `program.water.${season}.density`,
  viscosity: `program.water.${season}.viscosity`,
});

const constants = {
  viscousConstant: 'program.window.k-viscous',
  inertialConstant: 'program.window.k-inertial',
} as const;

/** Richardson-Zaki holds for round beads; grains with corners go by Ergun with their sphericity. */
const isRound = (medium: Medium): boolean => medium.sphericity >= 1;

/** The flows of backwash that make the window: what the free height, the least lift and the aim ask for. */
export const putLift = (ledger: Ledger, medium: Medium): void => {
  putWaters(ledger);
  putExpansions(ledger, medium);
  putConstants(ledger, medium);
  for (const [edge, season, expansion] of edges) {
    putUpflow(ledger, medium, season, expansion, `program.window.${edge}.upflow`);
    ledger.derive(
      flowForUpflow,
      { superficialVelocity: `program.window.${edge}.upflow`, area: 'situation.tank.area' },
      { flow: `program.window.${edge}` },
    );
  }
};

const putWaters = (ledger: Ledger): void => {
  for (const [, season] of edges) {
    const temperature = `situation.temperature.${season}`;
    ledger.derive(waterDensity, { temperature }, { density: water(season).density });
    ledger.derive(waterViscosity, { temperature }, { dynamicViscosity: water(season).viscosity });
  }
};

const putExpansions = (ledger: Ledger, medium: Medium): void => {
  ledger.assume('program.rule.margin', rules.margin, 'ours');
  ledger.assume('program.window.expansion.least', quantity('share', medium.expansion.least), 'ours');
  ledger.assume('program.window.expansion.aim', quantity('share', medium.expansion.aim), 'common-practice');
  ledger.derive(
    expansionAtFreeHeight,
    { freeHeight: 'situation.bed.free', margin: 'program.rule.margin', bedDepth: 'situation.bed.depth' },
    { expansion: 'program.window.expansion.most' },
  );
};

const putConstants = (ledger: Ledger, medium: Medium): void => {
  ledger.assume(
    'program.window.sphericity',
    quantity('ratio', medium.sphericity),
    'ours',
    isRound(medium) ? 0 : 0.05,
  );
  ledger.derive(
    ergunConstants,
    { sphericity: 'program.window.sphericity' },
    { viscousConstant: constants.viscousConstant, inertialConstant: constants.inertialConstant },
  );
};

const putUpflow = (
  ledger: Ledger,
  medium: Medium,
  season: Season,
  expansion: FigureId,
  superficialVelocity: FigureId,
): void => {
  if (isRound(medium))
    ledger.derive(upflowRichardsonZaki, { ...grains, expansion, ...water(season) }, { superficialVelocity });
  else
    ledger.derive(
      upflowErgun,
      { ...grains, ...constants, expansion, ...water(season) },
      { superficialVelocity },
    );
};

/** How far the ceiling itself lifts the bed in the warmest water: what a compromise would give. */
export const putLiftAtCeiling = (ledger: Ledger, medium: Medium): number | undefined => {
  const at = { ...grains, superficialVelocity: 'program.window.ceiling.upflow', ...water('warmest') };
  const expansion = 'program.window.ceiling.expansion';
  if (isRound(medium)) ledger.derive(expansionRichardsonZaki, at, { expansion });
  else ledger.derive(expansionErgun, { ...at, ...constants }, { expansion });
  return ledger.value(expansion);
};

/** How far the fitted rate (the aim, where none is fitted) lifts the bed, by the method we go by and by the other. */
export const putLiftAtRate = (ledger: Ledger, medium: Medium): void => {
  const flow = ledger.has('situation.rate.backwash') ? 'situation.rate.backwash' : 'program.window.aim';
  ledger.derive(
    upflowRate,
    { flow, diameter: 'situation.tank.diameter' },
    { superficialVelocity: 'program.backwash.upflow' },
  );
  const at = { ...grains, superficialVelocity: 'program.backwash.upflow' };
  for (const season of ['coldest', 'warmest'] as const) {
    const expansion = `program.backwash.expansion.${season}`;
    if (isRound(medium)) ledger.derive(expansionRichardsonZaki, { ...at, ...water(season) }, { expansion });
    else ledger.derive(expansionErgun, { ...at, ...constants, ...water(season) }, { expansion });
  }
  if (!isRound(medium)) return;
  ledger.derive(
    expansionErgun,
    { ...at, ...constants, ...water('coldest') },
    { expansion: 'program.backwash.expansion.ergun' },
  );
};
