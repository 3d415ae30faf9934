import { findUnit } from './find-unit.ts';
import type { QuantityKind } from './kinds.ts';
import type { UnitSystem } from './quantity.ts';
import type { UnitRow } from './unit-row.ts';

/**
 * The unit a quantity is shown in. With the value known, lengths, times and the like take the unit that
 * suits their size: 3 mm, 12 cm, 1.6 m.
 *
 * @example
 * ```ts
 * shownUnit('salt-dose', 'us').shown // => 'lb/ft³'
 * ```
 */
export const shownUnit = (kind: QuantityKind, system: UnitSystem, si?: number): UnitRow => {
  const symbol = suited(usual[kind][system], si === undefined ? undefined : Math.abs(si));
  const row = findUnit(kind, symbol);
  if (row === undefined) throw new RangeError(`'${symbol}' is shown for ${kind} and not in the table`);
  return row;
};

/** One unit, or units by size: each up to its SI limit, the last for all above; `usual` where no size is known. */
type Choice =
  | string
  | { readonly usual: string; readonly upTo: readonly (readonly [number, string])[]; readonly above: string };

const suited = (choice: Choice, si: number | undefined): string => {
  if (typeof choice === 'string') return choice;
  if (si === undefined || si === 0) return choice.usual;
  return choice.upTo.find(([limit]) => si < limit)?.[1] ?? choice.above;
};

const alike = (choice: Choice): Record<UnitSystem, Choice> => ({ us: choice, metric: choice });

const time: Choice = {
  usual: 'min',
  upTo: [
    [60, 's'],
    [3 * 3600, 'min'],
    [48 * 3600, 'h'],
  ],
  above: 'd',
};

const conductivity: Choice = { usual: 'uS/cm', upTo: [[2, 'uS/cm']], above: 'mS/cm' };

const usual: Readonly<Record<QuantityKind, Readonly<Record<UnitSystem, Choice>>>> = {
  length: {
    us: { usual: 'in', upTo: [[3.048, 'in']], above: 'ft' },
    metric: {
      usual: 'cm',
      upTo: [
        [0.1, 'mm'],
        [3, 'cm'],
      ],
      above: 'm',
    },
  },
  area: {
    us: { usual: 'ft2', upTo: [[0.0464, 'in2']], above: 'ft2' },
    metric: {
      usual: 'm2',
      upTo: [
        [1e-3, 'mm2'],
        [0.1, 'cm2'],
      ],
      above: 'm2',
    },
  },
  volume: {
    us: 'gal',
    metric: {
      usual: 'L',
      upTo: [
        [1e-4, 'mL'],
        [10, 'L'],
      ],
      above: 'm3',
    },
  },
  mass: { us: 'lb', metric: { usual: 'kg', upTo: [[0.1, 'g']], above: 'kg' } },
  time: alike(time),
  flow: { us: 'gpm', metric: 'L/min' },
  'superficial-velocity': { us: 'gpm/ft2', metric: 'm/h' },
  'specific-flow': { us: 'gpm/ft3', metric: 'BV/h' },
  'bed-volumes': alike('BV'),
  temperature: { us: 'degF', metric: 'degC' },
  pressure: { us: 'psi', metric: 'bar' },
  'pressure-gradient': { us: 'psi/ft', metric: 'kPa/m' },
  density: { us: 'lb/ft3', metric: 'kg/m3' },
  'specific-volume': { us: 'ft3/lb', metric: 'L/kg' },
  'dynamic-viscosity': alike('mPa.s'),
  'kinematic-viscosity': alike('mm2/s'),
  hardness: { us: 'gpg', metric: 'mg/L CaCO3' },
  'equivalent-concentration': alike('meq/L'),
  concentration: {
    us: { usual: 'mg/L', upTo: [[10, 'mg/L']], above: 'lb/gal' },
    metric: { usual: 'mg/L', upTo: [[10, 'mg/L']], above: 'g/L' },
  },
  'salt-dose': { us: 'lb/ft3', metric: 'g/L' },
  capacity: { us: 'kgr/ft3', metric: 'eq/L' },
  exchange: { us: 'kgr', metric: 'eq' },
  'salt-efficiency': { us: 'gr/lb', metric: 'g/kg CaCO3' },
  'hardness-per-metal': { us: 'gpg/(mg/L)', metric: 'mg/L CaCO3 per mg/L' },
  'salt-per-exchange': { us: 'lb/kgr', metric: 'g/eq' },
  'water-per-exchange': { us: 'gal/kgr', metric: 'L/eq' },
  'mass-fraction': alike('%'),
  salometer: alike('degSal'),
  conductivity: alike(conductivity),
  ratio: alike(''),
  share: alike('%'),
  count: alike(''),
  ph: alike(''),
  'volume-per-pulse': { us: 'gal', metric: 'L' },
  'price-mass': { us: 'per lb', metric: 'per kg' },
  'price-volume': { us: 'per 1000 gal', metric: 'per m3' },
  'price-time': alike('per h'),
  money: alike(''),
  voltage: alike('V'),
  speed: { us: 'ft/s', metric: 'm/s' },
};
