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
import {
  dayWords,
  flowUs,
  footCubed,
  footSquared,
  hourWords,
  imperial,
  litreWords,
  minuteWords,
  usGallon,
} from './spellings.ts';
import { both, metric, quotients, rowsOf, us } from './unit-row.ts';

const gpm = gallon / minute;

export const flowRows = rowsOf('flow', [
  us('gpm', gpm, '[gal_us]/min', flowUs),
  metric('L/min', litre / minute, 'L/min', ['lpm', ...quotients(litreWords, minuteWords)]),
  us('gph', gallon / hour, '[gal_us]/h', quotients(usGallon, hourWords)),
  us('gpd', gallon / day, '[gal_us]/d', quotients(usGallon, dayWords)),
  metric('L/h', litre / hour, 'L/h', ['lph', ...quotients(litreWords, hourWords)]),
  metric('L/d', litre / day, 'L/d', quotients(litreWords, dayWords)),
  metric('L/s', litre, 'L/s', ['lps']),
  metric('mL/min', 1e-6 / minute, 'mL/min', ['cm3/min', 'cc/min']),
  metric('m3/h', 1 / hour, 'm3/h', ['m3/hr', 'cmh']),
  metric('m3/d', 1 / day, 'm3/d', ['m3/day', 'm3/día']),
  metric('m3/s', 1, 'm3/s'),
  us('ft3/min', foot ** 3 / minute, '[ft_i]3/min', ['cfm', ...quotients(footCubed, minuteWords)]),
  us('imp gpm', imperialGallon / minute, '[gal_br]/min', quotients(imperial, minuteWords)),
]);

export const superficialVelocityRows = rowsOf('superficial-velocity', [
  us('gpm/ft2', gpm / foot ** 2, '[gal_us]/min/[ft_i]2', [...quotients(flowUs, footSquared), 'gpm/sq.ft']),
  metric('m/h', 1 / hour, 'm/h', ['m/hr', 'm3/h/m2', 'm3/m2/h', 'm3/(m2.h)']),
  metric('m/s', 1, 'm/s'),
  metric('mm/s', 1e-3, 'mm/s'),
  metric('cm/min', 1e-2 / minute, 'cm/min'),
  metric('m/d', 1 / day, 'm/d', ['m/day']),
  metric('L/min/m2', litre / minute, 'L/min/m2', ['lpm/m2']),
  us('ft/min', foot / minute, '[ft_i]/min', ['fpm']),
  us('in/min', inch / minute, '[in_i]/min'),
]);

export const specificFlowRows = rowsOf('specific-flow', [
  us('gpm/ft3', gpm / foot ** 3, '[gal_us]/min/[ft_i]3', quotients(flowUs, footCubed)),
  both('BV/h', 1 / hour, '', ['BV/hr', 'bed volumes/hour', 'bed volumes/h', '1/h', 'L/h/L', 'm3/h/m3'], {
    source: 'convention',
  }),
  both('BV/min', 1 / minute, '', ['bed volumes/min', '1/min', 'L/min/L'], { source: 'convention' }),
  metric('1/s', 1, '/s', ['BV/s']),
]);

export const bedVolumeRows = rowsOf('bed-volumes', [
  both('BV', 1, '', ['bed volume', 'bed volumes', 'L/L', 'm3/m3', 'ft3/ft3'], { source: 'convention' }),
  us('gal/ft3', gallon / foot ** 3, '[gal_us]/[ft_i]3', quotients(usGallon, footCubed)),
]);

export const speedRows = rowsOf('speed', [
  us('ft/s', foot, '[ft_i]/s', ['fps', 'ft/sec']),
  metric('m/s', 1, 'm/s'),
  us('ft/min', foot / minute, '[ft_i]/min', ['fpm']),
  metric('mm/s', 1e-3, 'mm/s'),
]);

const waterColumn = waterAt60F * standardGravity;

export const pressureRows = rowsOf('pressure', [
  us('psi', psi, '[psi]', ['psig', 'psid', 'lb/in2', 'lbf/in2']),
  metric('bar', 1e5, 'bar', ['bars', 'bares'], { source: 'nist-sp-811' }),
  metric('kPa', 1e3, 'kPa'),
  metric('Pa', 1, 'Pa'),
  metric('MPa', 1e6, 'MPa'),
  metric('mbar', 100, 'mbar', [], { source: 'nist-sp-811' }),
  both('atm', 101_325, 'atm', [], { source: 'nist-sp-811' }),
  metric('kgf/cm2', standardGravity * 1e4, 'kgf/cm2', ['kg/cm2'], { source: 'nist-sp-811' }),
  us('ftH2O', foot * waterColumn, '', ['ft of water', 'feet of water', 'ft head', 'ft WC', 'ft water'], {
    source: 'iapws-95',
    exact: false,
  }),
  us('inH2O', inch * waterColumn, '', ['in of water', 'inches of water', 'in WC', 'in water'], {
    source: 'iapws-95',
    exact: false,
  }),
  metric('mH2O', waterColumn, '', ['m of water', 'mca', 'm WC', 'm water'], {
    source: 'iapws-95',
    exact: false,
  }),
  us('inHg', inch * mercury * standardGravity, '', ['in of mercury', 'inches of mercury', 'inches Hg'], {
    source: 'convention',
  }),
]);

export const pressureGradientRows = rowsOf('pressure-gradient', [
  us('psi/ft', psi / foot, '[psi]/[ft_i]'),
  metric('kPa/m', 1e3, 'kPa/m'),
  metric('bar/m', 1e5, 'bar/m', [], { source: 'nist-sp-811' }),
  metric('Pa/m', 1, 'Pa/m'),
  us('psi/in', psi / inch, '[psi]/[in_i]'),
]);

export const specificVolumeRows = rowsOf('specific-volume', [
  us('ft3/lb', foot ** 3 / pound, '[ft_i]3/[lb_av]'),
  metric('L/kg', 1e-3, 'L/kg', ['cm3/g', 'mL/g']),
  metric('m3/kg', 1, 'm3/kg'),
  us('gal/lb', gallon / pound, '[gal_us]/[lb_av]'),
]);

export const dynamicViscosityRows = rowsOf('dynamic-viscosity', [
  both('mPa.s', 1e-3, 'mPa.s', ['mPas']),
  both('cP', 1e-3, 'cP', ['centipoise'], { source: 'nist-sp-811' }),
  both('Pa.s', 1, 'Pa.s', ['Pas']),
]);

export const kinematicViscosityRows = rowsOf('kinematic-viscosity', [
  both('mm2/s', 1e-6, 'mm2/s'),
  both('cSt', 1e-6, 'cSt', ['centistokes'], { source: 'nist-sp-811' }),
  both('m2/s', 1, 'm2/s'),
]);
