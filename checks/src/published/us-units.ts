import { constants, fromUnit } from '@brinewright/units';

/** The examples' own units in SI, turned at the edge. */
export const { gallon, inch, psi } = constants;
export const gallonPerMinute = fromUnit(1, 'gpm', 'flow').si;
export const gallonPerMinuteFoot2 = fromUnit(1, 'gpm/ft2', 'superficial-velocity').si;
export const litrePerMinute = fromUnit(1, 'L/min', 'flow').si;
