import { v4 } from 'uuid';
import type { Sealed } from '../entry/entry.ts';
import { originOf } from '../fold/one-of-each.ts';
import type {
  Batch,
  Heads,
  JournalStore,
  Logged,
  LogState,
  Vector,
  Verdict,
  Wanted,
} from './journal-store.ts';
import { type Judgement, judge, numberOf, type There, withOrigins } from './judge.ts';
import { redact, targetOf } from './redaction.ts';
import { vectorOf } from './vector.ts';

type Company = {
  readonly epoch: string;
  readonly device: string;
  lamport: number;
  /** The entry at position n stands at n - 1. */
  readonly log: Logged[];
  readonly byId: Map<string, Logged>;
  readonly numbers: Set<string>;
  readonly redactedBy: Map<string, string>;
};

/** Keeps everything in memory and nothing longer than it lives: for trials, and as the plain model of the others. */
export class MemoryStore implements JournalStore {
  readonly #companies = new Map<string, Company>();
  readonly #draw: () => string;

  /** `draw` gives epochs and devices; trials with a seed bring their own. */
  constructor(draw: () => string = v4) {
    this.#draw = draw;
  }

  async begin(company: string): Promise<void> {
    if (this.#companies.has(company)) return;
    this.#companies.set(company, {
      epoch: this.#draw(),
      device: this.#draw(),
      lamport: 0,
      log: [],
      byId: new Map(),
      numbers: new Set(),
      redactedBy: new Map(),
    });
  }

  async companies(): Promise<readonly string[]> {
    return [...this.#companies.keys()].toSorted();
  }

  async state(company: string): Promise<LogState> {
    return stateOf(this.#of(company));
  }

  async push(batch: Batch): Promise<LogState & { readonly verdicts: readonly Verdict[] }> {
    const company = this.#of(batch.company);
    const judgement = judge(batch, thereOf(company));
    keep(company, judgement);
    return { ...stateOf(company), verdicts: judgement.verdicts };
  }

  async write(
    from: Omit<Batch, 'entries' | 'isOwner'>,
    streams: readonly string[],
    compose: (heads: Heads) => readonly Sealed[],
  ): Promise<LogState & { readonly kept: readonly Logged[] }> {
    const company = this.#of(from.company);
    const { device, lamport } = company;
    const entries = compose({ device, lamport, vectors: vectorsOf(company, streams) });
    const judgement = judge({ ...from, entries, isOwner: true }, thereOf(company));
    assertAllNew(judgement, entries);
    keep(company, judgement);
    return { ...stateOf(company), kept: judgement.added };
  }

  async pull(
    company: string,
    wanted: Wanted,
    most: number,
  ): Promise<LogState & { readonly entries: readonly Logged[]; readonly more: boolean }> {
    const held = this.#of(company);
    const found = held.log.filter(isWanted(wanted));
    return { ...stateOf(held), entries: found.slice(0, most), more: found.length > most };
  }

  async vectors(company: string, streams: readonly string[]): Promise<ReadonlyMap<string, Vector>> {
    return vectorsOf(this.#of(company), streams);
  }

  async find(company: string, id: string): Promise<Logged | undefined> {
    return this.#of(company).byId.get(id);
  }

  async close(): Promise<void> {}

  #of(company: string): Company {
    const held = this.#companies.get(company);
    if (held === undefined) throw new RangeError(`company ${company} was not begun`);
    return held;
  }
}

/** The store's own device numbers its entries itself: one that is not new was composed wrongly. */
export const assertAllNew = ({ added, verdicts }: Judgement, entries: readonly Sealed[]): void => {
  if (added.length === entries.length) return;
  const refused = verdicts.find(({ state }) => state === 'refused');
  throw new RangeError(`an entry of the own device is not new: ${JSON.stringify(refused ?? verdicts)}`);
};

const stateOf = ({ epoch, log }: Company): LogState => ({ epoch, last: log.length });

const thereOf = ({ log, lamport, byId, numbers, device, redactedBy }: Company): There => ({
  last: log.length,
  lamport,
  byId,
  numbers,
  ownDevices: new Set([device]),
  redactedBy: withOrigins(redactedBy, (id) => byId.get(id)?.entry),
});

const keep = (company: Company, { added, redacted, lamport }: Judgement): void => {
  company.lamport = lamport;
  for (const one of added) put(company, one);
  const by = withOrigins(redacted, (id) => company.byId.get(id)?.entry);
  for (const held of by.size === 0 ? [] : [...company.log]) {
    const redaction = by.get(held.entry.id) ?? by.get(originOf(held.entry));
    if (redaction !== undefined) put(company, redact(held, redaction));
  }
};

const put = (company: Company, logged: Logged): void => {
  const { entry, position } = logged;
  company.log[position - 1] = logged;
  company.byId.set(entry.id, logged);
  company.numbers.add(numberOf(entry));
  const target = targetOf(entry);
  if (target !== undefined) company.redactedBy.set(target, entry.id);
};

const isWanted =
  (wanted: Wanted) =>
  ({ position, entry }: Logged): boolean =>
    position >
    ('all' in wanted ? wanted.all : (wanted.streams.get(entry.stream) ?? Number.POSITIVE_INFINITY));

const vectorsOf = ({ log }: Company, streams: readonly string[]): ReadonlyMap<string, Vector> =>
  new Map(
    streams.map((stream) => [
      stream,
      vectorOf(log.flatMap(({ entry }) => (entry.stream === stream ? [entry] : []))),
    ]),
  );
