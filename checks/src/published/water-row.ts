import type { IonName, WaterIons } from '@brinewright/physics';
import type { DataRow } from '../read-data.ts';

/** Not detected counts as nothing, not measured as absent. */
export const massOf = (row: DataRow, column: string): number | undefined => {
  if (row.isEmpty(column)) return undefined;
  return row.text(column).startsWith('<') ? 0 : row.number(column) * 1e-3;
};

export type Given = readonly (readonly [IonName, string])[];

export const waterOf = (row: DataRow, given: Given): WaterIons =>
  Object.fromEntries(
    given.flatMap(([ion, column]) => {
      const mass = massOf(row, column);
      return mass === undefined ? [] : [[ion, mass]];
    }),
  );
