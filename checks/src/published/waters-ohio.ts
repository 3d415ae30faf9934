import { analyseIons, fromNitrogen, type LaboratoryFigures, type WaterIons } from '@brinewright/physics';
import { fromUnit } from '@brinewright/units';
import { type DataRow, readTable, readText } from '../read-data.ts';
import { agrees, type Claim, type Tolerance } from '../row.ts';
import { type Given, massOf, waterOf } from './water-row.ts';

const agency = 'Ohio EPA, Ambient Ground Water Quality Monitoring Program';

const nitrogenOf = (row: DataRow, ion: 'nitrate' | 'ammonium', column: string): WaterIons => {
  const nitrogen = massOf(row, column);
  return nitrogen === undefined ? {} : { [ion]: fromNitrogen(ion, nitrogen) };
};

/** Ions that the agency's own balance rests on, and those it reports besides. */
const balanced: Given = [
  ['calcium', 'Ca'],
  ['magnesium', 'Mg'],
  ['sodium', 'Na'],
  ['potassium', 'K'],
  ['iron', 'Fe'],
  ['manganese', 'Mn'],
  ['sulfate', 'SO4'],
  ['chloride', 'Cl'],
];
const besides: Given = [
  ['barium', 'Ba'],
  ['strontium', 'Sr'],
  ['fluoride', 'F'],
];

const chalk = (row: DataRow, column: string): number =>
  fromUnit(row.number(column), 'mg/L CaCO3', 'hardness').si;

const laboratoryOf = (row: DataRow): LaboratoryFigures => ({
  alkalinity: chalk(row, 'alkalinity_mg_L_CaCO3'),
  hardness: chalk(row, 'hardness_lab_mg_L_CaCO3'),
});

const agencyReport = (row: DataRow) =>
  analyseIons({ ...waterOf(row, balanced), ...nitrogenOf(row, 'nitrate', 'NO3_NO2_N') }, laboratoryOf(row));

const fullReport = (row: DataRow) =>
  analyseIons(
    {
      ...waterOf(row, [...balanced, ...besides]),
      ...nitrogenOf(row, 'nitrate', 'NO3_NO2_N'),
      ...nitrogenOf(row, 'ammonium', 'NH3_N'),
    },
    laboratoryOf(row),
  );

/** The agency's reading of the analysis: reported solids against computed, and against conductivity. */
const classOf = (row: DataRow): string => {
  const report = fullReport(row);
  if (report.verdict === 'questionable') return 'questionable';
  const reported = row.number('TDS_mg_L');
  const computed = (report.dissolvedSolids * 1e3) / reported;
  const perConductivity = reported / row.number('SC_uS_cm');
  const fits = computed >= 0.8 && computed <= 1.2 && perConductivity >= 0.45 && perConductivity <= 1.05;
  return fits ? 'plausible' : 'ions-plausible-TDS-or-SC-odd';
};

type Pair = { readonly computed: number; readonly expected: number };

const balanceOf = (row: DataRow): Pair => ({
  computed: agencyReport(row).chargeBalance,
  expected: row.number('agency_charge_balance'),
});

const hardnessOf = (row: DataRow): Pair => ({
  computed: agencyReport(row).hardness,
  expected: chalk(row, 'hardness_lab_mg_L_CaCO3'),
});

type Agreement = {
  readonly what: string;
  readonly tolerance: Tolerance;
  readonly of: (row: DataRow) => Pair;
  /** The sentence of the data's README that states the share of all 4435 samples. */
  readonly stated: RegExp;
};

const agreements: readonly Agreement[] = [
  {
    what: 'agency_charge_balance',
    tolerance: { abs: 0.02 },
    of: balanceOf,
    stated: /within 0\.02 of the agency's for (\d+) %/,
  },
  {
    what: 'hardness_lab_mg_L_CaCO3',
    tolerance: { rel: 0.01 },
    of: hardnessOf,
    stated: /within 1 % of the laboratory hardness for (\d+) %/,
  },
];

/** A single sample may differ, its source says how often: shown, and counted as a share. */
const sampleClaims = (rows: readonly DataRow[], { what, tolerance, of }: Agreement): readonly Claim[] =>
  rows.map((row) => ({
    id: `ohio ${row.text('sample')} ${what}`,
    title: `${what}, ${row.text('sample')}`,
    source: agency,
    mark: 'seen',
    ...of(row),
    tolerance,
    notCounted: 'share',
  }));

/** The share among our samples, within two standard deviations of drawing so few. */
const shareClaim = (rows: readonly DataRow[], agreement: Agreement): Claim => {
  const claims = sampleClaims(rows, agreement);
  const stated = Number(agreement.stated.exec(readText('waters/README.md'))?.[1]) / 100;
  return {
    id: `ohio share ${agreement.what}`,
    title: `${agreement.what}, share of ${claims.length} samples within tolerance`,
    source: agency,
    mark: 'computed',
    computed: claims.filter(agrees).length / claims.length,
    expected: stated,
    tolerance: { abs: 2 * Math.sqrt((stated * (1 - stated)) / claims.length) },
  };
};

const classClaim = (row: DataRow): Claim => ({
  id: `ohio ${row.text('sample')} class`,
  title: `class, ${row.text('sample')}`,
  source: agency,
  mark: 'computed',
  computed: classOf(row),
  expected: row.text('class'),
  tolerance: { abs: 0 },
});

/** The questionable ones were chosen for being off: they are judged by class alone. */
export const ohio = (): readonly Claim[] => {
  const all = readTable('waters/groundwater-ohio.csv');
  const usual = all.filter((row) => row.text('class') !== 'questionable');
  return [
    ...agreements.map((agreement) => shareClaim(usual, agreement)),
    ...agreements.flatMap((agreement) => sampleClaims(usual, agreement)),
    ...all.map(classClaim),
  ];
};
