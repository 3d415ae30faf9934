import type { Fits } from './feature.ts';

/** The stops of a piston valve, in the glossary's words. */
export const stops = ['service', 'backwash', 'brine', 'fast-rinse', 'refill'] as const;
export type Stop = (typeof stops)[number];

/** Ports of the trade: drive side, inlet, tank top, drain, riser, outlet. A definition may add its own. */
export type Port = string;

/** Which ports are joined at each stop, and for which variants. Each join is a group of ports. */
export type JoinRow = {
  readonly fits: Fits;
  readonly joins: Readonly<Record<Stop, readonly (readonly Port[])[]>>;
  /** Settles a choice where a port stands twice: seal numbers open at a stop. */
  readonly open: Readonly<Partial<Record<Stop, readonly number[]>>>;
};

/** Lengths in metres, as measured; absent when the manual gives none. */
export type BoreLengths = {
  readonly sealsAt: readonly number[];
  readonly chambers: readonly { readonly port: Port; readonly from: number; readonly to: number }[];
  readonly stops: Readonly<Record<Stop, number>>;
  readonly pistons: readonly {
    readonly fits: Fits;
    readonly sleeve: number;
    readonly grooves: readonly (readonly [number, number])[];
    readonly ends: readonly [number, number];
  }[];
};

export type BoreDefinition = {
  readonly id: string;
  /** In order from the drive; a seal stands between neighbours. A port named twice is joined by the casting. */
  readonly ports: readonly Port[];
  readonly rows: readonly JoinRow[];
  readonly brineValve?: { readonly opensIn: readonly Stop[] };
  readonly measured?: BoreLengths;
};

/** One piece of the stack, in order from the mouth of the bore (the side it is drawn from). */
export type StackPiece = { readonly is: 'seal' | 'spacer' | 'ring' | 'plug'; readonly part?: string };
