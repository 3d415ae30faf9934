import { createHash } from 'node:crypto';
import { Readable } from 'node:stream';
import type { Equipment } from '@brinewright/equipment';
import {
  answerOffer,
  answerPull,
  answerPush,
  type Draft,
  draftsOfVisit,
  type FoldedSite,
  type FoldedVisit,
  type JournalStore,
  type Logged,
  type LogState,
  type OfferReply,
  type OfferRequest,
  type PullReply,
  type PullRequest,
  type PushReply,
  type PushRequest,
  type Remarks,
  type Rival,
} from '@brinewright/journal';
import { type Assessment, type Effort, engine } from '@brinewright/service';
import type { Issue } from '@brinewright/words';
import { v7 } from 'uuid';
import { Assessments } from './assessments.ts';
import { readWritten, siteOfVisit } from './bring-visit.ts';
import { compose } from './compose.ts';
import type { ContentFiles } from './content-files.ts';
import { type BaseDefinitions, Definitions, type InUse } from './definitions.ts';
import { LogFollower, type SiteOf, type StockOf } from './log-follower.ts';
import { filesAimedAt, removeRedacted } from './redacted-files.ts';
import { settling } from './settle.ts';

export type WorkshopParts = {
  readonly company: string;
  /** Who began the workshop: the author of what is entered at this computer. */
  readonly owner: string;
  readonly store: JournalStore;
  readonly files: ContentFiles;
  readonly base: BaseDefinitions;
  readonly isDemo: boolean;
  readonly now: () => Date;
};

/** On whose behalf a device speaks to the workshop. */
export type Asker = { readonly pusher: string; readonly isOwner: boolean };

/** Who brings what the workshop writes itself. */
export const ownPusher = 'workshop';

export type VisitTaken =
  | {
      readonly state: 'taken';
      readonly stream: string;
      readonly visit: string;
      readonly issues: readonly Issue[];
    }
  | { readonly state: 'faulty'; readonly issues: readonly Issue[] }
  | { readonly state: 'definition' }
  | { readonly state: 'there-already'; readonly visit: string; readonly site: string };

export type DefinitionTaken =
  | { readonly state: 'taken'; readonly file: string; readonly issues: readonly Issue[] }
  | { readonly state: 'faulty'; readonly issues: readonly Issue[] };

/** One company's record on this server: journal, files, definitions, and what follows from them. */
export class Workshop {
  readonly company: string;
  readonly owner: string;
  readonly store: JournalStore;
  readonly files: ContentFiles;
  readonly isDemo: boolean;
  readonly #parts: WorkshopParts;
  readonly #follower: LogFollower;
  readonly #definitions: Definitions;
  readonly #assessments: Assessments;
  readonly #listeners = new Set<(state: LogState) => void>();
  #writing: Promise<unknown> = Promise.resolve();

  constructor(parts: WorkshopParts) {
    const { company, owner, store, files, base, isDemo, now } = parts;
    this.company = company;
    this.owner = owner;
    this.store = store;
    this.files = files;
    this.isDemo = isDemo;
    this.#parts = parts;
    this.#follower = new LogFollower(store, company);
    this.#definitions = new Definitions(base, files, company);
    this.#assessments = new Assessments(now);
  }

  state(): Promise<LogState> {
    return this.store.state(this.company);
  }

  /** Called with the new place of the log whenever something was kept. */
  onMoved(listener: (state: LogState) => void): () => void {
    this.#listeners.add(listener);
    return () => void this.#listeners.delete(listener);
  }

  async push(asker: Asker, request: PushRequest): Promise<PushReply> {
    const before = await this.state();
    const aimedAt = await filesAimedAt(this.store, this.company, request);
    const reply = await answerPush(this.store, this.#session(asker), request, this.#now());
    if (reply.last > before.last) this.#moved(reply);
    await removeRedacted(this, aimedAt, reply);
    return reply;
  }

  pull(asker: Asker, request: PullRequest): Promise<PullReply> {
    return answerPull(this.store, this.#session(asker), request, this.#now());
  }

  offer(asker: Asker, request: OfferRequest): Promise<OfferReply> {
    return answerOffer(this.store, this.#session(asker), request, this.#now());
  }

  /** Written by the workshop's own device; resolves once it is on disk. */
  async record(author: string, drafts: readonly Draft[]): Promise<readonly Logged[]> {
    const { company } = this;
    const hand = {
      company,
      author,
      wall: this.#now(),
      zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
      app: engine,
      newId: () => v7(),
    };
    const streams = [...new Set(drafts.map(({ stream }) => stream))];
    const { kept, epoch, last } = await this.store.write(
      { company, pusher: ownPusher, received: hand.wall },
      streams,
      (heads) => compose(heads, drafts, hand),
    );
    this.#moved({ epoch, last });
    return kept;
  }

  sites(): Promise<readonly SiteOf[]> {
    return this.#follower.sites();
  }

  site(stream: string): Promise<FoldedSite | undefined> {
    return this.#follower.site(stream);
  }

  stock(): Promise<readonly StockOf[]> {
    return this.#follower.stock();
  }

  async name(): Promise<string | undefined> {
    return (await this.#follower.workshop()).name;
  }

  /** What disagrees or waits in the workshop's own stream. */
  async ownRemarks(): Promise<Remarks> {
    return this.#follower.workshop();
  }

  async inUse(): Promise<InUse> {
    return this.#definitions.inUse((await this.#follower.workshop()).definitions);
  }

  async uploaded(): Promise<readonly { readonly name: string; readonly file: string }[]> {
    return (await this.#follower.workshop()).definitions;
  }

  async assess(folded: FoldedVisit, effort: Effort = 'full'): Promise<Assessment> {
    return this.#assessments.of(folded, await this.equipmentOf(folded), effort);
  }

  /** The definitions a visit was made with, where they are here (F5). */
  async equipmentOf({ visit, definitionsFile }: FoldedVisit): Promise<Equipment> {
    const { equipment } = await this.inUse();
    return this.#definitions.pinned({ digest: visit.definitions, file: definitionsFile }, equipment);
  }

  /** A written visit, as entries: into the site of its name, or a new one. */
  addVisit(author: string, file: string, text: string): Promise<VisitTaken> {
    return this.#oneByOne(() => this.#addVisit(author, file, text));
  }

  addDefinition(author: string, name: string, text: string): Promise<DefinitionTaken> {
    return this.#oneByOne(() => this.#addDefinition(author, name, text));
  }

  /** Writes one of rival values again, so that it is the one that has seen both (F2). */
  async settle(author: string, stream: string, rival: Rival, entry: string): Promise<boolean> {
    const draft =
      rival.what === '' ? await this.#sameCorrection(stream, rival, entry) : settling(stream, rival, entry);
    if (draft === undefined) return false;
    await this.record(author, [draft]);
    return true;
  }

  async #sameCorrection(stream: string, rival: Rival, entry: string): Promise<Draft | undefined> {
    if (!rival.values.some((one) => one.entry === entry)) return undefined;
    const chosen = await this.store.find(this.company, entry);
    return chosen?.entry.kind === 'corrected/1'
      ? { stream, kind: 'corrected/1', about: chosen.entry.about, payload: chosen.entry.payload }
      : undefined;
  }

  async #addVisit(author: string, file: string, text: string): Promise<VisitTaken> {
    const read = readWritten(file, text);
    if (read.state !== 'read') return read;
    const { visit, issues } = read;
    const known = siteOfVisit(await this.sites(), visit);
    if (known?.folded.visits.some(({ id }) => id === visit.id))
      return { state: 'there-already', visit: visit.id, site: visit.site.name };
    const stream = known?.stream ?? v7();
    const { equipment, bundle } = await this.inUse();
    const definitions = visit.definitions ?? equipment.digest;
    const definitionsFile = definitions === equipment.digest ? await this.#keep(bundle) : undefined;
    await this.record(
      author,
      draftsOfVisit({ ...visit, definitions }, { stream, known: known?.folded, definitionsFile }),
    );
    return { state: 'taken', stream, visit: visit.id, issues };
  }

  async #addDefinition(author: string, name: string, text: string): Promise<DefinitionTaken> {
    const issues = await this.#definitions.issuesWith(await this.uploaded(), name, text);
    if (issues.some(({ severity }) => severity === 'error')) return { state: 'faulty', issues };
    const file = await this.#keep(text);
    await this.record(author, [
      { stream: this.company, kind: 'definition-added/1', about: {}, payload: { name, file } },
    ]);
    return { state: 'taken', file, issues };
  }

  /** A text as a file named by its SHA-256. */
  async #keep(text: string): Promise<string> {
    const bytes = Buffer.from(text, 'utf8');
    const file = createHash('sha256').update(bytes).digest('hex');
    await this.files.receive(this.company, file, Readable.from([bytes]));
    return file;
  }

  /** What reads the record before it writes waits for what is being written the same way. */
  #oneByOne<T>(work: () => Promise<T>): Promise<T> {
    const next = this.#writing.catch(() => undefined).then(work);
    this.#writing = next;
    return next;
  }

  #session({ pusher, isOwner }: Asker) {
    return { company: this.company, pusher, isOwner };
  }

  #now(): string {
    return this.#parts.now().toISOString();
  }

  #moved(state: LogState): void {
    for (const listener of this.#listeners) listener({ epoch: state.epoch, last: state.last });
  }
}
