import { type FoldedSite, fold, isTombstone, kindOfStream } from '@brinewright/journal';
import type { Source } from './source.ts';

export type SiteOf = { readonly stream: string; readonly folded: FoldedSite };

type Kept = { readonly of: string; readonly site: SiteOf };

/** Sites folded from the entries of this device, anew only when their entries have changed. */
export class Sites {
  readonly #source: Source;
  readonly #kept = new Map<string, Kept>();

  constructor(source: Source) {
    this.#source = source;
  }

  async of(stream: string): Promise<SiteOf | undefined> {
    const entries = await this.#source.entriesOf(stream);
    const kind = kindOfStream(stream, this.#source.company, entries);
    if (entries.length === 0 || kind !== 'site') return undefined;
    const of = entries.map((entry) => `${entry.id}${isTombstone(entry) ? '-' : ''}`).join();
    const kept = this.#kept.get(stream);
    if (kept?.of === of) return kept.site;
    const site = { stream, folded: fold(entries) };
    this.#kept.set(stream, { of, site });
    return site;
  }

  async all(): Promise<readonly SiteOf[]> {
    const streams = await this.#source.streams();
    const sites = await Promise.all(streams.map((stream) => this.of(stream)));
    return sites.filter((site) => site !== undefined);
  }
}
