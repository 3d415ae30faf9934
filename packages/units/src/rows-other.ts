import { gallon } from './constants.ts';
import { massRows, timeRows, volumeRows } from './rows-geometry.ts';
import type { QuantityKind } from './kinds.ts';
import { rowsOf, type UnitRow } from './unit-row.ts';

export const conductivityRows = rowsOf('conductivity', [
  { symbol: 'uS/cm', aliases: ['umho/cm', 'umhos/cm', 'micromho/cm', 'micromhos/cm', 'uS', 'mcS/cm'], factor: 1e-4, system: 'both', ucum: 'uS/cm', source: 'si' },
  { symbol: 'mS/cm', aliases: ['mmho/cm', 'mmhos/cm'], factor: 1e-1, system: 'both', ucum: 'mS/cm', source: 'si' },
  { symbol: 'dS/m', factor: 1e-1, system: 'both', ucum: 'dS/m', source: 'si' },
  { symbol: 'mS/m', factor: 1e-3, system: 'both', ucum: 'mS/m', source: 'si' },
  { symbol: 'S/m', factor: 1, system: 'both', ucum: 'S/m', source: 'si' },
]);

const plain = { symbol: '', factor: 1, system: 'both', source: 'si' } as const;
const percent = { symbol: '%', aliases: ['percent', 'pct'], factor: 1e-2, system: 'both', ucum: '%', source: 'si' } as const;

export const plainRows = [
  ...rowsOf('ratio', [plain, percent]),
  ...rowsOf('share', [percent, { symbol: 'of 1', factor: 1, system: 'both', source: 'si' }]),
  ...rowsOf('count', [plain]),
  ...rowsOf('ph', [{ ...plain, aliases: ['pH'], ucum: '[pH]', source: 'convention' }]),
  ...rowsOf('money', [{ ...plain, source: 'convention' }]),
];

export const voltageRows = rowsOf('voltage', [
  { symbol: 'V', aliases: ['volt', 'volts', 'VAC', 'VDC', 'V AC', 'V DC', 'voltios'], factor: 1, system: 'both', ucum: 'V', source: 'si' },
  { symbol: 'mV', aliases: ['millivolt', 'millivolts'], factor: 1e-3, system: 'both', ucum: 'mV', source: 'si' },
]);

/** A price is money by the unit of what is bought. Money itself has no unit here: the site names its currency. */
const pricesFor = (kind: QuantityKind, bought: readonly UnitRow[]): readonly UnitRow[] =>
  bought.flatMap((row) =>
    rowsOf(kind, [
      {
        symbol: `per ${row.symbol}`,
        shown: `/${row.shown}`,
        aliases: row.aliases.map((alias) => `per ${alias}`),
        factor: 1 / row.factor,
        system: row.system,
        source: row.source,
        exact: row.exact,
      },
    ]),
  );

export const priceRows = [
  ...pricesFor('price-mass', massRows),
  ...pricesFor('price-volume', volumeRows),
  ...rowsOf('price-volume', [
    { symbol: 'per 1000 gal', shown: '/1,000 gal', aliases: ['per kgal', 'per 1,000 gal'], factor: 1 / (1000 * gallon), system: 'us' },
  ]),
  ...pricesFor('price-time', timeRows),
];
