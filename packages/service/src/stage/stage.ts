import type { Issue, Message, Path } from '@brinewright/words';
import type { Figures } from '../derivation/figure.ts';

export const stageNames = [
  'situation',
  'recognition',
  'diagnosis',
  'repair',
  'plan',
  'program',
  'proof',
] as const;
export type StageName = (typeof stageNames)[number];

/** What is missing, where it would be written, and which stages it would settle. */
export type Gap = {
  readonly needs: Path;
  readonly message: Message;
  readonly settles: readonly StageName[];
};

/** A stage is done as far as it can be said, or blocked with what would open it. It never makes a value up. */
export type Stage<T> =
  | {
      readonly state: 'done';
      readonly value: T;
      readonly figures: Figures;
      readonly gaps: readonly Gap[];
      readonly issues: readonly Issue[];
    }
  | {
      readonly state: 'blocked';
      readonly figures: Figures;
      readonly gaps: readonly Gap[];
      readonly issues: readonly Issue[];
    };

export const done = <T>(
  value: T,
  more: { figures?: Figures; gaps?: readonly Gap[]; issues?: readonly Issue[] } = {},
): Stage<T> => ({
  state: 'done',
  value,
  figures: more.figures ?? {},
  gaps: more.gaps ?? [],
  issues: more.issues ?? [],
});

export const blocked = (
  gaps: readonly Gap[],
  more: { figures?: Figures; issues?: readonly Issue[] } = {},
): Stage<never> => ({ state: 'blocked', figures: more.figures ?? {}, gaps, issues: more.issues ?? [] });
