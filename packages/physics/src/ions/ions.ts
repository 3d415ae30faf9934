import { molarMass } from './molar-masses.ts';

/** In a fixed order, so that sums do not hang on how an analysis was written. */
export const ionNames = [
  'calcium',
  'magnesium',
  'sodium',
  'potassium',
  'ammonium',
  'iron',
  'manganese',
  'strontium',
  'barium',
  'bicarbonate',
  'carbonate',
  'sulfate',
  'chloride',
  'nitrate',
  'fluoride',
] as const;

export type IonName = (typeof ionNames)[number];

export const isIonName = (name: string): name is IonName => ionNames.some((ion) => ion === name);

/** The ions of a water analysis: charge and molar mass (kg/mol). */
export const ions: Readonly<Record<IonName, { readonly charge: number; readonly molarMass: number }>> = {
  calcium: { charge: 2, molarMass: molarMass.calcium },
  magnesium: { charge: 2, molarMass: molarMass.magnesium },
  sodium: { charge: 1, molarMass: molarMass.sodium },
  potassium: { charge: 1, molarMass: molarMass.potassium },
  ammonium: { charge: 1, molarMass: molarMass.ammonium },
  iron: { charge: 2, molarMass: molarMass.iron },
  manganese: { charge: 2, molarMass: molarMass.manganese },
  strontium: { charge: 2, molarMass: molarMass.strontium },
  barium: { charge: 2, molarMass: molarMass.barium },
  bicarbonate: { charge: -1, molarMass: molarMass.bicarbonate },
  carbonate: { charge: -2, molarMass: molarMass.carbonate },
  sulfate: { charge: -2, molarMass: molarMass.sulfate },
  chloride: { charge: -1, molarMass: molarMass.chloride },
  nitrate: { charge: -1, molarMass: molarMass.nitrate },
  fluoride: { charge: -1, molarMass: molarMass.fluoride },
};

/** Mass of the ion itself per volume of water, kg/m3 (mg/L times 0.001). Not measured = left out. */
export type WaterIons = { readonly [Ion in IonName]?: number };

/** Equivalents per volume, eq/m3 (= meq/L), unsigned. */
export type IonEquivalents = Readonly<Record<IonName, number>>;

/** Equivalents of one ion from its mass: 80 mg/L of calcium are 3.99 meq/L. */
export const equivalentsOf = (ion: IonName, concentration: number): number =>
  (concentration * Math.abs(ions[ion].charge)) / ions[ion].molarMass;

/** Mass of one ion from its equivalents. */
export const concentrationOf = (ion: IonName, equivalents: number): number =>
  (equivalents * ions[ion].molarMass) / Math.abs(ions[ion].charge);

/** Nitrogen reported as such (NO3-N, NH3-N) as the ion's own mass. */
export const fromNitrogen = (ion: 'nitrate' | 'ammonium', nitrogen: number): number =>
  (nitrogen * ions[ion].molarMass) / molarMass.nitrogen;
