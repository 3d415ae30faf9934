import type { TakenReading } from '../../../engine/views/reading-ask.ts';

/** A reading that is being changed; its entry is corrected, never written over. */
export type Editing = { readonly entry: string; readonly reading: TakenReading };

export type EditingProps = {
  readonly editing: Editing | undefined;
  readonly onEdit: (editing: Editing | undefined) => void;
};
