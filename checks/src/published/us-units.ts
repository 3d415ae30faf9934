/** US units in SI, exact by definition (NIST SP 811): the examples' own units, turned at the edge. */
const gallon = 3.785411784e-3;
const foot = 0.3048;

export const inch = 0.0254;
export const psi = 6894.757293168361;
export const gallonPerMinute = gallon / 60;
export const gallonPerMinuteFoot2 = gallonPerMinute / foot ** 2;
export const litrePerMinute = 1e-3 / 60;
