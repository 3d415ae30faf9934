import type { Message } from '@brinewright/words';
import type { FigureId } from '../derivation/figure.ts';

export type ProofCheck = {
  readonly id: string;
  readonly title: Message;
  readonly when: 'now' | 'tomorrow';
  readonly limits: { readonly lower?: FigureId; readonly upper?: FigureId };
  readonly predicted?: FigureId;
  readonly reading?: FigureId;
  readonly verdict: 'pass' | 'fail' | 'not-decided' | 'open';
  /** Probability that the true value is within the limits. */
  readonly p?: number;
  /** What would decide it. */
  readonly decide?: Message;
  readonly standsOn: 'measured' | 'common-practice' | 'definition' | 'seen';
};

export type Proof = { readonly checks: readonly ProofCheck[]; readonly says: Message };
