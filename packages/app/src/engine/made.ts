import type { Equipment, Family } from '@brinewright/equipment';
import type { FoldedSite, FoldedVisit } from '@brinewright/journal';
import type { Assessment, Conditioner, Visit } from '@brinewright/service';
import type { Speech } from './speech.ts';

/** A visit with all that was made of it: what every view function reads, and nothing else. */
export type Made = {
  readonly stream: string;
  readonly site: FoldedSite;
  readonly folded: FoldedVisit;
  readonly visit: Visit;
  readonly subject: Conditioner;
  readonly assessment: Assessment;
  readonly equipment: Equipment;
  /** None where the definitions of the unit are not on this device. */
  readonly family: Family | undefined;
  readonly speech: Speech;
  /** ISO instant at which it was made. */
  readonly now: string;
};
