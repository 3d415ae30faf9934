import { fromUnit } from '@brinewright/units';
import { describe, expect, it } from 'vitest';
import { waterColumn } from './water-columns.ts';

describe('a column header', () => {
  it.each([
    ['Ca', 'calcium'],
    ['Magnesium (mg/L)', 'magnesium'],
    ['HCO3', 'bicarbonate'],
    ['alkalinity_mg_L_CaCO3', 'alkalinity'],
    ['hardness_lab_mg_L_CaCO3', 'hardness'],
    ['SC_uS_cm', 'conductivity'],
    ['Specific conductance (uS/cm)', 'conductivity'],
    ['pH_field', 'ph'],
    ['NO3_NO2_N', 'nitrate'],
  ])('%s is %s', (header, field) => {
    expect(waterColumn(header)?.field).toBe(field);
  });

  it.each(['sample', 'T_C', 'TDS_mg_L', 'Cation_sum', 'agency_charge_balance', 'K factor'])(
    '%s is not read',
    (header) => {
      expect(waterColumn(header)).toBeUndefined();
    },
  );

  it('without a unit is mg/L and says so; nitrogen is turned into its ion', () => {
    const nitrate = waterColumn('NO3_N');
    expect(nitrate?.assumed).toBe('mg/L');
    expect(nitrate?.toSi(10)).toBeCloseTo(0.04427, 5);
  });

  it('takes the unit that stands in it', () => {
    const hardness = waterColumn('hardness (gpg)');
    expect(hardness?.assumed).toBeUndefined();
    expect(hardness?.toSi(18)).toBeCloseTo(fromUnit(18, 'gpg', 'hardness').si, 12);
  });

  it('may name the temperature of a conductivity', () => {
    expect(waterColumn('EC20_measured_uS_cm')?.temperature).toBeCloseTo(293.15, 10);
  });
});
