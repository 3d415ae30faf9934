import {
  day,
  foot,
  gallon,
  grain,
  hour,
  imperialGallon,
  inch,
  litre,
  minute,
  ounce,
  pound,
} from './constants.ts';
import {
  dayWords,
  footCubed,
  footSquared,
  grainWords,
  hourWords,
  imperial,
  litreWords,
  minuteWords,
  poundWords,
  usGallon,
} from './spellings.ts';
import { both, metric, quotients, rowsOf, type UnitEntry, us } from './unit-row.ts';

export const lengthRows = rowsOf('length', [
  us('in', inch, '[in_i]', ['"', "''", 'inch', 'inches', 'pulg', 'pulgada', 'pulgadas']),
  us('ft', foot, '[ft_i]', ["'", 'foot', 'feet', 'pie', 'pies']),
  metric('mm', 1e-3, 'mm', ['millimetre', 'millimetres', 'millimeter', 'millimeters']),
  metric('cm', 1e-2, 'cm', ['centimetre', 'centimetres', 'centimeter', 'centimeters']),
  metric('m', 1, 'm', ['metre', 'metres', 'meter', 'meters', 'metro', 'metros']),
  metric('um', 1e-6, 'um', ['micron', 'microns']),
  us('yd', 3 * foot, '[yd_i]', ['yard', 'yards']),
]);

export const areaRows = rowsOf('area', [
  us('ft2', foot ** 2, '[ft_i]2', footSquared),
  us('in2', inch ** 2, '[in_i]2', ['sq in', 'square inch', 'square inches']),
  metric('m2', 1, 'm2', ['sq m']),
  metric('cm2', 1e-4, 'cm2', ['sq cm']),
  metric('mm2', 1e-6, 'mm2', ['sq mm']),
]);

const volumes: readonly UnitEntry[] = [
  us('gal', gallon, '[gal_us]', usGallon),
  metric('L', litre, 'L', litreWords),
  metric('mL', 1e-6, 'mL', ['cm3', 'cc']),
  metric('m3', 1, 'm3', ['cubic metre', 'cubic metres', 'cubic meter', 'cubic meters']),
  us('ft3', foot ** 3, '[ft_i]3', footCubed),
];

export const volumeRows = rowsOf('volume', [
  ...volumes,
  us('in3', inch ** 3, '[in_i]3', ['cu in', 'cubic inch', 'cubic inches']),
  us('qt', gallon / 4, '[qt_us]', ['quart', 'quarts']),
  us('pt', gallon / 8, '[pt_us]', ['pint', 'pints']),
  us('fl oz', gallon / 128, '[foz_us]', ['fluid ounce', 'fluid ounces']),
  us('imp gal', imperialGallon, '[gal_br]', imperial),
]);

/** A meter counts volume; '/pulse' may be written and need not. */
export const pulseRows = rowsOf(
  'volume-per-pulse',
  volumes.map((unit) => ({
    ...unit,
    aliases: [...unit.aliases, ...quotients([unit.symbol, ...unit.aliases], ['pulse', 'pulso'])],
  })),
);

export const massRows = rowsOf('mass', [
  us('lb', pound, '[lb_av]', poundWords),
  metric('kg', 1, 'kg', ['kilogram', 'kilograms', 'kilo', 'kilos']),
  us('oz', ounce, '[oz_av]', ['ounce', 'ounces', 'onza', 'onzas']),
  metric('g', 1e-3, 'g', ['gram', 'grams', 'gramo', 'gramos']),
  metric('mg', 1e-6, 'mg'),
  us('gr', grain, '[gr]', grainWords),
  metric('t', 1000, 't', ['tonne', 'tonnes', 'metric ton', 'metric tons']),
  us('short ton', 2000 * pound, '[ston_av]', ['short tons', 'US ton', 'US tons']),
]);

export const timeRows = rowsOf('time', [
  both('min', minute, 'min', minuteWords),
  both('s', 1, 's', ['sec', 'secs', 'second', 'seconds', 'segundo', 'segundos']),
  both('h', hour, 'h', hourWords),
  both('d', day, 'd', dayWords),
  both('wk', 7 * day, 'wk', ['week', 'weeks', 'semana', 'semanas'], { source: 'convention' }),
  both('yr', 365.25 * day, 'a', ['year', 'years', 'año', 'años'], { source: 'convention' }),
]);

const fahrenheit = 5 / 9;

export const temperatureRows = rowsOf('temperature', [
  us('degF', fahrenheit, '[degF]', ['F', 'degrees F', 'Fahrenheit'], { offset: 459.67 * fahrenheit }),
  metric('degC', 1, 'Cel', ['C', 'degrees C', 'Celsius', 'centigrade'], { offset: 273.15 }),
  metric('K', 1, 'K', ['kelvin']),
]);
