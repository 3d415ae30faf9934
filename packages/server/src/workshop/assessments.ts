import type { Equipment } from '@brinewright/equipment';
import type { FoldedVisit } from '@brinewright/journal';
import { type Assessment, assess, type Effort } from '@brinewright/service';

type Kept = {
  readonly digest: string;
  readonly effort: Effort;
  readonly at: number;
  readonly made: Assessment;
};

/** How long an assessment of an open visit is shown before the clock may have changed it. */
const keptFor = 10 * 60_000;

/** Assessments of folded visits, made once for each state of the visit and of the definitions. */
export class Assessments {
  readonly #of = new WeakMap<FoldedVisit, Kept>();
  readonly #now: () => Date;

  constructor(now: () => Date) {
    this.#now = now;
  }

  of(folded: FoldedVisit, equipment: Equipment, effort: Effort): Assessment {
    const moment = momentOf(folded) ?? this.#now();
    const known = this.#of.get(folded);
    const isFresh =
      known !== undefined &&
      known.digest === equipment.digest &&
      known.effort === effort &&
      Math.abs(moment.getTime() - known.at) < keptFor;
    if (isFresh) return known.made;
    const made = assess(folded.visit, equipment, { now: moment.toISOString(), effort });
    this.#of.set(folded, { digest: equipment.digest, effort, at: moment.getTime(), made });
    return made;
  }
}

/** A finished visit is looked at from the day on which it was handed over. */
const momentOf = ({ handedOver, visit }: FoldedVisit): Date | undefined => {
  const at = handedOver === undefined ? undefined : new Date(visit.handOver?.at ?? handedOver.at);
  return at === undefined || Number.isNaN(at.getTime()) ? undefined : at;
};
