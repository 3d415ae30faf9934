import type { QuantityKind } from './kinds.ts';
import {
  brineStrengthRows,
  capacityRows,
  concentrationRows,
  densityRows,
  equivalentRows,
  exchangeRows,
  hardnessPerMetalRows,
  hardnessRows,
  saltDoseRows,
  saltEfficiencyRows,
  saltPerExchangeRows,
  waterPerExchangeRows,
} from './rows-exchange.ts';
import {
  bedVolumeRows,
  dynamicViscosityRows,
  flowRows,
  kinematicViscosityRows,
  pressureGradientRows,
  pressureRows,
  specificFlowRows,
  specificVolumeRows,
  speedRows,
  superficialVelocityRows,
} from './rows-flow.ts';
import {
  areaRows,
  lengthRows,
  massRows,
  pulseRows,
  temperatureRows,
  timeRows,
  volumeRows,
} from './rows-geometry.ts';
import { conductivityRows, plainRows, priceRows, voltageRows } from './rows-other.ts';
import type { UnitRow } from './unit-row.ts';

/** The one table of units: every conversion of the project stands here and nowhere else. */
export const unitTable: readonly UnitRow[] = [
  ...lengthRows,
  ...areaRows,
  ...volumeRows,
  ...pulseRows,
  ...massRows,
  ...timeRows,
  ...temperatureRows,
  ...flowRows,
  ...superficialVelocityRows,
  ...specificFlowRows,
  ...bedVolumeRows,
  ...speedRows,
  ...pressureRows,
  ...pressureGradientRows,
  ...specificVolumeRows,
  ...dynamicViscosityRows,
  ...kinematicViscosityRows,
  ...hardnessRows,
  ...equivalentRows,
  ...concentrationRows,
  ...saltDoseRows,
  ...densityRows,
  ...capacityRows,
  ...exchangeRows,
  ...saltEfficiencyRows,
  ...hardnessPerMetalRows,
  ...saltPerExchangeRows,
  ...waterPerExchangeRows,
  ...brineStrengthRows,
  ...conductivityRows,
  ...plainRows,
  ...voltageRows,
  ...priceRows,
];

export const unitsByKind: ReadonlyMap<QuantityKind, readonly UnitRow[]> = Map.groupBy(
  unitTable,
  (row) => row.kind,
);

/** The units of one kind, the most usual first. */
export const unitsOf = (kind: QuantityKind): readonly UnitRow[] => unitsByKind.get(kind) ?? [];
