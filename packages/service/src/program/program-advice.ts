import type { TimedStep } from '@brinewright/equipment';
import type { Message } from '@brinewright/words';
import type { FigureId } from '../derivation/figure.ts';

/** One rounding neighbour of a time, with what it does. */
export type Neighbour = {
  /** Seconds. */
  readonly time: number;
  readonly does: readonly {
    readonly what: 'salt' | 'rinse' | 'capacity' | 'water';
    readonly figure: FigureId;
  }[];
};

export type TimedSetting = {
  readonly step: TimedStep;
  readonly exact: FigureId;
  readonly below?: Neighbour;
  readonly above?: Neighbour;
  /** What is set: a time the controller can hold. */
  readonly set: FigureId;
  readonly found?: FigureId;
  readonly changed: boolean;
};

export type BackwashWindow =
  | {
      readonly state: 'open';
      readonly floor: FigureId;
      readonly ceiling: FigureId;
      readonly aim: FigureId;
      readonly fitted?: FigureId;
      readonly fits: 'inside' | 'below' | 'above' | 'unknown';
      /** Outside by more than the standard uncertainty of the fitted rate; less is no reason to change a control. */
      readonly clearly: boolean;
      readonly choice?: string;
    }
  | {
      readonly state: 'empty';
      readonly why: Message;
      readonly choices: readonly Message[];
      readonly floor: FigureId;
      readonly ceiling: FigureId;
    };

/** What a found setting costs against the one advised, a year. */
export type YearlyDifference = {
  readonly what: 'salt' | 'water' | 'money';
  readonly found: FigureId;
  readonly set: FigureId;
  readonly difference: FigureId;
};

export type ProgramAdvice = {
  readonly settings: readonly TimedSetting[];
  readonly volume?: { readonly set: FigureId; readonly found?: FigureId; readonly changed: boolean };
  /** What is keyed in: a clock's interval, or a meter's calendar override; and what the volume is expected to last. */
  readonly days?: {
    readonly set: FigureId;
    readonly limit: FigureId;
    readonly expected?: FigureId;
    readonly found?: FigureId;
    readonly changed: boolean;
  };
  readonly window?: BackwashWindow;
  readonly doses: readonly {
    readonly dose: FigureId;
    readonly capacity: FigureId;
    readonly volume: FigureId;
    readonly salt: FigureId;
    readonly chosen: boolean;
  }[];
  readonly year: readonly YearlyDifference[];
  readonly once: readonly Message[];
  readonly notes: readonly Message[];
};
