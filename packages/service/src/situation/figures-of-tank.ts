import type { Equipment, Medium } from '@brinewright/equipment';
import {
  bedDepth,
  bedVolume,
  calibrateByPail,
  crossSection,
  insideDiameter,
  upflowRate,
  upflowRichardsonZaki,
  waterDensity,
  waterViscosity,
} from '@brinewright/physics';
import { quantity } from '@brinewright/units';
import { message } from '@brinewright/words';
import type { Ledger } from '../derivation/ledger.ts';
import type { Gap } from '../stage/stage.ts';
import type { Conditioner, Layer } from '../visit/schema.ts';

/** Inside diameter and cross-section: from girth and wall, or as read on the plate. */
export const putTank = (conditioner: Conditioner, ledger: Ledger): readonly Gap[] => {
  const { tank } = conditioner;
  if (tank?.girth !== undefined) {
    ledger.given('situation.tank.girth', tank.girth);
    if (tank.wall !== undefined) ledger.given('situation.tank.wall', tank.wall);
    else ledger.assume('situation.tank.wall', quantity('length', 0.00635), 'ours', 0.0015);
    ledger.derive(
      insideDiameter,
      { girth: 'situation.tank.girth', wallThickness: 'situation.tank.wall' },
      { diameter: 'situation.tank.diameter' },
    );
  } else if (tank?.diameter !== undefined) {
    ledger.given('situation.tank.diameter', tank.diameter);
  }
  if (tank?.height !== undefined) ledger.given('situation.tank.height', tank.height);
  ledger.derive(crossSection, { diameter: 'situation.tank.diameter' }, { area: 'situation.tank.area' });
  if (ledger.has('situation.tank.area')) return [];
  return [
    {
      needs: ['conditioners', conditioner.id, 'tank'],
      message: message('situation.gap.tank'),
      settles: ['program', 'proof'],
    },
  ];
};

/** The layer that the backwash must lift; with several, the deepest told. */
const mainLayer = (conditioner: Conditioner): Layer | undefined =>
  conditioner.media?.toSorted((a, b) => (b.depth?.value.si ?? 0) - (a.depth?.value.si ?? 0))[0];

export const mediumOf = (conditioner: Conditioner, equipment: Equipment): Medium | undefined => {
  const layer = mainLayer(conditioner);
  return layer === undefined ? undefined : equipment.media.get(layer.medium);
};

/** Depth, volume and free height of the bed, and what its grains are like. */
export const putBed = (
  conditioner: Conditioner,
  medium: Medium | undefined,
  ledger: Ledger,
): readonly Gap[] => {
  const layer = mainLayer(conditioner);
  if (layer?.depth !== undefined) ledger.given('situation.bed.depth', layer.depth);
  if (layer?.volume !== undefined) ledger.given('situation.bed.volume', layer.volume);
  if (layer?.free !== undefined) ledger.given('situation.bed.free', layer.free);
  if (layer?.age !== undefined) ledger.given('situation.bed.age', layer.age);
  else ledger.assume('situation.bed.age', quantity('time', 0, '0yr'), 'ours');
  putMissingOfDepthAndVolume(ledger);
  if (medium !== undefined) putMedium(medium, layer, ledger);
  return gapsOfBed(conditioner, ledger);
};

const putMissingOfDepthAndVolume = (ledger: Ledger): void => {
  if (!ledger.has('situation.bed.volume')) {
    ledger.derive(
      bedVolume,
      { diameter: 'situation.tank.diameter', bedDepth: 'situation.bed.depth' },
      { volume: 'situation.bed.volume' },
    );
  } else if (!ledger.has('situation.bed.depth')) {
    ledger.derive(
      bedDepth,
      { volume: 'situation.bed.volume', diameter: 'situation.tank.diameter' },
      { bedDepth: 'situation.bed.depth' },
    );
  }
};

/** Spread of assumed grains: one standard deviation, ours, wide enough that both expansion methods stay plausible. */
const grainSpread = { diameter: 0.05, afterPail: 0.03, density: 0.01, voidage: 0.02 } as const;

const sourceOfMedium = {
  seen: 'davis-2010',
  'second-hand': 'davis-2010',
  memory: 'memory',
  'common-practice': 'common-practice',
  ours: 'ours',
} as const;

const putMedium = (medium: Medium, layer: Layer | undefined, ledger: Ledger): void => {
  const source = sourceOfMedium[medium.known];
  if (layer?.bead !== undefined) ledger.given('situation.bed.grain', layer.bead);
  else
    ledger.assume('situation.bed.grain', medium.diameter, source, medium.diameter.si * grainSpread.diameter);
  if (layer?.density !== undefined) ledger.given('situation.bed.grain-density', layer.density);
  else
    ledger.assume(
      'situation.bed.grain-density',
      medium.density,
      source,
      medium.density.si * grainSpread.density,
    );
  ledger.assume(
    'situation.bed.voidage',
    quantity('ratio', medium.voidage),
    source,
    medium.voidage * grainSpread.voidage,
  );
};

/** What a pail under the drain showed moves the assumed bead size just as far as it must. */
export const putPail = (conditioner: Conditioner, ledger: Ledger): void => {
  const { pail } = conditioner;
  const needed = ['situation.tank.area', 'situation.bed.depth', 'situation.bed.free', 'situation.bed.grain'];
  if (pail === undefined || !needed.every(ledger.has)) return;
  ledger.given('situation.pail.rate', { value: pail.rate, how: 'measured' });
  const diameter = calibrated(pail, ledger);
  if (diameter === undefined) {
    ledger.refuse(upflowRichardsonZaki.meta.title, ['situation.pail.rate', ...needed]);
    return;
  }
  ledger.choose(
    'situation.bed.grain',
    quantity('length', diameter),
    'pail-calibration',
    { rate: 'situation.pail.rate' },
    { u: diameter * grainSpread.afterPail },
  );
};

/** Nothing when sizes and rates contradict each other so far that no bead size answers. */
const calibrated = (pail: NonNullable<Conditioner['pail']>, ledger: Ledger): number | undefined => {
  const temperature = pail.temperature.si;
  try {
    return calibrateByPail({
      method: 'richardson-zaki',
      seen: pail.seen,
      assumed: ledger.need('situation.bed.grain'),
      superficialVelocity: upflowRate.compute({
        flow: pail.rate.si,
        diameter: ledger.need('situation.tank.diameter'),
      }).superficialVelocity,
      bedDepth: ledger.need('situation.bed.depth'),
      freeHeight: ledger.need('situation.bed.free'),
      particleDensity: ledger.need('situation.bed.grain-density'),
      voidage: ledger.need('situation.bed.voidage'),
      density: waterDensity.compute({ temperature }).density,
      viscosity: waterViscosity.compute({ temperature }).dynamicViscosity,
    }).diameter;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
};

const gapsOfBed = (conditioner: Conditioner, ledger: Ledger): readonly Gap[] => {
  const at = ['conditioners', conditioner.id, 'media'];
  const gaps: Gap[] = [];
  if (!ledger.has('situation.bed.volume')) {
    gaps.push({ needs: at, message: message('situation.gap.bed'), settles: ['program', 'proof'] });
  }
  if (!ledger.has('situation.bed.free')) {
    gaps.push({ needs: [...at, 'free'], message: message('situation.gap.free'), settles: ['program'] });
  }
  if (conditioner.kind === 'softener' && mainLayer(conditioner)?.age === undefined) {
    gaps.push({ needs: [...at, 'age'], message: message('situation.gap.age'), settles: ['program'] });
  }
  return gaps;
};
