import {
  brineDensity,
  brineMade,
  brineSalt,
  celsiusZero,
  molarMass,
  potassiumChlorideSolubility,
  salometerBrine,
  saltPerWater,
  saltSolubility,
  saltSolubilitySparrow,
  waterDensity,
} from '@brinewright/physics';
import { fromUnit, toUnit } from '@brinewright/units';
import { type DataRow, readTable } from '../read-data.ts';
import { claimsOf, type Example, readExamples } from '../read-examples.ts';
import type { Claim } from '../row.ts';

const rogersPitzer = 'Rogers & Pitzer (1982), J. Phys. Chem. Ref. Data 11, 15';
const sparrow = 'Sparrow (2003), Desalination 159, 161';
const saltInstitute = 'Salt Institute, Solubility of Salt at Various Temperatures';
const handbook = 'Poradnik fizykochemiczny, WNT Warszawa 1974';
const salometerScale = 'Hilderbrand (1999), Oregon State University Extension ORESU-H-99-002';
const asComputed = 'computed from Rogers & Pitzer (1982) densities and IAPWS-95 water';

/** Why a row of a table that the engine carries in itself is not counted; run.test.ts still asks for agreement. */
const ownTable = 'own-table';

/** Half a unit of the last digit shown, where a table states no tolerance. */
const halfOfLast = (printed: string): number => 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0);

const densityAt = (celsius: number, percent: number): number =>
  brineDensity.compute({ temperature: celsius + celsiusZero, massFraction: percent / 100 }).density;

/** The table the engine itself interpolates in: shows that each number was carried over, and proves nothing more. */
const tablePoints = (): readonly Claim[] =>
  readTable('nacl-specific-volume.csv').map((row) => {
    const salt = row.number('molality_mol_kg') * molarMass.sodiumChloride;
    return {
      id: `brine volume ${row.text('t_C')} ${row.text('molality_mol_kg')}`,
      title: `specific_volume_cm3_g, ${row.text('t_C')} °C, ${row.text('molality_mol_kg')} mol/kg`,
      source: rogersPitzer,
      mark: 'seen',
      computed: 1e3 / densityAt(row.number('t_C'), (100 * salt) / (1 + salt)),
      expected: row.number('specific_volume_cm3_g'),
      tolerance: { abs: halfOfLast(row.text('specific_volume_cm3_g')) },
      notCounted: ownTable,
    };
  });

/** nacl-brine.csv: 0.1 kg/m3 for the same interpolation, 0.7 between the two equations. */
const densityTable = (): readonly Claim[] =>
  readTable('nacl-brine.csv').flatMap((row) => {
    const [celsius, percent] = [row.number('t_C'), row.number('mass_percent_NaCl')];
    const place = `${row.text('t_C')} °C, ${row.text('mass_percent_NaCl')} %`;
    const computed = densityAt(celsius, percent);
    const { saltConcentration } = brineSalt.compute({
      temperature: celsius + celsiusZero,
      massFraction: percent / 100,
    });
    const claim = (column: string, source: string, ours: number, abs: number): Claim => ({
      id: `brine ${row.text('t_C')} ${row.text('mass_percent_NaCl')} ${column}`,
      title: `${column}, ${place}`,
      source,
      mark: 'computed',
      computed: ours,
      expected: row.number(column),
      tolerance: { abs },
    });
    return [
      claim('density_kg_m3_RogersPitzer', rogersPitzer, computed, 0.1),
      claim('density_kg_m3_Sparrow', sparrow, computed, 0.7),
      claim('NaCl_g_per_L', rogersPitzer, saltConcentration, 0.1),
    ];
  });

/** nacl-density-20C.csv: 0.2 kg/m3 for the handbook. */
const handbookDensities = (): readonly Claim[] =>
  readTable('nacl-density-20C.csv').flatMap((row) => {
    const percent = row.number('mass_percent');
    const claim = (column: string, source: string, mark: string, computed: number, abs: number): Claim => ({
      id: `brine 20C ${row.text('mass_percent')} ${column}`,
      title: `${column}, ${row.text('mass_percent')} %`,
      source,
      mark,
      computed,
      expected: row.number(column),
      tolerance: { abs },
    });
    const density = densityAt(20, percent);
    return [
      claim('density_kg_m3_20C', handbook, 'seen', density, 0.2),
      claim('NaCl_g_per_L', handbook, 'seen', (density * percent) / 100, 0.2),
      claim('RogersPitzer_interpolated_20C', rogersPitzer, 'computed', density, 0.1),
    ];
  });

const solubilityRow = (row: DataRow): readonly Claim[] => {
  const celsius = row.number('t_C');
  const temperature = celsius + celsiusZero;
  const ours = saltSolubility.compute({ temperature }).massFraction;
  const second = 100 * saltSolubilitySparrow.compute({ temperature }).massFraction;
  const claim = (
    what: string,
    source: string,
    mark: string,
    computed: number,
    column: string,
    abs: number,
  ): Claim => ({
    id: `solubility ${row.text('t_C')} ${what}`,
    title: `${what}, ${row.text('t_C')} °C`,
    source,
    mark,
    computed,
    expected: row.number(column),
    tolerance: { abs },
  });
  const own = [
    claim('saturated_mass_percent', saltInstitute, 'seen', 100 * ours, 'saturated_mass_percent', 0.0005),
    claim(
      'g_per_100g_water',
      saltInstitute,
      'computed',
      (100 * ours) / (1 - ours),
      'g_per_100g_water',
      0.0005,
    ),
  ].map((row) => ({ ...row, notCounted: ownTable }));
  if (row.isEmpty('Sparrow_2003_mass_percent')) return own;
  const between = celsius <= 52 ? 0.05 : 0.2;
  return [
    ...own,
    claim('Sparrow_2003_mass_percent', sparrow, 'computed', second, 'Sparrow_2003_mass_percent', 0.0005),
    claim('Sparrow against Salt Institute', saltInstitute, 'seen', second, 'saturated_mass_percent', between),
  ];
};

const sixtyFahrenheit = fromUnit(60, 'degF', 'temperature').si;
const inPoundsPerGallon = (si: number): number => toUnit({ kind: 'concentration', si }, 'lb/gal');

const salometerRow = (row: DataRow): readonly Claim[] => {
  const { massFraction } = salometerBrine.compute({ salometer: row.number('salometer_deg') / 100 });
  const temperature = sixtyFahrenheit;
  const { density } = brineDensity.compute({ temperature, massFraction });
  const water = waterDensity.compute({ temperature }).density;
  const waterShare = ((1 - massFraction) * density) / water;
  const claim = (column: string, source: string, mark: string, computed: number, abs?: number): Claim => ({
    id: `salometer ${row.text('salometer_deg')} ${column}`,
    title: `${column}, ${row.text('salometer_deg')} degrees`,
    source,
    mark,
    computed,
    expected: row.number(column),
    tolerance: { abs: abs ?? halfOfLast(row.text(column)) },
  });
  const perWater = inPoundsPerGallon(saltPerWater.compute({ temperature, massFraction }).saltPerWater);
  const table = [
    claim('mass_percent', salometerScale, 'seen', 100 * massFraction, 0.0005),
    claim('specific_gravity_60_60F', asComputed, 'computed', density / water, 0.0003),
    claim('lb_brine_per_gal', asComputed, 'computed', inPoundsPerGallon(density), 0.002),
    claim('lb_salt_per_gal_brine', asComputed, 'computed', inPoundsPerGallon(massFraction * density), 0.002),
    claim('gal_water_per_gal_brine', asComputed, 'computed', waterShare, 0.0001),
    claim('lb_salt_per_gal_water', asComputed, 'computed', perWater, 0.002),
    claim('gal_brine_per_gal_water', asComputed, 'computed', 1 / waterShare, 0.0001),
  ];
  if (row.isEmpty('trade_table_SG_memory')) return table;
  return [
    ...table,
    claim('trade_table_SG_memory', 'trade table', 'memory', density / water),
    claim(
      'trade_table_lb_salt_per_gal_brine_memory',
      'trade table',
      'memory',
      inPoundsPerGallon(massFraction * density),
    ),
  ];
};

/** Never counted: secondary pages and memory. */
const potassiumChloride = (): readonly Claim[] =>
  readTable('kcl-solubility.csv').map((row) => {
    const temperature = row.number('temperature_C') + celsiusZero;
    const { massFraction } = potassiumChlorideSolubility.compute({ temperature });
    return {
      id: `potassium chloride ${row.text('temperature_C')}`,
      title: `g_per_100g_water, ${row.text('temperature_C')} °C`,
      source: 'general chemistry pages and memory',
      mark: row.text('mark'),
      computed: (100 * massFraction) / (1 - massFraction),
      expected: row.number('g_per_100g_water'),
      tolerance: { abs: 0.05 },
      notCounted: 'secondary',
    };
  });

const brineOf = ({ input }: Example, saturation: number) => {
  const waterVolume = fromUnit(1, 'gal', 'volume').si;
  const made = brineMade.compute({
    saltMass: fromUnit(input('lb_per_gal'), 'lb', 'mass').si,
    waterVolume,
    temperature: input('t_C') + celsiusZero,
    saturation,
  });
  return {
    ...made,
    brinePerWater: made.brineVolume / waterVolume,
    saltPerBrine: inPoundsPerGallon(made.saltConcentration),
  };
};

const workedExamples = (): readonly Claim[] => {
  const examples = readExamples('units-brine-examples.json');
  return [
    ...claimsOf(examples, 'U4', (example) => {
      const temperature = example.input('t_C') + celsiusZero;
      const saturation = saltSolubility.compute({ temperature }).massFraction;
      const made = brineOf(example, saturation);
      return {
        mass_percent: 100 * made.massFraction,
        brine_gal_per_gal_water: made.brinePerWater,
        lb_salt_per_gal_brine: made.saltPerBrine,
        percent_of_saturation_26_395: (100 * made.massFraction) / saturation,
      };
    }),
    ...claimsOf(examples, 'U5', (example) => {
      const temperature = example.input('t_C') + celsiusZero;
      const saturation = saltSolubility.compute({ temperature }).massFraction;
      const made = brineOf(example, saturation);
      const all = brineOf(example, 0.9);
      return {
        mass_percent_if_all_dissolved: 100 * all.massFraction,
        saturation_percent: 100 * saturation,
        dissolved_lb_per_gal: toUnit({ kind: 'mass', si: made.dissolvedSalt }, 'lb'),
        brine_gal_per_gal_water: made.brinePerWater,
        lb_salt_per_gal_brine: made.saltPerBrine,
      };
    }),
  ];
};

export const rows = (): readonly Claim[] => [
  ...tablePoints(),
  ...densityTable(),
  ...handbookDensities(),
  ...readTable('nacl-solubility.csv').flatMap(solubilityRow),
  ...readTable('salometer-60F.csv').flatMap(salometerRow),
  ...potassiumChloride(),
  ...workedExamples(),
];
