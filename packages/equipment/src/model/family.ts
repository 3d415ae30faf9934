import type { Quantity } from '@brinewright/units';
import type { Place, Text } from '@brinewright/words';
import type { BoreDefinition, StackPiece } from './bore.ts';
import type {
  CautionDefinition,
  ChangeDefinition,
  ComplaintDefinition,
  ConditionerKind,
  DiagnosisTest,
  Fault,
} from './fault.ts';
import type { Feature, Fits } from './feature.ts';
import type { Control, Controller, Injector, Medium, Meter, QuantityRange } from './fitting.ts';
import type { Operation } from './operation.ts';
import type { Conversion, Part, Tool } from './part.ts';
import type { Tell } from './tell.ts';

/** A family merged with its stock and checked. Lists are in the order of the definition; ids are unique in each. */
export type Family = {
  readonly id: string;
  readonly title: Text;
  /** 'invented', or who measured it and from what. */
  readonly source: string;
  readonly like?: string;
  readonly kinds: readonly ConditionerKind[];
  readonly limits: {
    readonly pressure?: QuantityRange;
    /** Hottest water, by value of the feature `water`; the key 'any' serves a family without that feature. */
    readonly temperature: Readonly<Record<string, Quantity>>;
  };
  readonly features: readonly Feature[];
  readonly never: readonly Fits[];
  readonly tells: readonly Tell[];
  readonly bores: readonly BoreDefinition[];
  readonly stack: readonly StackPiece[];
  /** What looks wrong but is right for this family. */
  readonly looksWrong: readonly Text[];
  readonly injectors: readonly Injector[];
  readonly controls: { readonly drain: readonly Control[]; readonly refill: readonly Control[] };
  readonly controllers: readonly Controller[];
  readonly meters: readonly Meter[];
  readonly parts: readonly Part[];
  readonly conversions: readonly Conversion[];
  readonly tools: readonly Tool[];
  readonly operations: readonly Operation[];
  readonly faults: readonly Fault[];
  readonly tests: readonly DiagnosisTest[];
  readonly complaints: readonly ComplaintDefinition[];
  readonly changes: readonly ChangeDefinition[];
  readonly cautions: readonly CautionDefinition[];
};

/** Where each line of a merged family came from: dotted path to place. */
export type Origins = ReadonlyMap<string, Place>;

/** Compiled equipment: browser-safe, no file, no YAML. `undescribed` is always among the families. */
export type Equipment = {
  readonly digest: string;
  readonly families: ReadonlyMap<string, Family>;
  readonly media: ReadonlyMap<string, Medium>;
};

export const undescribed = 'undescribed';
