import type { Text } from '@brinewright/words';
import type { Fits } from './feature.ts';

/** A thing that can be ordered. `is` is its role: piston, seal, spacer, sleeve, injector, kit … */
export type Part = {
  readonly id: string;
  readonly is: string;
  readonly title: Text;
  readonly number?: string;
  readonly fits: Fits;
  /** The control, controller, meter or injector of this family that it is; without it the role alone decides. */
  readonly of?: string;
  readonly price?: number;
  /** What a kit holds; 'all' = as many as the stack has. */
  readonly holds: Readonly<Record<string, number | 'all'>>;
  /** How many the valve takes; seals and spacers are counted from the stack instead. */
  readonly count: number;
};

/** A change of one feature in the field, and what only the family knows about it. */
export type Conversion = {
  readonly feature: string;
  readonly from: string;
  readonly to: string;
  readonly also: readonly string[];
  readonly check?: Text;
};

export type Tool = {
  readonly id: string;
  readonly title: Text;
  readonly fits: Fits;
  /** Made for this family or size; the gate compares it with the valve. */
  readonly special: boolean;
};
