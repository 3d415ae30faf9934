/** How people write the units that compounds are made of. Single words only; the reader drops spaces. */
export const footCubed = ['ft3', 'cu ft', 'cubic foot', 'cubic feet', 'cf', 'pie3', 'pies3'] as const;
export const footSquared = ['ft2', 'sq ft', 'square foot', 'square feet', 'sf', 'pie2', 'pies2'] as const;
export const usGallon = [
  'gal',
  'US gal',
  'gal US',
  'gals',
  'gallon',
  'gallons',
  'US gallon',
  'US gallons',
  'galón',
  'galones',
] as const;
export const imperial = ['imp gal', 'gal imp', 'UK gal', 'imperial gallon', 'imperial gallons'] as const;
export const litreWords = ['L', 'litre', 'litres', 'liter', 'liters', 'litro', 'litros', 'dm3'] as const;
export const minuteWords = ['min', 'mins', 'minute', 'minutes', 'minuto', 'minutos'] as const;
export const hourWords = ['h', 'hr', 'hrs', 'hour', 'hours', 'hora', 'horas'] as const;
export const dayWords = ['d', 'day', 'days', 'día', 'días'] as const;
export const poundWords = ['lb', 'lbs', 'lbm', 'pound', 'pounds', 'libra', 'libras'] as const;
export const grainWords = ['gr', 'grain', 'grains', 'grano', 'granos'] as const;
export const kilograinWords = [
  'kgr',
  'kilograin',
  'kilograins',
  'kgrain',
  'kgrains',
  '1000 gr',
  '1000 grains',
] as const;
export const flowUs = [
  'gpm',
  'US gpm',
  'gal/min',
  'gallons/minute',
  'gallons/min',
  'galones/minuto',
] as const;
/** 'mg/L as CaCO3', 'mg/L (CaCO3)', 'mg CaCO3/L' … */
export const asCarbonate = (top: string, bottom?: string): readonly string[] => {
  const unit = bottom === undefined ? top : `${top}/${bottom}`;
  const inside = bottom === undefined ? [] : [`${top} CaCO3/${bottom}`];
  return [`${unit} CaCO3`, `${unit} as CaCO3`, `${unit} (CaCO3)`, `${unit} (as CaCO3)`, ...inside];
};
