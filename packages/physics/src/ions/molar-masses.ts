/** Molar masses, kg/mol, from IUPAC's conventional atomic weights; Ca, Mg, CaCO3, CaO and NaCl as in checks/data/units.csv. */
export const molarMass = {
  calcium: 40.078e-3,
  magnesium: 24.305e-3,
  sodium: 22.98977e-3,
  potassium: 39.0983e-3,
  ammonium: 18.0385e-3,
  iron: 55.845e-3,
  manganese: 54.938e-3,
  strontium: 87.62e-3,
  barium: 137.327e-3,
  chloride: 35.453e-3,
  bicarbonate: 61.0168e-3,
  carbonate: 60.0089e-3,
  sulfate: 96.0626e-3,
  nitrate: 62.0049e-3,
  nitrogen: 14.0067e-3,
  fluoride: 18.9984e-3,
  calciumCarbonate: 100.0869e-3,
  sodiumChloride: 58.443e-3,
  potassiumChloride: 74.5513e-3,
} as const satisfies Record<string, number>;

/** Mass of calcium carbonate that stands for one equivalent: hardness is reported as if it were chalk. */
export const chalkPerEquivalent = molarMass.calciumCarbonate / 2;
