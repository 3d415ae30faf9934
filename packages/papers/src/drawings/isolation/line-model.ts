import type { PatternName } from '../../markup/patterns.ts';

/** How the unit stands towards the line: shut or open, under pressure or not, and what leads round it. */
export type Isolation = {
  readonly water: 'on' | 'off';
  readonly pressure: 'full' | 'none';
  /** Dashed where nobody has written whether there is one. */
  readonly bypass: 'there' | 'not-known' | 'none';
};

export type Water = Extract<PatternName, 'raw' | 'treated'> | undefined;

export const line = 56;
export const half = 14;
export const valveAt = 112;
export const box = { top: 158, bottom: 200 };

export type Frame = {
  readonly inlet: number;
  readonly outlet: number;
  readonly middle: number;
  readonly end: number;
};

export const frameOf = (width: number): Frame => {
  const [inlet, outlet] = [width * 0.24, width * 0.64];
  return { inlet, outlet, middle: (inlet + outlet) / 2, end: width };
};

/** What stands in the line behind the unit. */
export const behind = ({ water, bypass }: Isolation): Water => {
  if (water === 'on') return 'treated';
  return bypass === 'none' ? undefined : 'raw';
};
