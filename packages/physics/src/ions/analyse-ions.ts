import { chargeBalance } from './charge-balance.ts';
import { waterConductivity } from './conductivity.ts';
import { dissolvedSolids } from './dissolved-solids.ts';
import { hardnessFromIons } from './hardness.ts';
import { equivalentsOf, type IonEquivalents, type IonName, ionNames, ions, type WaterIons } from './ions.ts';

/** What a laboratory reports beside the ions. */
export type LaboratoryFigures = {
  /** eq/m3; used for the carbonates where bicarbonate and carbonate are not given. */
  readonly alkalinity?: number;
  readonly hardness?: number;
  readonly ph?: number;
  readonly conductivity?: number;
  /** Temperature the conductivity refers to; 25 °C unless said. */
  readonly temperature?: number;
};

export type AnalysisVerdict = 'fine' | 'odd' | 'questionable';
export type AnalysisDoubt = 'charge-balance' | 'hardness' | 'conductivity';

export type IonReport = {
  readonly equivalents: IonEquivalents;
  readonly cations: number;
  readonly anions: number;
  /** (cations - anions) / (cations + anions). */
  readonly chargeBalance: number;
  readonly hardness: number;
  /** Computed hardness against the laboratory's, relative to the laboratory's. */
  readonly hardnessDifference?: number;
  readonly conductivity: number;
  readonly conductivityDifference?: number;
  /** Share of the current the pH stands for: above a quarter the conductivity is worth no more than the pH. */
  readonly hydrogenShare: number;
  /** mol/m3; the conductivity holds up to 1000. */
  readonly ionicStrength: number;
  readonly dissolvedSolids: number;
  readonly verdict: AnalysisVerdict;
  readonly doubts: readonly { readonly about: AnalysisDoubt; readonly verdict: 'odd' | 'questionable' }[];
  /** Main ions and alkalinity that were not given: without them the balance says little. */
  readonly missing: readonly (IonName | 'alkalinity')[];
};

/** Limits of the handbook, ours: shown as such wherever a verdict is shown. */
export const analysisLimits = {
  balanceFine: 0.05,
  balanceOdd: 0.12,
  hardness: 0.2,
  conductivity: 0.15,
} as const;

/** The ions without which a balance is not worth judging. */
const mainIons: readonly IonName[] = ['calcium', 'magnesium', 'sodium', 'sulfate', 'chloride'];

const carbonatesGiven = (water: WaterIons): boolean =>
  water.bicarbonate !== undefined || water.carbonate !== undefined;

const equivalentsOfWater = (water: WaterIons, laboratory: LaboratoryFigures): IonEquivalents => {
  const of = (ion: IonName): number => equivalentsOf(ion, water[ion] ?? 0);
  return {
    calcium: of('calcium'),
    magnesium: of('magnesium'),
    sodium: of('sodium'),
    potassium: of('potassium'),
    ammonium: of('ammonium'),
    iron: of('iron'),
    manganese: of('manganese'),
    strontium: of('strontium'),
    barium: of('barium'),
    bicarbonate: carbonatesGiven(water) ? of('bicarbonate') : (laboratory.alkalinity ?? 0),
    carbonate: of('carbonate'),
    sulfate: of('sulfate'),
    chloride: of('chloride'),
    nitrate: of('nitrate'),
    fluoride: of('fluoride'),
  };
};

const sumOfCharge = (equivalents: IonEquivalents, sign: 1 | -1): number =>
  ionNames
    .filter((ion) => Math.sign(ions[ion].charge) === sign)
    .reduce((sum, ion) => sum + equivalents[ion], 0);

const relative = (computed: number, reported: number | undefined): number | undefined =>
  reported === undefined || reported === 0 ? undefined : computed / reported - 1;

const doubtsAbout = (
  balance: number,
  hardness: number | undefined,
  conductivity: number | undefined,
): IonReport['doubts'] => {
  const doubts: { about: AnalysisDoubt; verdict: 'odd' | 'questionable' }[] = [];
  const off = Math.abs(balance);
  if (off > analysisLimits.balanceFine)
    doubts.push({
      about: 'charge-balance',
      verdict: off > analysisLimits.balanceOdd ? 'questionable' : 'odd',
    });
  if (hardness !== undefined && Math.abs(hardness) > analysisLimits.hardness)
    doubts.push({ about: 'hardness', verdict: 'questionable' });
  if (conductivity !== undefined && Math.abs(conductivity) > analysisLimits.conductivity)
    doubts.push({ about: 'conductivity', verdict: 'odd' });
  return doubts;
};

const worst = (doubts: IonReport['doubts']): AnalysisVerdict => {
  if (doubts.some(({ verdict }) => verdict === 'questionable')) return 'questionable';
  return doubts.length > 0 ? 'odd' : 'fine';
};

const missingFrom = (water: WaterIons, laboratory: LaboratoryFigures): IonReport['missing'] => {
  const missing: (IonName | 'alkalinity')[] = mainIons.filter((ion) => water[ion] === undefined);
  if (!carbonatesGiven(water) && laboratory.alkalinity === undefined) missing.push('alkalinity');
  return missing;
};

/**
 * Checks a water analysis against itself: charges, hardness, conductivity.
 *
 * Every mass is of the ion itself in kg/m3 (nitrogen by `fromNitrogen`); alkalinity, hardness in eq/m3. An analysis
 * without any ion throws: there is nothing to say about it.
 * @throws RangeError on negative or non-finite numbers, or when no ion is given.
 * @example
 * ```ts
 * analyseIons({ calcium: 0.048, magnesium: 0.0036, sodium: 0.0021, bicarbonate: 0.152, sulfate: 0.0032, chloride: 0.008 }).chargeBalance // => -0.0000866
 * ```
 */
export const analyseIons = (water: WaterIons, laboratory: LaboratoryFigures = {}): IonReport => {
  const equivalents = equivalentsOfWater(water, laboratory);
  const cations = sumOfCharge(equivalents, 1);
  const anions = sumOfCharge(equivalents, -1);
  const balance = chargeBalance.compute({ cations, anions }).chargeBalance;
  const { hardness } = hardnessFromIons.compute({
    calcium: water.calcium ?? 0,
    magnesium: water.magnesium ?? 0,
  });
  const { conductivity, hydrogenShare, ionicStrength } = waterConductivity.compute({
    ...equivalents,
    ph: laboratory.ph ?? 7,
    temperature: laboratory.temperature ?? 298.15,
  });
  const hardnessDifference = relative(hardness, laboratory.hardness);
  const conductivityDifference = relative(conductivity, laboratory.conductivity);
  const doubts = doubtsAbout(balance, hardnessDifference, conductivityDifference);
  return {
    equivalents,
    cations,
    anions,
    chargeBalance: balance,
    hardness,
    ...(hardnessDifference === undefined ? {} : { hardnessDifference }),
    conductivity,
    ...(conductivityDifference === undefined ? {} : { conductivityDifference }),
    hydrogenShare,
    ionicStrength,
    dissolvedSolids: dissolvedSolids.compute({
      alkalinity: laboratory.alkalinity ?? equivalents.bicarbonate + equivalents.carbonate,
      calcium: water.calcium ?? 0,
      magnesium: water.magnesium ?? 0,
      sodium: water.sodium ?? 0,
      potassium: water.potassium ?? 0,
      sulfate: water.sulfate ?? 0,
      chloride: water.chloride ?? 0,
    }).dissolvedSolids,
    verdict: worst(doubts),
    doubts,
    missing: missingFrom(water, laboratory),
  };
};
