/**
 * The numbers that every conversion is made of. All in SI.
 *
 * Lengths, masses and volumes are exact by definition (NIST SP 811, 2008, appendix B; recalled, not
 * looked up). Molar masses are the IUPAC atomic weights of the project's reference table. The density
 * of water at 60 °F is IAPWS-95 to the figures that the reference table's foot of water carries.
 */
export const inch = 0.0254;
export const foot = 12 * inch;
export const pound = 0.453_592_37;
export const ounce = pound / 16;
export const grain = pound / 7000;
export const gallon = 231 * inch ** 3;
export const imperialGallon = 4.546_09e-3;
export const litre = 1e-3;
export const minute = 60;
export const hour = 3600;
export const day = 24 * hour;
export const standardGravity = 9.806_65;
export const psi = (pound * standardGravity) / inch ** 2;
export const waterAt60F = 999.017;
/** By convention, at 0 °C. */
export const mercury = 13_595.1;

/** kg/mol */
export const molarMass = {
  Ca: 40.078e-3,
  Mg: 24.305e-3,
  CaCO3: 100.0869e-3,
  CaO: 56.0774e-3,
  NaCl: 58.443e-3,
} as const;

/** eq per kg of the substances that hardness is written as; each carries two charges. */
export const equivalents = {
  Ca: 2 / molarMass.Ca,
  Mg: 2 / molarMass.Mg,
  CaCO3: 2 / molarMass.CaCO3,
  CaO: 2 / molarMass.CaO,
} as const;

/** eq in one grain of calcium carbonate, the trade's measure of exchange. */
export const grainOfHardness = grain * equivalents.CaCO3;
