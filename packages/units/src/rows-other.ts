import { gallon } from './constants.ts';
import type { QuantityKind } from './kinds.ts';
import { massRows, timeRows, volumeRows } from './rows-geometry.ts';
import { both, rowsOf, type UnitRow, us } from './unit-row.ts';

export const conductivityRows = rowsOf('conductivity', [
  both('uS/cm', 1e-4, 'uS/cm', ['umho/cm', 'umhos/cm', 'micromho/cm', 'micromhos/cm', 'uS', 'mcS/cm']),
  both('mS/cm', 1e-1, 'mS/cm', ['mmho/cm', 'mmhos/cm']),
  both('dS/m', 1e-1, 'dS/m'),
  both('mS/m', 1e-3, 'mS/m'),
  both('S/m', 1, 'S/m'),
]);

const plain = both('', 1);
const percent = both('%', 1e-2, '%', ['percent', 'pct']);

export const plainRows = [
  ...rowsOf('ratio', [plain, percent]),
  ...rowsOf('share', [percent, both('of 1', 1)]),
  ...rowsOf('count', [plain]),
  ...rowsOf('ph', [both('', 1, '[pH]', ['pH'], { source: 'convention' })]),
  ...rowsOf('money', [plain]),
];

export const voltageRows = rowsOf('voltage', [
  both('V', 1, 'V', ['volt', 'volts', 'VAC', 'VDC', 'V AC', 'V DC', 'voltios']),
  both('mV', 1e-3, 'mV', ['millivolt', 'millivolts']),
]);

/** A price is money by the unit of what is bought. Money itself has no unit here: the site names its currency. */
const pricesFor = (kind: QuantityKind, bought: readonly UnitRow[]): readonly UnitRow[] =>
  bought.map(({ ucum: _, ...row }) => ({
    ...row,
    kind,
    symbol: `per ${row.symbol}`,
    shown: `/${row.shown}`,
    aliases: row.aliases.map((alias) => `per ${alias}`),
    factor: 1 / row.factor,
  }));

export const priceRows = [
  ...pricesFor('price-mass', massRows),
  ...pricesFor('price-volume', volumeRows),
  ...rowsOf('price-volume', [
    us('per 1000 gal', 1 / (1000 * gallon), '', ['per kgal', 'per 1,000 gal'], { shown: '/1,000 gal' }),
  ]),
  ...pricesFor('price-time', timeRows),
];
