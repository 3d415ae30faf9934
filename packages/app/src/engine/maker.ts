import type { Equipment } from '@brinewright/equipment';
import type { FoldedVisit } from '@brinewright/journal';
import { type Assessment, assessing, type Memo, newMemo, type Visit } from '@brinewright/service';
import { EquipmentInUse } from './equipment-in-use.ts';
import type { Made } from './made.ts';
import { Sites } from './sites.ts';
import type { Source } from './source.ts';
import type { Speech } from './speech.ts';

export type Ticks = {
  /** ISO instant. */
  readonly now: () => string;
  /** Lets messages in; false where nobody waits any more. */
  readonly pause: () => Promise<boolean>;
};

export type MadeStep =
  | { readonly state: 'progress'; readonly done: number; readonly of: number }
  | { readonly state: 'made'; readonly made: Made }
  | { readonly state: 'missing' };

type Kept = { readonly memo: Memo; last?: { readonly of: string; readonly assessment: Assessment } };

/** How long the clock may run before an open visit is assessed anew. */
const keptFor = 10 * 60_000;

/** What is made of a visit: folded, assessed with the results of unchanged stages kept. */
export class Maker {
  readonly sites: Sites;
  readonly #source: Source;
  readonly #equipment = new EquipmentInUse();
  readonly #kept = new Map<string, Kept>();
  #moment: number | undefined;

  constructor(source: Source) {
    this.#source = source;
    this.sites = new Sites(source);
  }

  async equipment(): Promise<Equipment> {
    return this.#equipment.with(await this.#source.definitions());
  }

  async *make(stream: string, visit: string, speech: Speech, ticks: Ticks): AsyncGenerator<MadeStep, void> {
    const site = await this.sites.of(stream);
    const folded = site?.folded.visits.find(({ id }) => id === visit);
    const subject = folded?.visit.conditioners.find(({ id }) => id === folded.visit.subject);
    if (site === undefined || folded === undefined || subject === undefined) {
      yield { state: 'missing' };
      return;
    }
    const equipment = await this.equipment();
    const now = momentOf(folded) ?? this.#now(ticks.now());
    const assessment = yield* this.#assess(`${stream} ${visit}`, folded.visit, equipment, now, ticks);
    if (assessment === undefined) return;
    const family = equipment.families.get(subject.family);
    const told = { ...speech, reader: { ...speech.reader, currency: folded.visit.site.prices?.currency } };
    yield {
      state: 'made',
      made: {
        stream,
        site: site.folded,
        folded,
        visit: folded.visit,
        subject,
        assessment,
        equipment,
        family,
        speech: told,
        now,
      },
    };
  }

  async *#assess(
    key: string,
    visit: Visit,
    equipment: Equipment,
    now: string,
    ticks: Ticks,
  ): AsyncGenerator<MadeStep, Assessment | undefined> {
    const kept = this.#kept.get(key) ?? { memo: newMemo() };
    this.#kept.set(key, kept);
    const of = `${equipment.digest} ${now} ${JSON.stringify(visit)}`;
    if (kept.last?.of === of) return kept.last.assessment;
    const work = assessing(visit, equipment, { now, effort: 'full', memo: kept.memo });
    let started = performance.now();
    for (;;) {
      const next = work.next();
      if (next.done === true) {
        kept.last = { of, assessment: next.value };
        return next.value;
      }
      if (performance.now() - started < 30) continue;
      if (!(await ticks.pause())) return undefined;
      if ('of' in next.value) yield { state: 'progress', ...next.value };
      started = performance.now();
    }
  }

  /** The same moment for a while, so that an unchanged visit is not assessed again at each look. */
  #now(now: string): string {
    const at = Date.parse(now);
    if (this.#moment === undefined || Math.abs(at - this.#moment) > keptFor) this.#moment = at;
    return new Date(this.#moment).toISOString();
  }
}

/** A finished visit is looked at from the day on which it was handed over. */
const momentOf = ({ handedOver, visit }: FoldedVisit): string | undefined =>
  handedOver === undefined ? undefined : (visit.handOver?.at ?? handedOver.at);
