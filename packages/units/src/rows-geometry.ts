import { day, foot, gallon, grain, hour, imperialGallon, inch, litre, minute, ounce, pound } from './constants.ts';
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
import { quotients, rowsOf, type UnitEntry } from './unit-row.ts';

export const lengthRows = rowsOf('length', [
  { symbol: 'in', aliases: ['"', "''", 'inch', 'inches', 'pulg', 'pulgada', 'pulgadas'], factor: inch, system: 'us', ucum: '[in_i]' },
  { symbol: 'ft', aliases: ["'", 'foot', 'feet', 'pie', 'pies'], factor: foot, system: 'us', ucum: '[ft_i]' },
  { symbol: 'mm', aliases: ['millimetre', 'millimetres', 'millimeter', 'millimeters'], factor: 1e-3, system: 'metric', ucum: 'mm', source: 'si' },
  { symbol: 'cm', aliases: ['centimetre', 'centimetres', 'centimeter', 'centimeters'], factor: 1e-2, system: 'metric', ucum: 'cm', source: 'si' },
  { symbol: 'm', aliases: ['metre', 'metres', 'meter', 'meters', 'metro', 'metros'], factor: 1, system: 'metric', ucum: 'm', source: 'si' },
  { symbol: 'um', aliases: ['micron', 'microns'], factor: 1e-6, system: 'metric', ucum: 'um', source: 'si' },
  { symbol: 'yd', aliases: ['yard', 'yards'], factor: 3 * foot, system: 'us', ucum: '[yd_i]' },
]);

export const areaRows = rowsOf('area', [
  { symbol: 'ft2', aliases: footSquared, factor: foot ** 2, system: 'us', ucum: '[ft_i]2' },
  { symbol: 'in2', aliases: ['sq in', 'square inch', 'square inches'], factor: inch ** 2, system: 'us', ucum: '[in_i]2' },
  { symbol: 'm2', aliases: ['sq m'], factor: 1, system: 'metric', ucum: 'm2', source: 'si' },
  { symbol: 'cm2', aliases: ['sq cm'], factor: 1e-4, system: 'metric', ucum: 'cm2', source: 'si' },
  { symbol: 'mm2', aliases: ['sq mm'], factor: 1e-6, system: 'metric', ucum: 'mm2', source: 'si' },
]);

const volumes: readonly UnitEntry[] = [
  { symbol: 'gal', aliases: usGallon, factor: gallon, system: 'us', ucum: '[gal_us]' },
  { symbol: 'L', aliases: litreWords, factor: litre, system: 'metric', ucum: 'L', source: 'si' },
  { symbol: 'mL', aliases: ['cm3', 'cc'], factor: 1e-6, system: 'metric', ucum: 'mL', source: 'si' },
  { symbol: 'm3', aliases: ['cubic metre', 'cubic metres', 'cubic meter', 'cubic meters'], factor: 1, system: 'metric', ucum: 'm3', source: 'si' },
  { symbol: 'ft3', aliases: footCubed, factor: foot ** 3, system: 'us', ucum: '[ft_i]3' },
];

export const volumeRows = rowsOf('volume', [
  ...volumes,
  { symbol: 'in3', aliases: ['cu in', 'cubic inch', 'cubic inches'], factor: inch ** 3, system: 'us', ucum: '[in_i]3' },
  { symbol: 'qt', aliases: ['quart', 'quarts'], factor: gallon / 4, system: 'us', ucum: '[qt_us]' },
  { symbol: 'pt', aliases: ['pint', 'pints'], factor: gallon / 8, system: 'us', ucum: '[pt_us]' },
  { symbol: 'fl oz', aliases: ['fluid ounce', 'fluid ounces'], factor: gallon / 128, system: 'us', ucum: '[foz_us]' },
  { symbol: 'imp gal', aliases: imperial, factor: imperialGallon, system: 'us', ucum: '[gal_br]' },
]);

/** A meter counts volume; '/pulse' may be written and need not. */
export const pulseRows = rowsOf(
  'volume-per-pulse',
  volumes.map((unit) => ({
    ...unit,
    aliases: [...(unit.aliases ?? []), ...quotients([unit.symbol, ...(unit.aliases ?? [])], ['pulse', 'pulso'])],
  })),
);

export const massRows = rowsOf('mass', [
  { symbol: 'lb', aliases: poundWords, factor: pound, system: 'us', ucum: '[lb_av]' },
  { symbol: 'kg', aliases: ['kilogram', 'kilograms', 'kilo', 'kilos'], factor: 1, system: 'metric', ucum: 'kg', source: 'si' },
  { symbol: 'oz', aliases: ['ounce', 'ounces', 'onza', 'onzas'], factor: ounce, system: 'us', ucum: '[oz_av]' },
  { symbol: 'g', aliases: ['gram', 'grams', 'gramo', 'gramos'], factor: 1e-3, system: 'metric', ucum: 'g', source: 'si' },
  { symbol: 'mg', factor: 1e-6, system: 'metric', ucum: 'mg', source: 'si' },
  { symbol: 'gr', aliases: grainWords, factor: grain, system: 'us', ucum: '[gr]' },
  { symbol: 't', aliases: ['tonne', 'tonnes', 'metric ton', 'metric tons'], factor: 1000, system: 'metric', ucum: 't', source: 'si' },
  { symbol: 'short ton', aliases: ['short tons', 'US ton', 'US tons'], factor: 2000 * pound, system: 'us', ucum: '[ston_av]' },
]);

export const timeRows = rowsOf('time', [
  { symbol: 'min', aliases: minuteWords, factor: minute, system: 'both', ucum: 'min', source: 'si' },
  { symbol: 's', aliases: ['sec', 'secs', 'second', 'seconds', 'segundo', 'segundos'], factor: 1, system: 'both', ucum: 's', source: 'si' },
  { symbol: 'h', aliases: hourWords, factor: hour, system: 'both', ucum: 'h', source: 'si' },
  { symbol: 'd', aliases: dayWords, factor: day, system: 'both', ucum: 'd', source: 'si' },
  { symbol: 'wk', aliases: ['week', 'weeks', 'semana', 'semanas'], factor: 7 * day, system: 'both', ucum: 'wk', source: 'convention' },
  { symbol: 'yr', aliases: ['year', 'years', 'año', 'años'], factor: 365.25 * day, system: 'both', ucum: 'a', source: 'convention' },
]);

const fahrenheit = 5 / 9;

export const temperatureRows = rowsOf('temperature', [
  { symbol: 'degF', aliases: ['F', 'deg Fahrenheit', 'Fahrenheit'], factor: fahrenheit, offset: 459.67 * fahrenheit, system: 'us', ucum: '[degF]' },
  { symbol: 'degC', aliases: ['C', 'deg Celsius', 'Celsius', 'centigrade'], factor: 1, offset: 273.15, system: 'metric', ucum: 'Cel', source: 'si' },
  { symbol: 'K', aliases: ['kelvin'], factor: 1, system: 'metric', ucum: 'K', source: 'si' },
]);
