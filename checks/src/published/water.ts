import {
  celsiusZero,
  waterDensity,
  waterKinematicViscosity,
  waterVapourPressure,
  waterViscosity,
} from '@brinewright/physics';
import { type DataRow, readTable } from '../read-data.ts';
import type { Claim, Tolerance } from '../row.ts';

const formulation = 'IAPWS-95 and IAPWS R12-08, computed with python3-iapws 1.5.3';
const industrial = 'IAPWS-IF97 saturation line, computed with python3-iapws 1.5.3';

type Column = {
  readonly name: string;
  readonly source: string;
  readonly tolerance: Tolerance;
  readonly compute: (temperature: number) => number;
};

/** Tolerances as water-properties.csv states them. */
const columns: readonly Column[] = [
  {
    name: 'density_kg_m3',
    source: formulation,
    tolerance: { abs: 0.01 },
    compute: (temperature) => waterDensity.compute({ temperature }).density,
  },
  {
    name: 'dynamic_viscosity_mPa_s',
    source: formulation,
    tolerance: { rel: 1e-4 },
    compute: (temperature) => waterViscosity.compute({ temperature }).dynamicViscosity * 1e3,
  },
  {
    name: 'kinematic_viscosity_mm2_s',
    source: formulation,
    tolerance: { rel: 1e-4 },
    compute: (temperature) => waterKinematicViscosity.compute({ temperature }).kinematicViscosity * 1e6,
  },
  {
    name: 'vapour_pressure_kPa',
    source: industrial,
    tolerance: { rel: 1e-4 },
    compute: (temperature) => waterVapourPressure.compute({ temperature }).vapourPressure * 1e-3,
  },
];

const claimOf = (row: DataRow, column: Column): Claim => ({
  id: `water ${row.text('t_C')} ${column.name}`,
  title: `${column.name}, ${row.text('t_C')} °C`,
  source: column.source,
  mark: 'computed',
  computed: column.compute(row.number('t_C') + celsiusZero),
  expected: row.number(column.name),
  tolerance: column.tolerance,
});

export const rows = (): readonly Claim[] =>
  readTable('water-properties.csv').flatMap((row) =>
    columns.filter(({ name }) => !row.isEmpty(name)).map((column) => claimOf(row, column)),
  );
