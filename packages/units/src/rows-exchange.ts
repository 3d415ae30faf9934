import {
  equivalents,
  foot,
  gallon,
  grain,
  grainOfHardness,
  imperialGallon,
  litre,
  pound,
} from './constants.ts';
import { asCarbonate, footCubed, grainWords, imperial, kilograinWords, litreWords, poundWords, usGallon } from './spellings.ts';
import { alsoAs, quotients, rowsOf, type UnitEntry } from './unit-row.ts';

const byWeight = { source: 'atomic-weights', exact: false } as const;
const mgPerLitre = 1e-3;
const grainsPerGallon = quotients(grainWords, usGallon);

const asCalciumCarbonate: readonly UnitEntry[] = [
  { symbol: 'gpg', aliases: ['grains/gal', ...grainsPerGallon, ...asCarbonate('gpg')], factor: grainOfHardness / gallon, system: 'us', ...byWeight },
  { symbol: 'mg/L CaCO3', aliases: asCarbonate('mg', 'L'), factor: mgPerLitre * equivalents.CaCO3, system: 'metric', ...byWeight },
  { symbol: 'ppm CaCO3', aliases: asCarbonate('ppm'), factor: mgPerLitre * equivalents.CaCO3, system: 'metric', ...byWeight },
];

const charges: readonly UnitEntry[] = [
  { symbol: 'meq/L', aliases: ['mval/L'], factor: 1, system: 'both', ucum: 'meq/L', source: 'si' },
  { symbol: 'eq/m3', factor: 1, system: 'both', ucum: 'eq/m3', source: 'si' },
  { symbol: 'eq/L', factor: 1e3, system: 'both', ucum: 'eq/L', source: 'si' },
];

/** 'mg/L' and 'ppm' alone are read as calcium carbonate here, as every hardness test prints them. */
const plainly: Readonly<Record<string, readonly string[]>> = {
  'mg/L CaCO3': ['mg/L', 'g/m3'],
  'ppm CaCO3': ['ppm'],
};

export const hardnessRows = rowsOf('hardness', [
  ...asCalciumCarbonate.map((unit) => ({ ...unit, aliases: [...(unit.aliases ?? []), ...(plainly[unit.symbol] ?? [])] })),
  ...charges,
  { symbol: 'mmol/L', aliases: ['mol/m3'], factor: 2, system: 'metric', ucum: 'mmol/L', source: 'si' },
  { symbol: 'degdH', aliases: ['dH', 'dGH', 'degd', 'German degree', 'German degrees'], factor: 1e-2 * equivalents.CaO, system: 'metric', ...byWeight },
  { symbol: 'degfH', aliases: ['fH', 'degf', 'French degree', 'French degrees'], factor: 1e-2 * equivalents.CaCO3, system: 'metric', ...byWeight },
  { symbol: 'dege', aliases: ['degClark', 'Clark', 'English degree', 'English degrees', ...quotients(grainWords, imperial)], factor: grainOfHardness / imperialGallon, system: 'metric', ...byWeight },
  { symbol: 'mg/L Ca', aliases: ['mg/L as Ca', 'ppm Ca', 'mg Ca/L'], factor: mgPerLitre * equivalents.Ca, system: 'metric', ...byWeight },
  { symbol: 'mg/L Mg', aliases: ['mg/L as Mg', 'ppm Mg', 'mg Mg/L'], factor: mgPerLitre * equivalents.Mg, system: 'metric', ...byWeight },
]);

/** 'mg/L' alone is refused: without the substance it says nothing of charge. */
export const equivalentRows = rowsOf('equivalent-concentration', [
  ...charges,
  { symbol: 'ueq/L', factor: 1e-3, system: 'both', ucum: 'ueq/L', source: 'si' },
  ...asCalciumCarbonate.map((unit) => (unit.symbol === 'gpg' ? { ...unit, symbol: 'gpg CaCO3', aliases: asCarbonate('gpg') } : unit)),
]);

const perLitre = [...litreWords];

/** ppm is mass per volume here, as labs print it; true for water that weighs 1 kg/L, not for brine. */
export const concentrationRows = rowsOf('concentration', [
  { symbol: 'mg/L', aliases: [...quotients(['mg'], perLitre), 'g/m3', 'ug/mL'], factor: 1e-3, system: 'both', ucum: 'mg/L', source: 'si' },
  { symbol: 'ppm', factor: 1e-3, system: 'both', source: 'convention', exact: false },
  { symbol: 'ug/L', aliases: quotients(['ug', 'mcg'], perLitre), factor: 1e-6, system: 'both', ucum: 'ug/L', source: 'si' },
  { symbol: 'ppb', factor: 1e-6, system: 'both', source: 'convention', exact: false },
  { symbol: 'g/L', aliases: [...quotients(['g'], perLitre), 'mg/mL'], factor: 1, system: 'metric', ucum: 'g/L', source: 'si' },
  { symbol: 'kg/m3', factor: 1, system: 'metric', ucum: 'kg/m3', source: 'si' },
  { symbol: 'lb/gal', aliases: quotients(poundWords, usGallon), factor: pound / gallon, system: 'us', ucum: '[lb_av]/[gal_us]' },
  { symbol: 'gr/gal', aliases: ['gpg', ...grainsPerGallon], factor: grain / gallon, system: 'us', ucum: '[gr]/[gal_us]' },
]);

export const saltDoseRows = rowsOf('salt-dose', [
  { symbol: 'lb/ft3', aliases: quotients(poundWords, footCubed), factor: pound / foot ** 3, system: 'us', ucum: '[lb_av]/[ft_i]3' },
  { symbol: 'g/L', aliases: quotients(['g'], perLitre), factor: 1, system: 'metric', ucum: 'g/L', source: 'si' },
  { symbol: 'kg/m3', factor: 1, system: 'metric', ucum: 'kg/m3', source: 'si' },
]);

export const densityRows = [
  ...alsoAs('density', saltDoseRows),
  ...rowsOf('density', [
    { symbol: 'lb/gal', aliases: quotients(poundWords, usGallon), factor: pound / gallon, system: 'us', ucum: '[lb_av]/[gal_us]' },
    { symbol: 'g/cm3', aliases: ['g/mL', 'g/cc', 'kg/L', 'kg/dm3'], factor: 1e3, system: 'metric', ucum: 'g/cm3', source: 'si' },
  ]),
];

export const capacityRows = rowsOf('capacity', [
  { symbol: 'kgr/ft3', aliases: quotients(kilograinWords, footCubed), factor: (1000 * grainOfHardness) / foot ** 3, system: 'us', ...byWeight },
  { symbol: 'eq/L', aliases: ['meq/mL', 'val/L'], factor: 1e3, system: 'metric', ucum: 'eq/L', source: 'si' },
  { symbol: 'gr/ft3', aliases: quotients(grainWords, footCubed), factor: grainOfHardness / foot ** 3, system: 'us', ...byWeight },
  { symbol: 'g/L CaCO3', aliases: ['g/L', 'kg/m3', ...asCarbonate('g', 'L'), ...asCarbonate('kg', 'm3')], factor: equivalents.CaCO3, system: 'metric', ...byWeight },
  { symbol: 'g/L CaO', aliases: ['g/L as CaO', 'g CaO/L'], factor: equivalents.CaO, system: 'metric', ...byWeight },
  { symbol: 'meq/L', factor: 1, system: 'metric', ucum: 'meq/L', source: 'si' },
  { symbol: 'eq/m3', factor: 1, system: 'metric', ucum: 'eq/m3', source: 'si' },
]);

export const exchangeRows = rowsOf('exchange', [
  { symbol: 'kgr', aliases: kilograinWords, factor: 1000 * grainOfHardness, system: 'us', ...byWeight },
  { symbol: 'eq', aliases: ['val'], factor: 1, system: 'metric', ucum: 'eq', source: 'si' },
  { symbol: 'gr', aliases: grainWords, factor: grainOfHardness, system: 'us', ...byWeight },
  { symbol: 'meq', factor: 1e-3, system: 'metric', ucum: 'meq', source: 'si' },
  { symbol: 'g CaCO3', aliases: ['g', ...asCarbonate('g')], factor: 1e-3 * equivalents.CaCO3, system: 'metric', ...byWeight },
  { symbol: 'kg CaCO3', aliases: ['kg', ...asCarbonate('kg')], factor: equivalents.CaCO3, system: 'metric', ...byWeight },
]);

export const saltEfficiencyRows = rowsOf('salt-efficiency', [
  { symbol: 'gr/lb', aliases: quotients(grainWords, poundWords), factor: grainOfHardness / pound, system: 'us', ...byWeight },
  { symbol: 'g/kg CaCO3', aliases: ['g/kg', ...asCarbonate('g', 'kg')], factor: 1e-3 * equivalents.CaCO3, system: 'metric', ...byWeight },
  { symbol: 'eq/kg', aliases: ['meq/g'], factor: 1, system: 'metric', ucum: 'eq/kg', source: 'si' },
  { symbol: 'kgr/lb', aliases: quotients(kilograinWords, poundWords), factor: (1000 * grainOfHardness) / pound, system: 'us', ...byWeight },
]);

export const saltPerExchangeRows = rowsOf('salt-per-exchange', [
  { symbol: 'lb/kgr', aliases: quotients(poundWords, kilograinWords), factor: pound / (1000 * grainOfHardness), system: 'us', ...byWeight },
  { symbol: 'g/eq', factor: 1e-3, system: 'metric', ucum: 'g/eq', source: 'si' },
  { symbol: 'kg/eq', factor: 1, system: 'metric', ucum: 'kg/eq', source: 'si' },
  { symbol: 'kg/kg CaCO3', aliases: ['kg/kg', 'g/g', 'g/g CaCO3'], factor: 1 / equivalents.CaCO3, system: 'metric', ...byWeight },
]);

export const waterPerExchangeRows = rowsOf('water-per-exchange', [
  { symbol: 'gal/kgr', aliases: quotients(usGallon, kilograinWords), factor: gallon / (1000 * grainOfHardness), system: 'us', ...byWeight },
  { symbol: 'L/eq', factor: litre, system: 'metric', ucum: 'L/eq', source: 'si' },
  { symbol: 'L/kg CaCO3', aliases: asCarbonate('L', 'kg'), factor: litre / equivalents.CaCO3, system: 'metric', ...byWeight },
  { symbol: 'm3/eq', factor: 1, system: 'metric', ucum: 'm3/eq', source: 'si' },
]);

export const brineStrengthRows = [
  ...rowsOf('mass-fraction', [
    { symbol: '%', aliases: ['wt%', 'wt %', '% mass', '% by mass', '% w/w', 'percent'], factor: 1e-2, system: 'both', ucum: '%', source: 'si' },
    { symbol: 'g/kg', factor: 1e-3, system: 'both', ucum: 'g/kg', source: 'si' },
    { symbol: 'kg/kg', aliases: ['g/g', 'lb/lb'], factor: 1, system: 'both', ucum: 'kg/kg', source: 'si' },
  ]),
  ...rowsOf('salometer', [
    { symbol: 'degSal', aliases: ['degS', 'deg salometer', 'degrees salometer', 'salometer', 'salometer degrees', '% saturation', '%'], factor: 1e-2, system: 'both', source: 'convention' },
    { symbol: 'of saturation', factor: 1, system: 'both', source: 'convention' },
  ]),
];
