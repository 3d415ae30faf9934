import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

/**
 * Darcy friction factor of turbulent flow in a pipe, solved to the last digit.
 *
 * $$ \frac{1}{\sqrt f} = -2\log_{10}\left(\frac{k/D}{3.7} + \frac{2.51}{Re\sqrt f}\right) $$
 *
 * Valid Re > 4000, k/D ≤ 0.05 (limits from memory). Assumes: a round full pipe, flow grown steady.
 * Source: Colebrook (1939), second hand. Checked: checks/src/published/pipe-orifice.ts (P1, P2, P3, P5).
 * @throws RangeError on a Reynolds number that is not positive or a negative roughness.
 * @example
 * ```ts
 * colebrook.compute({ reynolds: 1e5, relativeRoughness: 1e-4 }).frictionFactor // => 0.0185138660774716
 * ```
 */
export const colebrook = equation(
  {
    key: 'colebrook',
    title: 'equation.colebrook',
    words: 'formula.colebrook',
    inputs: {
      reynolds: { symbol: 'Re', kind: 'ratio' },
      relativeRoughness: { symbol: 'k/D', kind: 'ratio' },
    },
    outputs: { frictionFactor: { symbol: 'f', kind: 'ratio' } },
    range: [
      { of: 'symbol.reynolds', kind: 'ratio', min: 4000, value: ({ reynolds }) => reynolds },
      {
        of: 'symbol.relative-roughness',
        kind: 'ratio',
        max: 0.05,
        value: ({ relativeRoughness }) => relativeRoughness,
      },
    ],
    source: 'colebrook-1939',
    status: 'second-hand',
  },
  ({ reynolds, relativeRoughness }) => {
    requirePositive('reynolds', reynolds);
    requireNotNegative('relativeRoughness', relativeRoughness);
    return { frictionFactor: 1 / inverseRoot(relativeRoughness / 3.7, 2.51 / reynolds) ** 2 };
  },
);

/** x = 1/√f with x + 2 log₁₀(rough + smooth x) = 0. Newton on a concave rising curve: it closes in from any start. */
const inverseRoot = (rough: number, smooth: number): number => {
  let x = 8;
  for (let turn = 0; turn < 50; turn++) {
    const inside = rough + smooth * x;
    const surplus = x + 2 * Math.log10(inside);
    const slope = 1 + (2 * smooth) / (Math.LN10 * inside);
    const next = Math.max(x - surplus / slope, x / 10);
    if (Math.abs(next - x) <= 2 * Number.EPSILON * x) return next;
    x = next;
  }
  return x;
};

/**
 * Darcy friction factor of laminar flow in a round pipe.
 *
 * $$ f = 64/Re $$
 *
 * Valid Re < 2000. Source: Hagen and Poiseuille, as in any textbook (memory). Checked: pipe-loss.test.ts.
 * @throws RangeError on a Reynolds number that is not positive.
 * @example
 * ```ts
 * laminarFriction.compute({ reynolds: 1600 }).frictionFactor // => 0.04
 * ```
 */
export const laminarFriction = equation(
  {
    key: 'laminar-friction',
    title: 'equation.laminar-friction',
    words: 'formula.laminar-friction',
    inputs: { reynolds: { symbol: 'Re', kind: 'ratio' } },
    outputs: { frictionFactor: { symbol: 'f', kind: 'ratio' } },
    range: [{ of: 'symbol.reynolds', kind: 'ratio', max: 2000, value: ({ reynolds }) => reynolds }],
    source: 'darcy-weisbach',
    status: 'memory',
  },
  ({ reynolds }) => {
    requirePositive('reynolds', reynolds);
    return { frictionFactor: 64 / reynolds };
  },
);

/** Between laminar and turbulent a pipe may do either; the straight line between the ends is our own choice. */
export const frictionRegimes = { laminarTo: 2000, turbulentFrom: 4000 } as const;

export type Friction = {
  readonly regime: 'laminar' | 'between' | 'turbulent';
  readonly frictionFactor: number;
};

/**
 * Darcy friction factor at any Reynolds number, naming the regime it was taken for.
 *
 * @throws RangeError on a Reynolds number that is not positive or a negative roughness.
 * @example
 * ```ts
 * pipeFriction({ reynolds: 3000, relativeRoughness: 0 }).regime // => 'between'
 * ```
 */
export const pipeFriction = (flow: {
  readonly reynolds: number;
  readonly relativeRoughness: number;
}): Friction => {
  const { laminarTo, turbulentFrom } = frictionRegimes;
  if (flow.reynolds <= laminarTo) return { regime: 'laminar', ...laminarFriction.compute(flow) };
  if (flow.reynolds >= turbulentFrom) return { regime: 'turbulent', ...colebrook.compute(flow) };
  const low = laminarFriction.compute({ reynolds: laminarTo }).frictionFactor;
  const high = colebrook.compute({ ...flow, reynolds: turbulentFrom }).frictionFactor;
  const along = (flow.reynolds - laminarTo) / (turbulentFrom - laminarTo);
  return { regime: 'between', frictionFactor: low + along * (high - low) };
};
