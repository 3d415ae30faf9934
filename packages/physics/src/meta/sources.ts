import type { SourceStatus } from './equation.ts';

/** Where an equation or a value comes from. Citations stay in the language of their source. */
export type Source = { readonly cite: string; readonly status: SourceStatus };

export const sources = {
  'common-practice': { cite: 'Common practice of the trade, no source', status: 'common-practice' },
  ours: { cite: 'Our own decision', status: 'ours' },
  definition: { cite: 'By definition', status: 'seen' },
  'mass-balance': { cite: 'Conservation of mass and charge', status: 'seen' },
  geometry: { cite: 'Geometry', status: 'seen' },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;
