import type { Variant } from '@brinewright/equipment';
import type { Message } from '@brinewright/words';
import type { Target } from '../recognition/recognition.ts';

/** Variants that still count, with their odds. */
export type Remaining = readonly { readonly variant: Variant; readonly p: number }[];

export type PartLine = {
  readonly part: string;
  readonly role: string;
  readonly count: number;
  readonly price?: number;
  /** Probability over the remaining variants that this is the right one. */
  readonly p: number;
  /** In stock, at hand, to order; undefined when no stock is written. */
  readonly have?: number;
};

/** A substitute, and the settings it changes. Change the time or the control, never both. */
export type Substitute = {
  readonly role: string;
  readonly instead: string;
  readonly use: string;
  readonly says: Message;
};

export type RepairPlan = {
  readonly targets: readonly Target[];
  /** Parts every remaining variant takes. */
  readonly parts: readonly PartLine[];
  /** Where variants differ: what each takes, and the tell that parts them. */
  readonly differs: readonly {
    readonly when: Readonly<Record<string, string>>;
    readonly parts: readonly PartLine[];
    readonly tell?: string;
  }[];
  readonly substitutes: readonly Substitute[];
  readonly refused: readonly Message[];
  /** Kit and tools in the hand against the valve. */
  readonly wrong: readonly { readonly id: string; readonly is: 'part' | 'tool'; readonly says: Message }[];
  readonly advice: readonly Message[];
};
