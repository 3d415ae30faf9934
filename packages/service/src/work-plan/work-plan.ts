import type { Operation, WorkState } from '@brinewright/equipment';
import type { Message, Text } from '@brinewright/words';

/** One line of the plan. Anything an entry points at is named by id and instance, never by place. */
export type PlanStep =
  | {
      readonly kind: 'operation';
      readonly id: string;
      readonly operation: Operation;
      readonly done: boolean;
      readonly tools: readonly string[];
      readonly minutes: number;
      /** Pieces to count out, in the order they come. */
      readonly count?: StackCount;
    }
  | {
      readonly kind: 'gate';
      readonly id: 'gate';
      readonly asks: readonly GateAsk[];
      readonly passed: boolean;
    }
  | {
      readonly kind: 'back';
      readonly id: string;
      readonly of: Operation;
      readonly done: boolean;
      readonly minutes: number;
      readonly lookOvers: readonly Text[];
      readonly count?: StackCount;
    }
  | { readonly kind: 'sweep'; readonly id: 'sweep'; readonly done: boolean };

/** The ordered list of pieces; counts by what they are. */
export type StackCount = {
  readonly pieces: readonly { readonly is: string; readonly part?: string }[];
  readonly totals: Readonly<Record<string, number>>;
  /** What was counted, when it was, and whether it agrees. */
  readonly counted?: Readonly<Record<string, number>>;
  readonly agrees?: boolean;
};

export type GateAsk = {
  readonly id: 'variant' | 'kit' | 'tools' | 'photographed' | 'price' | 'outage' | 'way-back';
  readonly met: boolean;
  readonly says: Message;
};

/** Ready at any moment: put back as it was, in service or bypass, and what that costs. */
export type LeaveSafe = {
  readonly into: 'service' | 'bypass';
  readonly steps: readonly PlanStep[];
  readonly minutes: number;
  readonly settings: readonly Message[];
  readonly card: readonly Message[];
};

export type WorkPlan = {
  readonly steps: readonly PlanStep[];
  readonly minutes: number;
  readonly outageMinutes: number;
  /** Stopped at an operation: a miscount, or the gate not passed. */
  readonly stopped?: { readonly at: string; readonly why: Message; readonly mend: Message };
  readonly hazards: readonly string[];
  readonly state: WorkState;
  readonly leaveSafe: LeaveSafe;
  readonly says: readonly Message[];
};
