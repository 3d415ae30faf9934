import { requireFinite, requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

const requireAreaRatio = (areaRatio: number): void => {
  if (!(areaRatio > 0 && areaRatio < 1))
    throw new RangeError(`areaRatio must lie between 0 and 1, got ${areaRatio}`);
};

/**
 * How far a liquid jet pump lifts the pressure at a flow ratio.
 *
 * R = A_n/A_m nozzle to throat, M = Q_s/Q_p, N = (P₅ − P₂)/(P₁ − P₅), C = ρ_s/ρ_p:
 *
 * $$ N = \frac{2R + S - T - CM^2R^2(1+K_s)/(1-R)^2}{(1+K_p) - 2R - S + T},\quad
 *    S = \frac{2CM^2R^2}{1-R},\quad T = R^2(1+CM)(1+M)(1+K_m+K_d) $$
 *
 * Assumes: one-dimensional, nozzle flush with the throat, outlet speed neglected, no cavitation.
 * No range is stated where it was read. Source: Gosline and O'Brien (1934), Cunningham (1957), second hand.
 * Checked: checks/src/published/pipe-orifice.ts (J1, J2, J3).
 * @throws RangeError on a non-finite argument, an area ratio outside 0 to 1, or a driving pressure that is all lost.
 * @example
 * ```ts
 * jetPump.compute({ areaRatio: 0.2, flowRatio: 1, densityRatio: 1, nozzleLoss: 0.04, suctionLoss: 0.1, throatLoss: 0.15, diffuserLoss: 0.15 }).headRatio // => 0.29846
 * ```
 */
export const jetPump = equation(
  {
    key: 'jet-pump',
    title: 'equation.jet-pump',
    words: 'formula.jet-pump',
    inputs: {
      areaRatio: { symbol: 'R', kind: 'ratio' },
      flowRatio: { symbol: 'M', kind: 'ratio' },
      densityRatio: { symbol: 'C', kind: 'ratio' },
      nozzleLoss: { symbol: 'K_p', kind: 'ratio' },
      suctionLoss: { symbol: 'K_s', kind: 'ratio' },
      throatLoss: { symbol: 'K_m', kind: 'ratio' },
      diffuserLoss: { symbol: 'K_d', kind: 'ratio' },
    },
    outputs: {
      headRatio: { symbol: 'N', kind: 'ratio' },
      efficiency: { symbol: 'η', kind: 'share' },
    },
    range: [],
    source: 'cunningham-1957',
    status: 'second-hand',
  },
  (pump) => {
    const { areaRatio: r, flowRatio: m, densityRatio: c } = pump;
    requireAreaRatio(r);
    requireNotNegative('flowRatio', m);
    requirePositive('densityRatio', c);
    for (const name of ['nozzleLoss', 'suctionLoss', 'throatLoss', 'diffuserLoss'] as const)
      requireNotNegative(name, pump[name]);
    const drawn = (2 * c * m ** 2 * r ** 2) / (1 - r);
    const mixed = r ** 2 * (1 + c * m) * (1 + m) * (1 + pump.throatLoss + pump.diffuserLoss);
    const entry = (c * m ** 2 * r ** 2 * (1 + pump.suctionLoss)) / (1 - r) ** 2;
    const driving = 1 + pump.nozzleLoss - 2 * r - drawn + mixed;
    requirePositive('driving pressure less losses', driving);
    const headRatio = (2 * r + drawn - mixed - entry) / driving;
    requireFinite('headRatio', headRatio);
    return { headRatio, efficiency: m * headRatio };
  },
);

type Nozzle = {
  readonly areaRatio: number;
  readonly flowRatio: number;
  readonly densityRatio: number;
  readonly nozzleLoss: number;
  readonly suctionLoss: number;
};

/** Speed heads of the jet between driving and suction pressure: what the nozzle takes less what the suction gives up. */
const nozzleHeads = (nozzle: Nozzle): number => {
  requireAreaRatio(nozzle.areaRatio);
  requireNotNegative('flowRatio', nozzle.flowRatio);
  requirePositive('densityRatio', nozzle.densityRatio);
  requireNotNegative('nozzleLoss', nozzle.nozzleLoss);
  requireNotNegative('suctionLoss', nozzle.suctionLoss);
  const suctionSpeed = (nozzle.flowRatio * nozzle.areaRatio) / (1 - nozzle.areaRatio);
  return 1 + nozzle.nozzleLoss - nozzle.densityRatio * (1 + nozzle.suctionLoss) * suctionSpeed ** 2;
};

/**
 * Pressure between drive and suction of a liquid jet pump that sends a driving flow through its nozzle.
 *
 * $$ P_1 - P_2 = \frac{\rho_p}{2}\left(\frac{Q_p}{A_n}\right)^2\left[(1+K_p) - C(1+K_s)\left(\frac{MR}{1-R}\right)^2\right] $$
 *
 * Assumes and source: as `jetPump`. Checked: checks/src/published/pipe-orifice.ts (J1).
 * @throws RangeError on a non-finite or non-positive argument.
 * @example
 * ```ts
 * jetPumpDrive.compute({ flow: 0.01, nozzleArea: 3.93480e-4, areaRatio: 0.247404, flowRatio: 1, densityRatio: 1.1002, density: 998, nozzleLoss: 0.04, suctionLoss: 0.11 }).pressureDrop // => 292653.8
 * ```
 */
export const jetPumpDrive = equation(
  {
    key: 'jet-pump-drive',
    title: 'equation.jet-pump-drive',
    words: 'formula.jet-pump-drive',
    inputs: {
      flow: { symbol: 'Q_p', kind: 'flow' },
      nozzleArea: { symbol: 'A_n', kind: 'area' },
      areaRatio: { symbol: 'R', kind: 'ratio' },
      flowRatio: { symbol: 'M', kind: 'ratio' },
      densityRatio: { symbol: 'C', kind: 'ratio' },
      density: { symbol: 'ρ_p', kind: 'density' },
      nozzleLoss: { symbol: 'K_p', kind: 'ratio' },
      suctionLoss: { symbol: 'K_s', kind: 'ratio' },
    },
    outputs: { pressureDrop: { symbol: 'P₁ − P₂', kind: 'pressure' } },
    range: [],
    source: 'cunningham-1957',
    status: 'second-hand',
  },
  (pump) => {
    requireNotNegative('flow', pump.flow);
    requirePositive('nozzleArea', pump.nozzleArea);
    requirePositive('density', pump.density);
    const speed = pump.flow / pump.nozzleArea;
    return { pressureDrop: (pump.density / 2) * speed ** 2 * nozzleHeads(pump) };
  },
);

/**
 * Driving flow through the nozzle of a liquid jet pump from the pressure between drive and suction.
 *
 * $$ Q_p = A_n\sqrt{\frac{2(P_1-P_2)}{\rho_p\,[(1+K_p) - C(1+K_s)(MR/(1-R))^2]}} $$
 *
 * Assumes and source: as `jetPump`. Checked: round trip with `jetPumpDrive`.
 * @throws RangeError on a non-finite or non-positive argument, or a suction faster than any nozzle could drive.
 * @example
 * ```ts
 * jetPumpNozzleFlow.compute({ pressureDrop: 292653.8, nozzleArea: 3.93480e-4, areaRatio: 0.247404, flowRatio: 1, densityRatio: 1.1002, density: 998, nozzleLoss: 0.04, suctionLoss: 0.11 }).flow // => 0.01000
 * ```
 */
export const jetPumpNozzleFlow = equation(
  {
    key: 'jet-pump-nozzle-flow',
    title: 'equation.jet-pump-nozzle-flow',
    words: 'formula.jet-pump-nozzle-flow',
    inputs: {
      pressureDrop: { symbol: 'P₁ − P₂', kind: 'pressure' },
      nozzleArea: { symbol: 'A_n', kind: 'area' },
      areaRatio: { symbol: 'R', kind: 'ratio' },
      flowRatio: { symbol: 'M', kind: 'ratio' },
      densityRatio: { symbol: 'C', kind: 'ratio' },
      density: { symbol: 'ρ_p', kind: 'density' },
      nozzleLoss: { symbol: 'K_p', kind: 'ratio' },
      suctionLoss: { symbol: 'K_s', kind: 'ratio' },
    },
    outputs: { flow: { symbol: 'Q_p', kind: 'flow' } },
    range: [],
    source: 'cunningham-1957',
    status: 'second-hand',
  },
  (pump) => {
    requireNotNegative('pressureDrop', pump.pressureDrop);
    requirePositive('nozzleArea', pump.nozzleArea);
    requirePositive('density', pump.density);
    const heads = nozzleHeads(pump);
    requirePositive('speed heads', heads);
    return { flow: pump.nozzleArea * Math.sqrt((2 * pump.pressureDrop) / (pump.density * heads)) };
  },
);
