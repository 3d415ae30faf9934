import type { Quantity } from '@brinewright/units';
import type { Text } from '@brinewright/words';

export type QuantityRange = { readonly min: Quantity; readonly max: Quantity; readonly by?: Quantity };

/** What an injector does at one supply pressure, from a manual or a test. */
export type InjectorPoint = {
  readonly pressure: Quantity;
  readonly draw: Quantity;
  readonly slowRinse: Quantity;
};

export type Injector = {
  readonly id: string;
  readonly title: Text;
  readonly nozzle?: Quantity;
  readonly throat?: Quantity;
  readonly tanks?: QuantityRange;
  readonly at: readonly InjectorPoint[];
};

/** A drain line or refill flow control. */
export type Control = { readonly id: string; readonly title: Text; readonly rate: Quantity };

export const steps = ['backwash', 'draw', 'slow-rinse', 'fast-rinse', 'refill'] as const;
export type Step = (typeof steps)[number];

/** What a controller holds as one time: a step, or 'brine' for draw and slow rinse together. */
export type TimedStep = Step | 'brine';

export type StartMode = 'clock' | 'metered';

export type Controller = {
  readonly id: string;
  readonly title: Text;
  readonly holds: readonly TimedStep[];
  readonly times: QuantityRange;
  readonly starts: readonly StartMode[];
  /** Volume between regenerations that can be set, where it meters. */
  readonly volumes?: QuantityRange;
  /** Days between regenerations that can be set. */
  readonly days?: { readonly min: number; readonly max: number; readonly by: number };
};

export type Meter = {
  readonly id: string;
  readonly title: Text;
  readonly perPulse: Quantity;
  readonly flow: QuantityRange;
};

/** What lies in a tank: an exchanger or a filter medium. Every value carries how it is known. */
export type Medium = {
  readonly id: string;
  readonly title: Text;
  readonly is: 'exchanger' | 'filter';
  readonly diameter: Quantity;
  readonly density: Quantity;
  readonly voidage: number;
  readonly sphericity: number;
  /** Total capacity of new exchanger. */
  readonly capacity?: Quantity;
  /** Upflow that is usual for it, where lift is not computed. */
  readonly backwash?: QuantityRange;
  /** Expansion aimed at and at least needed, as shares of the settled depth. */
  readonly expansion: { readonly aim: number; readonly least: number };
  readonly known: 'seen' | 'second-hand' | 'memory' | 'common-practice' | 'ours';
};
