import type { Text } from '@brinewright/words';
import type { Fits } from './feature.ts';

/** What the plan keeps track of. A missing key means: does not matter. */
export type WorkState = {
  readonly water?: 'on' | 'off';
  readonly pressure?: 'full' | 'none';
  readonly power?: 'on' | 'off';
  readonly piston?: 'home' | 'removal';
  readonly temperature?: 'cool';
};

export const phases = ['record', 'isolate', 'open', 'work', 'restore', 'prove'] as const;
export type Phase = (typeof phases)[number];

/** One thing to do, as an order. What stands in `back` is its reverse in reassembly. */
export type Operation = {
  readonly id: string;
  readonly order: Text;
  readonly how: readonly Text[];
  readonly phase: Phase;
  /** Alternatives, each a set that must be done first; an empty list needs nothing. */
  readonly after: readonly (readonly string[])[];
  readonly needs: WorkState;
  readonly makes: WorkState;
  readonly tools: readonly string[];
  readonly side?: string;
  readonly minutes: { readonly hands: number; readonly waiting: number };
  /** Roles of parts that leave the valve with it. */
  readonly takesOut: readonly string[];
  /** Pieces counted out and in: the whole stack, or none. */
  readonly counts?: 'stack';
  readonly hazards: readonly string[];
  readonly lookOvers: readonly Text[];
  readonly consumables: readonly Text[];
  readonly back?: {
    readonly order: Text;
    readonly how: readonly Text[];
    readonly minutes: number;
    readonly lookOvers: readonly Text[];
    readonly hazards: readonly string[];
  };
  readonly fits: Fits;
  /** In every plan that shuts the water: recording, isolating, venting, verifying. */
  readonly always: boolean;
};
