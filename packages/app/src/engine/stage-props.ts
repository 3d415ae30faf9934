import type { Draft } from '@brinewright/journal';
import type { ComponentType } from 'react';

export const stageIds = ['recognise', 'find', 'repair', 'work', 'program', 'prove', 'hand-over'] as const;

/** The seven stages of a visit, in the order of the strip. */
export type StageId = (typeof stageIds)[number];

/** Places of a visit that are no stage: in reach from any of them. */
export const besideIds = ['cutaway', 'leave-safe'] as const;
export type BesideId = (typeof besideIds)[number];
export type VisitPlaceId = StageId | BesideId;

/** Where one may go from a stage; each is a place with an address of its own. */
export type Nav = {
  /** The part of the stage that the address names, such as a test or an operation. */
  readonly part: string | undefined;
  readonly toPart: (part: string | undefined) => void;
  readonly toStage: (stage: VisitPlaceId, part?: string) => void;
  readonly toStart: () => void;
};

/** Writes entries durably and gives their ids. */
export type RecordEntries = (drafts: readonly Draft[]) => Promise<readonly string[]>;

/** What a stage's screen is given. */
export type StageProps<View> = {
  readonly view: View;
  /** Something was entered since; a newer view is on its way. */
  readonly isStale: boolean;
  readonly about: { readonly stream: string; readonly visit: string; readonly conditioner: string };
  readonly record: RecordEntries;
  readonly nav: Nav;
};

export type StageScreen<View> = ComponentType<StageProps<View>>;
