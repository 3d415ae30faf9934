import {
  day,
  foot,
  gallon,
  hour,
  imperialGallon,
  inch,
  litre,
  mercury,
  minute,
  pound,
  psi,
  standardGravity,
  waterAt60F,
} from './constants.ts';
import { dayWords, flowUs, footCubed, footSquared, hourWords, imperial, litreWords, minuteWords, usGallon } from './spellings.ts';
import { quotients, rowsOf } from './unit-row.ts';

const gpm = gallon / minute;

export const flowRows = rowsOf('flow', [
  { symbol: 'gpm', aliases: flowUs, factor: gpm, system: 'us', ucum: '[gal_us]/min' },
  { symbol: 'L/min', aliases: ['lpm', ...quotients(litreWords, minuteWords)], factor: litre / minute, system: 'metric', ucum: 'L/min', source: 'si' },
  { symbol: 'gph', aliases: quotients(usGallon, hourWords), factor: gallon / hour, system: 'us', ucum: '[gal_us]/h' },
  { symbol: 'gpd', aliases: quotients(usGallon, dayWords), factor: gallon / day, system: 'us', ucum: '[gal_us]/d' },
  { symbol: 'L/h', aliases: ['lph', ...quotients(litreWords, hourWords)], factor: litre / hour, system: 'metric', ucum: 'L/h', source: 'si' },
  { symbol: 'L/d', aliases: quotients(litreWords, dayWords), factor: litre / day, system: 'metric', ucum: 'L/d', source: 'si' },
  { symbol: 'L/s', aliases: ['lps'], factor: litre, system: 'metric', ucum: 'L/s', source: 'si' },
  { symbol: 'mL/min', aliases: ['cm3/min', 'cc/min'], factor: 1e-6 / minute, system: 'metric', ucum: 'mL/min', source: 'si' },
  { symbol: 'm3/h', aliases: ['m3/hr', 'cmh'], factor: 1 / hour, system: 'metric', ucum: 'm3/h', source: 'si' },
  { symbol: 'm3/d', aliases: ['m3/day', 'm3/día'], factor: 1 / day, system: 'metric', ucum: 'm3/d', source: 'si' },
  { symbol: 'm3/s', factor: 1, system: 'metric', ucum: 'm3/s', source: 'si' },
  { symbol: 'ft3/min', aliases: ['cfm', ...quotients(footCubed, minuteWords)], factor: foot ** 3 / minute, system: 'us', ucum: '[ft_i]3/min' },
  { symbol: 'imp gpm', aliases: quotients(imperial, minuteWords), factor: imperialGallon / minute, system: 'us', ucum: '[gal_br]/min' },
]);

export const superficialVelocityRows = rowsOf('superficial-velocity', [
  { symbol: 'gpm/ft2', aliases: [...quotients(flowUs, footSquared), 'gpm/sq.ft'], factor: gpm / foot ** 2, system: 'us', ucum: '[gal_us]/min/[ft_i]2' },
  { symbol: 'm/h', aliases: ['m/hr', 'm3/h/m2', 'm3/m2/h', 'm3/(m2.h)'], factor: 1 / hour, system: 'metric', ucum: 'm/h', source: 'si' },
  { symbol: 'm/s', factor: 1, system: 'metric', ucum: 'm/s', source: 'si' },
  { symbol: 'mm/s', factor: 1e-3, system: 'metric', ucum: 'mm/s', source: 'si' },
  { symbol: 'cm/min', factor: 1e-2 / minute, system: 'metric', ucum: 'cm/min', source: 'si' },
  { symbol: 'm/d', aliases: ['m/day'], factor: 1 / day, system: 'metric', ucum: 'm/d', source: 'si' },
  { symbol: 'L/min/m2', aliases: ['lpm/m2'], factor: litre / minute, system: 'metric', ucum: 'L/min/m2', source: 'si' },
  { symbol: 'ft/min', aliases: ['fpm'], factor: foot / minute, system: 'us', ucum: '[ft_i]/min' },
  { symbol: 'in/min', factor: inch / minute, system: 'us', ucum: '[in_i]/min' },
]);

export const specificFlowRows = rowsOf('specific-flow', [
  { symbol: 'gpm/ft3', aliases: quotients(flowUs, footCubed), factor: gpm / foot ** 3, system: 'us', ucum: '[gal_us]/min/[ft_i]3' },
  { symbol: 'BV/h', aliases: ['BV/hr', 'bed volumes/hour', 'bed volumes/h', '1/h', 'L/h/L', 'm3/h/m3'], factor: 1 / hour, system: 'both', source: 'convention' },
  { symbol: 'BV/min', aliases: ['bed volumes/min', '1/min', 'L/min/L'], factor: 1 / minute, system: 'both', source: 'convention' },
  { symbol: '1/s', aliases: ['BV/s'], factor: 1, system: 'metric', ucum: '/s', source: 'si' },
]);

export const bedVolumeRows = rowsOf('bed-volumes', [
  { symbol: 'BV', aliases: ['bed volume', 'bed volumes', 'L/L', 'm3/m3', 'ft3/ft3'], factor: 1, system: 'both', source: 'convention' },
  { symbol: 'gal/ft3', aliases: quotients(usGallon, footCubed), factor: gallon / foot ** 3, system: 'us', ucum: '[gal_us]/[ft_i]3' },
]);

export const speedRows = rowsOf('speed', [
  { symbol: 'ft/s', aliases: ['fps', 'ft/sec'], factor: foot, system: 'us', ucum: '[ft_i]/s' },
  { symbol: 'm/s', factor: 1, system: 'metric', ucum: 'm/s', source: 'si' },
  { symbol: 'ft/min', aliases: ['fpm'], factor: foot / minute, system: 'us', ucum: '[ft_i]/min' },
  { symbol: 'mm/s', factor: 1e-3, system: 'metric', ucum: 'mm/s', source: 'si' },
]);

const waterColumn = waterAt60F * standardGravity;

export const pressureRows = rowsOf('pressure', [
  { symbol: 'psi', aliases: ['psig', 'psid', 'lb/in2', 'lbf/in2'], factor: psi, system: 'us', ucum: '[psi]' },
  { symbol: 'bar', aliases: ['bars', 'bares'], factor: 1e5, system: 'metric', ucum: 'bar' },
  { symbol: 'kPa', factor: 1e3, system: 'metric', ucum: 'kPa', source: 'si' },
  { symbol: 'Pa', factor: 1, system: 'metric', ucum: 'Pa', source: 'si' },
  { symbol: 'MPa', factor: 1e6, system: 'metric', ucum: 'MPa', source: 'si' },
  { symbol: 'mbar', factor: 100, system: 'metric', ucum: 'mbar' },
  { symbol: 'atm', factor: 101_325, system: 'both', ucum: 'atm' },
  { symbol: 'kgf/cm2', aliases: ['kg/cm2'], factor: standardGravity * 1e4, system: 'metric', ucum: 'kgf/cm2' },
  { symbol: 'ftH2O', aliases: ['ft of water', 'feet of water', 'ft head', 'ft WC', 'ft water'], factor: foot * waterColumn, system: 'us', source: 'iapws-95', exact: false },
  { symbol: 'inH2O', aliases: ['in of water', 'inches of water', 'in WC', 'in water'], factor: inch * waterColumn, system: 'us', source: 'iapws-95', exact: false },
  { symbol: 'mH2O', aliases: ['m of water', 'mca', 'm WC', 'm water'], factor: waterColumn, system: 'metric', source: 'iapws-95', exact: false },
  { symbol: 'inHg', aliases: ['in of mercury', 'inches of mercury', 'inches Hg'], factor: inch * mercury * standardGravity, system: 'us', source: 'convention' },
]);

export const pressureGradientRows = rowsOf('pressure-gradient', [
  { symbol: 'psi/ft', factor: psi / foot, system: 'us', ucum: '[psi]/[ft_i]' },
  { symbol: 'kPa/m', factor: 1e3, system: 'metric', ucum: 'kPa/m', source: 'si' },
  { symbol: 'bar/m', factor: 1e5, system: 'metric', ucum: 'bar/m' },
  { symbol: 'Pa/m', factor: 1, system: 'metric', ucum: 'Pa/m', source: 'si' },
  { symbol: 'psi/in', factor: psi / inch, system: 'us', ucum: '[psi]/[in_i]' },
]);

export const specificVolumeRows = rowsOf('specific-volume', [
  { symbol: 'ft3/lb', factor: foot ** 3 / pound, system: 'us', ucum: '[ft_i]3/[lb_av]' },
  { symbol: 'L/kg', aliases: ['cm3/g', 'mL/g'], factor: 1e-3, system: 'metric', ucum: 'L/kg', source: 'si' },
  { symbol: 'm3/kg', factor: 1, system: 'metric', ucum: 'm3/kg', source: 'si' },
  { symbol: 'gal/lb', factor: gallon / pound, system: 'us', ucum: '[gal_us]/[lb_av]' },
]);

export const dynamicViscosityRows = rowsOf('dynamic-viscosity', [
  { symbol: 'mPa.s', aliases: ['mPas'], factor: 1e-3, system: 'both', ucum: 'mPa.s', source: 'si' },
  { symbol: 'cP', aliases: ['centipoise'], factor: 1e-3, system: 'both', ucum: 'cP' },
  { symbol: 'Pa.s', aliases: ['Pas'], factor: 1, system: 'both', ucum: 'Pa.s', source: 'si' },
]);

export const kinematicViscosityRows = rowsOf('kinematic-viscosity', [
  { symbol: 'mm2/s', factor: 1e-6, system: 'both', ucum: 'mm2/s', source: 'si' },
  { symbol: 'cSt', aliases: ['centistokes'], factor: 1e-6, system: 'both', ucum: 'cSt' },
  { symbol: 'm2/s', factor: 1, system: 'both', ucum: 'm2/s', source: 'si' },
]);
