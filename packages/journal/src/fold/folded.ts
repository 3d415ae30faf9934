import type { Conditioner, Visit, WaterAnalysis } from '@brinewright/service';
import type { Issue } from '@brinewright/words';
import type { About } from '../entry/entry.ts';

/** Who said something, and when by the clock of people (J5). */
export type Said = {
  readonly entry: string;
  readonly author: string;
  /** ISO instant, set right by what the device's clock was found to be off. */
  readonly at: string;
  readonly zone: string;
  /** Present from five minutes on: the clock of the device was off by so many milliseconds. */
  readonly clockOff?: number;
};

/** Two people who did not know of one another said different things; writing it again settles it (F2). */
export type Rival = {
  readonly about: About;
  /** 'setting-set/1' and the place in its payload: 'refill'. */
  readonly kind: string;
  readonly what: string;
  /** The value in force first. */
  readonly values: readonly (Said & { readonly value: unknown })[];
};

/** A payload that breaks the schema of its kind: kept, passed on, not applied (F4). */
export type SetAside = Said & {
  readonly kind: string;
  readonly about: About;
  readonly issues: readonly Issue[];
};

/** An entry that needs another one which has not come yet (F3). */
export type Waiting = Said & { readonly kind: string; readonly about: About; readonly for: string };

/** A kind or a version that this program does not know (F4). */
export type Newer = Said & { readonly kind: string; readonly about: About };

/** What every fold tells beside its result. */
export type Remarks = {
  readonly rivals: readonly Rival[];
  readonly setAside: readonly SetAside[];
  readonly waiting: readonly Waiting[];
  readonly newer: readonly Newer[];
};

/** Figures as they were shown, so that papers of a finished visit stay what they were (F5). */
export type ShownFigures = {
  readonly engine: string;
  readonly definitions: string;
  readonly figures: Readonly<Record<string, string>>;
};

export type FoldedVisit = {
  readonly id: string;
  /** The same type as a written visit. */
  readonly visit: Visit;
  readonly started: Said;
  /** Entries about this visit, and the last of them. */
  readonly entries: number;
  readonly last: Said;
  readonly handedOver?: Said & { readonly shown?: ShownFigures };
  readonly advice: readonly (Said & { readonly shown: ShownFigures })[];
  /** The file that holds the definitions pinned, by SHA-256. */
  readonly definitionsFile?: string;
  /** What no longer maps since the definitions were changed in mid-visit. */
  readonly gone: readonly string[];
};

export type FoldedSite = Remarks & {
  readonly site: Visit['site'] | undefined;
  readonly water: readonly WaterAnalysis[];
  readonly demand?: NonNullable<Visit['demand']>;
  readonly supply?: NonNullable<Visit['supply']>;
  readonly conditioners: readonly Conditioner[];
  /** In the order in which they were started. */
  readonly visits: readonly FoldedVisit[];
};

export type StockLine = {
  readonly part: string;
  readonly count: number;
  /** The stock-take it counts from. */
  readonly since?: Said;
};

export type FoldedStock = Remarks & {
  readonly name: string | undefined;
  /** By part id; a count below zero is flagged, not refused (F2). */
  readonly lines: readonly StockLine[];
  readonly belowZero: readonly string[];
};

export type FoldedWorkshop = Remarks & {
  readonly name: string | undefined;
  /** Own definitions: name of the file and its SHA-256. */
  readonly definitions: readonly { readonly name: string; readonly file: string }[];
};

/** One visit to a unit, as the next technician wants to see it. */
export type HistoryLine = {
  readonly visit: string;
  readonly date: string;
  readonly by: string;
  readonly complaint?: Visit['complaint'];
  readonly used: NonNullable<Visit['used']>;
  readonly set?: NonNullable<Visit['settings']>['set'];
  readonly readings: NonNullable<Visit['readings']>;
  readonly proofs: NonNullable<Visit['proofs']>;
  readonly isHandedOver: boolean;
};
