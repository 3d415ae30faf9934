import { setImmediate as nextTurn } from 'node:timers/promises';
import {
  type Entry,
  type FoldedSite,
  type FoldedStock,
  type FoldedWorkshop,
  fold,
  foldStock,
  foldWorkshop,
  type JournalStore,
  kindOfStream,
  type Logged,
  mostEntries,
} from '@brinewright/journal';
import { entriesOf } from './every-entry.ts';

export type SiteOf = { readonly stream: string; readonly folded: FoldedSite };
export type StockOf = { readonly stream: string; readonly folded: FoldedStock };

type Folds = { site?: FoldedSite; workshop?: FoldedWorkshop; changes: number };

/** What a stock place is folded from beside its own entries: parts used at sites, and what corrects either. */
const besideStock = ['part-used', 'corrected', 'redacted'];
const nameOf = ({ kind }: Entry): string => kind.split('/')[0] ?? '';

/**
 * What the log says now, folded stream by stream when it is asked for and has moved. Everything here can be thrown
 * away and made again from the entries.
 */
export class LogFollower {
  readonly #store: JournalStore;
  readonly #company: string;
  readonly #streams = new Map<string, Folds>();
  readonly #places = new Map<string, FoldedStock | undefined>();
  readonly #stockEntries = new Map<string, Entry>();
  #epoch: string | undefined;
  #position = 0;
  #turn: Promise<void> = Promise.resolve();
  #waiting: Promise<void> | undefined;

  constructor(store: JournalStore, company: string) {
    this.#store = store;
    this.#company = company;
  }

  /** Every site, the loop left free between any two of them. */
  async sites(): Promise<readonly SiteOf[]> {
    await this.#catchUp();
    const found: SiteOf[] = [];
    for (const stream of this.#streams.keys()) {
      if (this.#places.has(stream) || stream === this.#company) continue;
      found.push({ stream, folded: await this.#siteIn(stream) });
    }
    return found.filter(({ folded }) => folded.site !== undefined || folded.waiting.length > 0);
  }

  async site(stream: string): Promise<FoldedSite | undefined> {
    await this.#catchUp();
    const isSite = this.#streams.has(stream) && !this.#places.has(stream) && stream !== this.#company;
    return isSite ? this.#siteIn(stream) : undefined;
  }

  async stock(): Promise<readonly StockOf[]> {
    await this.#catchUp();
    return [...this.#places].map(([stream, known]) => {
      const folded = known ?? foldStock(stream, [...this.#stockEntries.values()]);
      this.#places.set(stream, folded);
      return { stream, folded };
    });
  }

  async workshop(): Promise<FoldedWorkshop> {
    await this.#catchUp();
    const folds = this.#streams.get(this.#company);
    if (folds?.workshop !== undefined) return folds.workshop;
    const { changes = 0 } = folds ?? {};
    const folded = foldWorkshop(await this.#entriesOf(this.#company));
    if (folds !== undefined && folds.changes === changes) folds.workshop = folded;
    return folded;
  }

  async #siteIn(stream: string): Promise<FoldedSite> {
    const folds = this.#streams.get(stream);
    if (folds?.site !== undefined) return folds.site;
    const { changes = 0 } = folds ?? {};
    const entries = await this.#entriesOf(stream);
    await nextTurn();
    const folded = fold(entries);
    if (folds !== undefined && folds.changes === changes) folds.site = folded;
    return folded;
  }

  #entriesOf(stream: string): Promise<readonly Entry[]> {
    return entriesOf(this.#store, this.#company, stream);
  }

  /** One at a time; whoever asks while one waits to begin is served by that one. */
  #catchUp(): Promise<void> {
    if (this.#waiting !== undefined) return this.#waiting;
    const next = this.#turn
      .catch(() => undefined)
      .then(() => {
        this.#waiting = undefined;
        return this.#readOn();
      });
    this.#turn = next;
    this.#waiting = next;
    return next;
  }

  async #readOn(): Promise<void> {
    for (;;) {
      const page = await this.#store.pull(this.#company, { all: this.#position }, mostEntries);
      if (page.epoch !== this.#epoch) {
        const isFirst = this.#epoch === undefined;
        this.#forget(page.epoch);
        if (!isFirst) continue;
      }
      for (const logged of page.entries) await this.#note(logged);
      if (!page.more) return;
      await nextTurn();
    }
  }

  #forget(epoch: string): void {
    this.#epoch = epoch;
    this.#position = 0;
    this.#streams.clear();
    this.#places.clear();
    this.#stockEntries.clear();
  }

  async #note({ position, entry }: Logged): Promise<void> {
    this.#position = position;
    this.#hasChanged(entry.stream);
    const name = nameOf(entry);
    const isOfStock = kindOfStream(entry.stream, this.#company, [entry]) === 'stock-place';
    if (isOfStock) this.#places.set(entry.stream, undefined);
    if (isOfStock || besideStock.includes(name)) this.#noteStock(entry);
    if (name === 'redacted') await this.#noteRedacted(entry);
  }

  #hasChanged(stream: string): void {
    const { changes } = this.#streams.get(stream) ?? { changes: 0 };
    this.#streams.set(stream, { changes: changes + 1 });
  }

  #noteStock(entry: Entry): void {
    this.#stockEntries.set(entry.id, entry);
    for (const place of this.#places.keys()) this.#places.set(place, undefined);
  }

  /** What was redacted has changed where it stands, without a new place in the log. */
  async #noteRedacted({ payload }: Entry): Promise<void> {
    const id = typeof payload === 'object' && payload !== null && 'target' in payload ? payload.target : null;
    const target = typeof id === 'string' ? await this.#store.find(this.#company, id) : undefined;
    if (target === undefined) return;
    this.#hasChanged(target.entry.stream);
    if (this.#stockEntries.has(target.entry.id)) this.#noteStock(target.entry);
  }
}
