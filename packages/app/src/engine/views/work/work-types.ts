import type { StackLayers } from '@brinewright/papers';
import type { Pictures } from '../figure-view.ts';

/** A caution as it stands beside a step. */
export type CautionView = {
  readonly id: string;
  /** 'Warning. Pressure in the unit'. */
  readonly signal: string;
  readonly does: string;
  readonly act: readonly string[];
  /** What is seen when it is done; without one there is nothing to acknowledge. */
  readonly fact?: string;
  /** Acknowledged, and at what time where that is known. */
  readonly seen?: { readonly at?: string };
  /** Its fact is to be seen with this step: until then nothing after it is marked done. */
  readonly isDue: boolean;
};

export type CountView = {
  /** As an entry calls it: seal, spacer. */
  readonly is: string;
  readonly name: string;
  /** One of them: 'seal'. */
  readonly one: string;
  readonly of: number;
  readonly counted?: number;
};

/** Why a step cannot be marked done now, and the step that opens the way. */
export type BlockedView = { readonly why: string; readonly at: string };

export type StackView = {
  readonly way: 'out' | 'in';
  /** Kinds in the order in which the pieces move. */
  readonly order: readonly string[];
  readonly narrow: StackLayers;
  readonly wide: StackLayers;
};

export type StepView = {
  readonly id: string;
  readonly kind: 'operation' | 'back' | 'sweep';
  /** Of all operations, from one. */
  readonly number: number;
  readonly order: string;
  readonly done: boolean;
  readonly doneAt?: string;
  /** The entry that says it is done; it can be taken back. */
  readonly entry?: string;
  /** Under what it is written down. */
  readonly writes: { readonly operation: string; readonly instance?: number };
  readonly tools: string;
  readonly side: string;
  readonly minutes: string;
  readonly waiting?: { readonly minutes: number; readonly text: string };
  readonly onlyWith?: string;
  readonly how: readonly string[];
  readonly lookOvers: readonly string[];
  readonly consumables: readonly string[];
  readonly puts: readonly string[];
  readonly cautions: readonly CautionView[];
  readonly counts: readonly CountView[];
  readonly stack?: StackView;
  readonly picture?: Pictures;
  readonly blocked?: BlockedView;
  readonly aloud: string;
};

export type GateAskView = {
  readonly id: 'variant' | 'kit' | 'tools' | 'photographed' | 'price' | 'outage' | 'way-back';
  readonly met: boolean;
  readonly says: string;
};

export type GateView = {
  readonly passed: boolean;
  readonly asks: readonly GateAskView[];
  /** Step before which it stands. */
  readonly before: string | undefined;
  readonly kit: readonly InHandView[];
  readonly tools: readonly InHandView[];
  readonly wayBack: string;
  readonly price?: string;
};

/** A part or a tool to be held against the valve. */
export type InHandView = {
  readonly id: string;
  readonly name: string;
  readonly inHand: boolean;
  readonly wrong?: string;
};

export type ApartView = {
  readonly states: readonly {
    readonly id: 'water' | 'pressure' | 'power' | 'piston';
    readonly name: string;
    readonly value: string;
    readonly says: string;
    readonly options: readonly { readonly value: string; readonly says: string }[];
  }[];
  readonly off: readonly string[];
};

export type FoundView = {
  readonly note: string;
  readonly tells: readonly Question[];
  readonly looks: readonly Question[];
};

export type Question = {
  readonly id: string;
  readonly ask: string;
  readonly answers: readonly { readonly id: string; readonly title: string }[];
};

export type Remark = { readonly says: string; readonly mend?: string };

export type WorkView = {
  readonly state: 'blocked' | 'nothing' | 'plan';
  /** What is missing before more can be said. */
  readonly gaps: readonly string[];
  readonly steps: readonly StepView[];
  readonly gate?: GateView;
  /** The step in hand, or the gate; none when all is done. */
  readonly now?: string;
  readonly done: number;
  readonly minutesLeft: string;
  readonly outage: string;
  readonly building: string;
  readonly stopped?: { readonly at: string; readonly why: string; readonly mend: string };
  readonly says: readonly string[];
  readonly remarks: readonly Remark[];
  readonly apart: ApartView;
  readonly found: FoundView;
  /** For a make nobody has described: the way in, should it have to be opened. */
  readonly wayIn?: { readonly minutes: string; readonly outage: string; readonly orders: readonly string[] };
  readonly language: 'en' | 'es';
};
