import { requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { bracketedRoot } from '../solve/bracketed-root.ts';
import { standardGravity } from './gravity.ts';

type Grain = {
  readonly diameter: number;
  readonly particleDensity: number;
  readonly density: number;
  readonly viscosity: number;
};

/** Weight of a grain in water against viscosity: d³ ρ (ρ_p − ρ) g / μ². */
export const archimedesNumber = (grain: Grain): number => {
  requirePositive('diameter', grain.diameter);
  requirePositive('density', grain.density);
  requirePositive('viscosity', grain.viscosity);
  requirePositive('particleDensity less density', grain.particleDensity - grain.density);
  const buoyant = grain.density * (grain.particleDensity - grain.density) * standardGravity;
  return (grain.diameter ** 3 * buoyant) / grain.viscosity ** 2;
};

/** Drag coefficient of a sphere after Barati et al. (2014), for Re below 2e5; 24/Re as Re goes to nothing. */
export const sphereDrag = (reynolds: number): number =>
  5.4856e9 * Math.tanh(4.3774e-9 / reynolds) +
  0.0709 * Math.tanh(700.6574 / reynolds) +
  0.3894 * Math.tanh(74.1539 / reynolds) -
  0.1198 * Math.tanh(7429.0843 / reynolds) +
  1.7174 * Math.tanh(9.9851 / (reynolds + 2.3384)) +
  0.4744;

/** Below this Reynolds number the drag law's first term saturates, and Stokes' law is exact to six digits. */
const creeping = 1e-6;

/** Re at which drag carries the weight: ¾ C_D Re² = Ar. */
const settlingReynolds = (archimedes: number): number => {
  if (archimedes <= 18 * creeping) return archimedes / 18;
  const surplus = (logarithm: number): number => {
    const reynolds = Math.exp(logarithm);
    return 0.75 * sphereDrag(reynolds) * reynolds ** 2 - archimedes;
  };
  return Math.exp(bracketedRoot(surplus, Math.log(creeping / 10), Math.log(1e9)));
};

/**
 * How fast a single sphere sinks in still water.
 *
 * $$ \tfrac34 C_D(Re)\,Re^2 = \frac{d^3\rho(\rho_p-\rho)g}{\mu^2} $$
 *
 * Valid Re < 2e5 (limit from memory). Assumes: one smooth sphere far from any wall.
 * Source: Barati, Neyshabouri and Ahmadi (2014), second hand. Other drag laws give up to 4.5 % more.
 * Checked: checks/src/published/expansion.ts (X11).
 * @throws RangeError on a non-finite or non-positive argument, or a sphere lighter than the water.
 * @example
 * ```ts
 * terminalVelocity.compute({ diameter: 6e-4, particleDensity: 1280, density: 999.702, viscosity: 0.0013059 }).terminalVelocity // => 0.022813
 * ```
 */
export const terminalVelocity = equation(
  {
    key: 'terminal-velocity',
    title: 'equation.terminal-velocity',
    words: 'formula.terminal-velocity',
    inputs: {
      diameter: { symbol: 'd', kind: 'length' },
      particleDensity: { symbol: 'ρ_p', kind: 'density' },
      density: { symbol: 'ρ', kind: 'density' },
      viscosity: { symbol: 'μ', kind: 'dynamic-viscosity' },
    },
    outputs: {
      terminalVelocity: { symbol: 'v_t', kind: 'speed' },
      reynolds: { symbol: 'Re', kind: 'ratio' },
    },
    range: [{ of: 'symbol.reynolds', kind: 'ratio', max: 2e5, value: (_inputs, { reynolds }) => reynolds }],
    source: 'barati-2014',
    status: 'second-hand',
  },
  (grain) => {
    const reynolds = settlingReynolds(archimedesNumber(grain));
    return { reynolds, terminalVelocity: (reynolds * grain.viscosity) / (grain.density * grain.diameter) };
  },
);
