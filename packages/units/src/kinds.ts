/**
 * What a quantity measures. The kind fixes its SI unit and which units may be written for it.
 *
 * Amounts of exchange are in equivalents (one mole of charge), so that hardness, capacity and salt
 * add up without molar masses in between. Temperatures are kelvin inside; differences are not used.
 */
export const kinds = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  mass: 'kg',
  time: 's',
  flow: 'm3/s',
  /** Flow per cross-section of the tank: the rate that lifts a bed. */
  'superficial-velocity': 'm/s',
  /** Flow per volume of bed, bed volumes per second. */
  'specific-flow': '1/s',
  /** Volume per volume of bed. */
  'bed-volumes': '1',
  temperature: 'K',
  pressure: 'Pa',
  'pressure-gradient': 'Pa/m',
  density: 'kg/m3',
  'specific-volume': 'm3/kg',
  'dynamic-viscosity': 'Pa.s',
  'kinematic-viscosity': 'm2/s',
  /** Calcium and magnesium, equivalents per volume of water. */
  hardness: 'eq/m3',
  /** An ion's charge per volume of water. */
  'equivalent-concentration': 'eq/m3',
  /** Mass of a dissolved substance per volume of water, as the substance itself. */
  concentration: 'kg/m3',
  /** Salt per volume of resin. */
  'salt-dose': 'kg/m3',
  /** Exchange capacity per volume of resin. */
  capacity: 'eq/m3',
  /** Exchange capacity of a whole bed. */
  exchange: 'eq',
  /** Hardness removed per mass of salt. */
  'salt-efficiency': 'eq/kg',
  /** Salt spent per hardness removed: the same, the other way up. */
  'salt-per-exchange': 'kg/eq',
  /** Hardness that a mass of dissolved metal is counted as. */
  'hardness-per-metal': 'eq/kg',
  /** Regeneration water per hardness removed. */
  'water-per-exchange': 'm3/eq',
  /** Mass of salt in a mass of brine. */
  'mass-fraction': '1',
  /** Share of saturation at 60 °F, 0 to 1 (100 salometer degrees). */
  salometer: '1',
  conductivity: 'S/m',
  /** A plain number without a unit: a coefficient, a quotient. */
  ratio: '1',
  /** A part of a whole or a lift of it; written and shown in percent. */
  share: '1',
  count: '1',
  ph: '1',
  /** Volume of water a meter counts for one pulse. */
  'volume-per-pulse': 'm3',
  'price-mass': 'money/kg',
  'price-volume': 'money/m3',
  'price-time': 'money/s',
  money: 'money',
  voltage: 'V',
  speed: 'm/s',
} as const satisfies Record<string, string>;

export type QuantityKind = keyof typeof kinds;

export const isQuantityKind = (text: string): text is QuantityKind => Object.hasOwn(kinds, text);
