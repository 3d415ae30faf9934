import { concentrationOf, fromNitrogen, type IonName } from '@brinewright/physics';
import { findUnit, type UnitRow } from '@brinewright/units';

type Figure = 'alkalinity' | 'hardness' | 'ph' | 'conductivity';

/** A column that an analysis is read from. */
export type WaterColumn = {
  readonly header: string;
  readonly field: IonName | Figure;
  /** The figure in the column as the engine's own: kg/m3 of the ion, eq/m3, S/m. */
  readonly toSi: (value: number) => number;
  /** No unit stands in the header. */
  readonly assumed?: string;
  /** Kelvin that a conductivity refers to, where the header says so. */
  readonly temperature?: number;
};

const names: Readonly<Record<string, IonName | Figure>> = {
  ca: 'calcium',
  calcium: 'calcium',
  mg: 'magnesium',
  magnesium: 'magnesium',
  na: 'sodium',
  sodium: 'sodium',
  k: 'potassium',
  potassium: 'potassium',
  nh4: 'ammonium',
  nh3: 'ammonium',
  ammonium: 'ammonium',
  ammonia: 'ammonium',
  fe: 'iron',
  iron: 'iron',
  mn: 'manganese',
  manganese: 'manganese',
  sr: 'strontium',
  strontium: 'strontium',
  ba: 'barium',
  barium: 'barium',
  hco3: 'bicarbonate',
  bicarbonate: 'bicarbonate',
  co3: 'carbonate',
  carbonate: 'carbonate',
  so4: 'sulfate',
  sulfate: 'sulfate',
  sulphate: 'sulfate',
  cl: 'chloride',
  chloride: 'chloride',
  no3: 'nitrate',
  no2no3: 'nitrate',
  nitrate: 'nitrate',
  f: 'fluoride',
  fluoride: 'fluoride',
  alk: 'alkalinity',
  alkalinity: 'alkalinity',
  hardness: 'hardness',
  th: 'hardness',
  ph: 'ph',
  sc: 'conductivity',
  ec: 'conductivity',
  cond: 'conductivity',
  conductivity: 'conductivity',
  conductance: 'conductivity',
};

/** Words in a header that say how or where, not what. */
const besides = new Set(['lab', 'field', 'total', 'measured', 'dissolved', 'specific', 'as', 'no2', 'n']);

const celsiusZero = 273.15;

/** What a header stands for, such as `Ca`, `NH3_N`, `alkalinity_mg_L_CaCO3`, `EC20_uS_cm`; nothing for any other column. */
export const waterColumn = (header: string, unitWithout = 'mg/L'): WaterColumn | undefined => {
  const tokens = header.split(/[\s_()[\],-]+/u).filter((token) => token !== '');
  const [, letters = '', degrees] = /^(ec|sc|cond)(\d\d)$/iu.exec(tokens[0] ?? '') ?? [];
  const head = tokens.findIndex((token) => Object.hasOwn(names, token.toLowerCase()));
  const field = letters === '' ? names[(tokens[head] ?? '').toLowerCase()] : 'conductivity';
  if (field === undefined || tokens.slice(0, Math.max(0, head)).some((token) => !isBeside(token)))
    return undefined;
  const rest = tokens.slice(letters === '' ? head + 1 : 1);
  const unit = unitOf(field, rest);
  if (unit === undefined && rest.some((token) => !isBeside(token))) return undefined;
  const nitrogen = rest.some((token) => token.toLowerCase() === 'n');
  const usual = usualUnit(field, unitWithout);
  const toSi = scaled(field, unit ?? usual, nitrogen);
  if (toSi === undefined) return undefined;
  return {
    header,
    field,
    toSi,
    ...(unit === undefined && field !== 'ph' ? { assumed: usual } : {}),
    ...(degrees === undefined ? {} : { temperature: celsiusZero + Number(degrees) }),
  };
};

const isBeside = (token: string): boolean => besides.has(token.toLowerCase());

/** The unit in the last words of a header, written `mg_L_CaCO3`, `(mg/L)` or `uS cm`. */
const unitOf = (field: WaterColumn['field'], rest: readonly string[]): string | undefined => {
  const words = rest.filter((token) => !isBeside(token));
  for (let from = 0; from < words.length; from += 1) {
    const [first = '', second, ...more] = words.slice(from);
    const text =
      first.includes('/') || second === undefined
        ? words.slice(from).join(' ')
        : [`${first}/${second}`, ...more].join(' ');
    if (scaled(field, text, false) !== undefined) return text;
  }
  return undefined;
};

const usualUnit = (field: WaterColumn['field'], unitWithout: string): string => {
  switch (field) {
    case 'ph':
      return '';
    case 'conductivity':
      return 'uS/cm';
    case 'alkalinity':
    case 'hardness':
      return unitWithout === 'mg/L' ? 'mg/L CaCO3' : unitWithout;
    default:
      return unitWithout;
  }
};

const scaled = (
  field: WaterColumn['field'],
  unit: string,
  nitrogen: boolean,
): WaterColumn['toSi'] | undefined => {
  switch (field) {
    case 'ph':
      return unit === '' ? (value) => value : undefined;
    case 'conductivity':
      return by(findUnit('conductivity', unit));
    case 'hardness':
      return by(findUnit('hardness', unit));
    case 'alkalinity':
      return by(findUnit('equivalent-concentration', unit));
    default:
      return ionScale(field, unit, nitrogen);
  }
};

const by = (row: UnitRow | undefined): WaterColumn['toSi'] | undefined =>
  row === undefined ? undefined : (value) => value * row.factor + row.offset;

const ionScale = (ion: IonName, unit: string, nitrogen: boolean): WaterColumn['toSi'] | undefined => {
  const mass = by(findUnit('concentration', unit));
  if (mass !== undefined) {
    if (!nitrogen || (ion !== 'nitrate' && ion !== 'ammonium')) return mass;
    return (value) => fromNitrogen(ion, mass(value));
  }
  const charge = by(findUnit('equivalent-concentration', unit));
  return charge === undefined ? undefined : (value) => concentrationOf(ion, charge(value));
};
