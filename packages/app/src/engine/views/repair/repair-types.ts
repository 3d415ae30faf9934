export type PartView = {
  readonly id: string;
  readonly name: string;
  readonly number?: string;
  readonly count: number;
  /** What it is needed for. */
  readonly why: string;
  /** Odds that this is the right one, where that is not settled. */
  readonly odds?: string;
  readonly price?: string;
  readonly where: 'in-hand' | 'in-van' | 'missing' | 'not-written';
  /** How many of it have to be ordered. */
  readonly order: number;
  readonly used: number;
};

/** What each of the builds takes where they differ, and the tell that parts them. */
export type DifferingView = {
  readonly when: string;
  readonly parts: readonly PartView[];
  readonly tell?: string;
};

/** One of a few that may be decided. */
export type OptionView = {
  readonly what: 'fault' | 'convert';
  readonly value: string;
  readonly title: string;
  readonly under?: string;
  readonly chosen: boolean;
};

export type ConversionView = OptionView & { readonly asks: readonly string[] };

export type StockView = {
  readonly part: string;
  readonly name: string;
  readonly number?: string;
  readonly count?: number;
};

export type RepairView = {
  readonly state: 'blocked' | 'done';
  readonly gaps: readonly string[];
  /** What is mended, and by what. */
  readonly advice: readonly string[];
  /** What is renewed, done, set or converted. */
  readonly targets: readonly string[];
  readonly parts: readonly PartView[];
  readonly differs: readonly DifferingView[];
  /** How many builds remain, and whether one list serves them all. */
  readonly covers: { readonly builds: number; readonly isWhole: boolean; readonly isDescribed: boolean };
  readonly substitutes: readonly string[];
  /** Where no part is the mend: the settings. */
  readonly setsProgram: boolean;
  readonly refused: readonly string[];
  /** In the hand, and not of this valve. */
  readonly wrong: readonly { readonly id: string; readonly says: string }[];
  readonly remarks: readonly { readonly says: string; readonly mend?: string }[];
  readonly total?: string;
  readonly faults: readonly OptionView[];
  readonly conversions: readonly ConversionView[];
  readonly stock: readonly StockView[];
  /** Every part of the definition, for what else lies in the van. */
  readonly catalogue: readonly { readonly id: string; readonly name: string }[];
  /** All that is in the hand now, for an entry that changes one. */
  readonly kit: readonly string[];
};
