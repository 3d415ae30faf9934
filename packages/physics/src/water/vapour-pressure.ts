import { requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { inputWithin } from '../meta/input-within.ts';

/**
 * Pressure at which water boils: below it a jet pump's throat cavitates.
 *
 * $$ p = \left[ \frac{2C}{-B + \sqrt{B^2 - 4AC}} \right]^4 \mathrm{MPa}, \quad
 *    \vartheta = T + \frac{n_9}{T - n_{10}} $$
 * with A, B and C quadratic in ϑ (coefficients n1 to n8).
 *
 * Valid 273.15 to 647.096 K.
 * Source: IAPWS R7-97(2012) (IAPWS-IF97), equation 30. Status: coefficients met at second hand.
 * Checked: checks/src/published/water.ts. Error: 6e-6 relative, measured there.
 * @throws RangeError on a non-finite or non-positive temperature.
 * @example
 * ```ts
 * waterVapourPressure.compute({ temperature: 293.15 }).vapourPressure // => 2339.215
 * ```
 */
export const waterVapourPressure = equation(
  {
    key: 'water-vapour-pressure',
    title: 'equation.water-vapour-pressure',
    words: 'formula.water-vapour-pressure',
    inputs: { temperature: { symbol: 'T', kind: 'temperature' } },
    outputs: { vapourPressure: { symbol: 'p', kind: 'pressure' } },
    range: [inputWithin('temperature', 'symbol.temperature', 'temperature', { min: 273.15, max: 647.096 })],
    source: 'iapws-if97',
    status: 'second-hand',
  },
  ({ temperature }) => {
    requirePositive('temperature', temperature);
    const theta = temperature - 0.23855557567849 / (temperature - 650.17534844798);
    const a = theta ** 2 + 1167.0521452767 * theta - 724213.16703206;
    const b = -17.073846940092 * theta ** 2 + 12020.82470247 * theta - 3232555.0322333;
    const c = 14.91510861353 * theta ** 2 - 4823.2657361591 * theta + 405113.40542057;
    const root = (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));
    return { vapourPressure: root ** 4 * 1e6 };
  },
);
