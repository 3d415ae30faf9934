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
import {
  asCarbonate,
  footCubed,
  grainWords,
  imperial,
  kilograinWords,
  litreWords,
  poundWords,
  usGallon,
} from './spellings.ts';
import { alsoAs, both, metric, quotients, rowsOf, type UnitEntry, us } from './unit-row.ts';

const byWeight = { source: 'atomic-weights', exact: false } as const;
const mgPerLitre = 1e-3;
const grainsPerGallon = quotients(grainWords, usGallon);

const asCalciumCarbonate: readonly UnitEntry[] = [
  us(
    'gpg',
    grainOfHardness / gallon,
    '',
    ['grains/gal', ...grainsPerGallon, ...asCarbonate('gpg')],
    byWeight,
  ),
  metric('mg/L CaCO3', mgPerLitre * equivalents.CaCO3, '', asCarbonate('mg', 'L'), byWeight),
  metric('ppm CaCO3', mgPerLitre * equivalents.CaCO3, '', asCarbonate('ppm'), byWeight),
];

const charges: readonly UnitEntry[] = [
  both('meq/L', 1, 'meq/L', ['mval/L']),
  both('eq/m3', 1, 'eq/m3'),
  both('eq/L', 1e3, 'eq/L'),
];

/** 'mg/L' and 'ppm' alone are read as calcium carbonate here, as every hardness test prints them. */
const plainly: Readonly<Record<string, readonly string[]>> = {
  'mg/L CaCO3': ['mg/L', 'g/m3'],
  'ppm CaCO3': ['ppm'],
};

export const hardnessRows = rowsOf('hardness', [
  ...asCalciumCarbonate.map((unit) => ({
    ...unit,
    aliases: [...unit.aliases, ...(plainly[unit.symbol] ?? [])],
  })),
  ...charges,
  metric('mmol/L', 2, 'mmol/L', ['mol/m3']),
  metric(
    'degdH',
    1e-2 * equivalents.CaO,
    '',
    ['dH', 'dGH', 'degd', 'German degree', 'German degrees'],
    byWeight,
  ),
  metric('degfH', 1e-2 * equivalents.CaCO3, '', ['fH', 'degf', 'French degree', 'French degrees'], byWeight),
  metric(
    'dege',
    grainOfHardness / imperialGallon,
    '',
    ['degClark', 'Clark', 'English degree', 'English degrees', ...quotients(grainWords, imperial)],
    byWeight,
  ),
  metric('mg/L Ca', mgPerLitre * equivalents.Ca, '', ['mg/L as Ca', 'ppm Ca', 'mg Ca/L'], byWeight),
  metric('mg/L Mg', mgPerLitre * equivalents.Mg, '', ['mg/L as Mg', 'ppm Mg', 'mg Mg/L'], byWeight),
]);

/** 'mg/L' alone is refused: without the substance it says nothing of charge. */
export const equivalentRows = rowsOf('equivalent-concentration', [
  ...charges,
  both('ueq/L', 1e-3, 'ueq/L'),
  ...asCalciumCarbonate.map((unit) =>
    unit.symbol === 'gpg' ? { ...unit, symbol: 'gpg CaCO3', aliases: asCarbonate('gpg') } : unit,
  ),
]);

const perLitre = [...litreWords];

/** ppm is mass per volume here, as labs print it; true for water that weighs 1 kg/L, not for brine. */
export const concentrationRows = rowsOf('concentration', [
  both('mg/L', 1e-3, 'mg/L', [...quotients(['mg'], perLitre), 'g/m3', 'ug/mL']),
  both('ppm', 1e-3, '', [], { source: 'convention', exact: false }),
  both('ug/L', 1e-6, 'ug/L', quotients(['ug', 'mcg'], perLitre)),
  both('ppb', 1e-6, '', [], { source: 'convention', exact: false }),
  metric('g/L', 1, 'g/L', [...quotients(['g'], perLitre), 'mg/mL']),
  metric('kg/m3', 1, 'kg/m3'),
  us('lb/gal', pound / gallon, '[lb_av]/[gal_us]', quotients(poundWords, usGallon)),
  us('gr/gal', grain / gallon, '[gr]/[gal_us]', ['gpg', ...grainsPerGallon]),
]);

export const saltDoseRows = rowsOf('salt-dose', [
  us('lb/ft3', pound / foot ** 3, '[lb_av]/[ft_i]3', quotients(poundWords, footCubed)),
  metric('g/L', 1, 'g/L', quotients(['g'], perLitre)),
  metric('kg/m3', 1, 'kg/m3'),
]);

export const densityRows = [
  ...alsoAs('density', saltDoseRows),
  ...rowsOf('density', [
    us('lb/gal', pound / gallon, '[lb_av]/[gal_us]', quotients(poundWords, usGallon)),
    metric('g/cm3', 1e3, 'g/cm3', ['g/mL', 'g/cc', 'kg/L', 'kg/dm3']),
  ]),
];

export const capacityRows = rowsOf('capacity', [
  us('kgr/ft3', (1000 * grainOfHardness) / foot ** 3, '', quotients(kilograinWords, footCubed), byWeight),
  metric('eq/L', 1e3, 'eq/L', ['meq/mL', 'val/L']),
  us('gr/ft3', grainOfHardness / foot ** 3, '', quotients(grainWords, footCubed), byWeight),
  metric(
    'g/L CaCO3',
    equivalents.CaCO3,
    '',
    ['g/L', 'kg/m3', ...asCarbonate('g', 'L'), ...asCarbonate('kg', 'm3')],
    byWeight,
  ),
  metric('g/L CaO', equivalents.CaO, '', ['g/L as CaO', 'g CaO/L'], byWeight),
  metric('meq/L', 1, 'meq/L'),
  metric('eq/m3', 1, 'eq/m3'),
]);

export const exchangeRows = rowsOf('exchange', [
  us('kgr', 1000 * grainOfHardness, '', kilograinWords, byWeight),
  metric('eq', 1, 'eq', ['val']),
  us('gr', grainOfHardness, '', grainWords, byWeight),
  metric('meq', 1e-3, 'meq'),
  metric('g CaCO3', 1e-3 * equivalents.CaCO3, '', ['g', ...asCarbonate('g')], byWeight),
  metric('kg CaCO3', equivalents.CaCO3, '', ['kg', ...asCarbonate('kg')], byWeight),
]);

export const saltEfficiencyRows = rowsOf('salt-efficiency', [
  us('gr/lb', grainOfHardness / pound, '', quotients(grainWords, poundWords), byWeight),
  metric('g/kg CaCO3', 1e-3 * equivalents.CaCO3, '', ['g/kg', ...asCarbonate('g', 'kg')], byWeight),
  metric('eq/kg', 1, 'eq/kg', ['meq/g']),
  us('kgr/lb', (1000 * grainOfHardness) / pound, '', quotients(kilograinWords, poundWords), byWeight),
]);

/** What iron and manganese are counted as: grains per gallon for each mg/L. */
export const hardnessPerMetalRows = rowsOf('hardness-per-metal', [
  us('gpg/(mg/L)', grainOfHardness / gallon / mgPerLitre, '', ['gpg per mg/L', 'gpg per ppm'], byWeight),
  metric('mg/L CaCO3 per mg/L', equivalents.CaCO3, '', ['g/g CaCO3'], byWeight),
  metric('eq/kg', 1, 'eq/kg'),
]);

export const saltPerExchangeRows = rowsOf('salt-per-exchange', [
  us('lb/kgr', pound / (1000 * grainOfHardness), '', quotients(poundWords, kilograinWords), byWeight),
  metric('g/eq', 1e-3, 'g/eq'),
  metric('kg/eq', 1, 'kg/eq'),
  metric('kg/kg CaCO3', 1 / equivalents.CaCO3, '', ['kg/kg', 'g/g', 'g/g CaCO3'], byWeight),
]);

export const waterPerExchangeRows = rowsOf('water-per-exchange', [
  us('gal/kgr', gallon / (1000 * grainOfHardness), '', quotients(usGallon, kilograinWords), byWeight),
  metric('L/eq', litre, 'L/eq'),
  metric('L/kg CaCO3', litre / equivalents.CaCO3, '', asCarbonate('L', 'kg'), byWeight),
  metric('m3/eq', 1, 'm3/eq'),
]);

export const brineStrengthRows = [
  ...rowsOf('mass-fraction', [
    both('%', 1e-2, '%', ['wt%', 'wt %', '% mass', '% by mass', '% w/w', 'percent']),
    both('g/kg', 1e-3, 'g/kg'),
    both('kg/kg', 1, 'kg/kg', ['g/g', 'lb/lb']),
  ]),
  ...rowsOf('salometer', [
    both(
      'degSal',
      1e-2,
      '',
      ['degS', 'deg salometer', 'degrees salometer', 'salometer', 'salometer degrees', '% saturation', '%'],
      { source: 'convention' },
    ),
    both('of saturation', 1, '', [], { source: 'convention' }),
  ]),
];
