import type { Fits, Operation, WorkState } from '@brinewright/equipment';
import type { Message, Text } from '@brinewright/words';

/** One line of the plan. Anything an entry points at is named by id and instance, never by place. */
export type PlanStep = OperationStep | GateStep | BackStep | SweepStep;

export type OperationStep = {
  readonly kind: 'operation';
  /** The operation's id; the second time round `piston-out#2`. */
  readonly id: string;
  readonly operation: Operation;
  readonly done: boolean;
  readonly tools: readonly string[];
  /** Hands and waiting. */
  readonly minutes: number;
  /** Present where some of the remaining variants have no such operation. */
  readonly when?: Fits;
  /** Pieces to count out, in the order they come. */
  readonly count?: StackCount;
};

export type GateStep = {
  readonly kind: 'gate';
  readonly id: 'gate';
  readonly asks: readonly GateAsk[];
  readonly passed: boolean;
};

/** The reverse of an operation, written down as done under this id: `piston-out.back`. */
export type BackStep = {
  readonly kind: 'back';
  readonly id: string;
  readonly of: Operation;
  readonly done: boolean;
  readonly minutes: number;
  readonly when?: Fits;
  /** What goes back in, by role: a new part, or the one that came out. */
  readonly puts: readonly { readonly role: string; readonly as: 'new' | 'old' }[];
  readonly lookOvers: readonly Text[];
  readonly count?: StackCount;
};

/** Nothing left on the bench; written down as done under `sweep`. */
export type SweepStep = { readonly kind: 'sweep'; readonly id: 'sweep'; readonly done: boolean };

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
  /** Of the steps still to do, for the remaining variant that takes longest. */
  readonly minutes: number;
  /** Of the steps still to do with the water off. */
  readonly outageMinutes: number;
  /** What the building gets meanwhile: raw water by the bypass, none, or the one or the other. */
  readonly building: 'raw' | 'raw-or-none' | 'none';
  /** Tools and sides changed over the steps still to do, and about what that adds. */
  readonly changes: { readonly tools: number; readonly sides: number; readonly minutes: number };
  /** Stopped at an operation: a miscount, or the gate not passed. */
  readonly stopped?: { readonly at: string; readonly why: Message; readonly mend: Message };
  readonly hazards: readonly string[];
  readonly state: WorkState;
  readonly leaveSafe: LeaveSafe;
  /** For a make nobody has described: the safe way in and out, should it have to be opened. */
  readonly ifOpened?: Pick<WorkPlan, 'steps' | 'minutes' | 'outageMinutes' | 'building' | 'hazards'>;
  readonly says: readonly Message[];
};
