import type { Entry, Sealed } from '../entry/entry.ts';
import type { Refusal } from '../entry/refusal.ts';
import { originOf } from '../fold/one-of-each.ts';
import type { Batch, Logged, Verdict } from './journal-store.ts';
import { isRedaction, redact, targetOf } from './redaction.ts';

/*
 * What becomes of a batch, entry by entry, given what the store holds (SPEC S1, S2, R1). Pure, so that every store
 * judges alike: it reads what it needs under its lock, asks here, and writes down the answer.
 */

/** What a store holds of what a batch touches. */
export type There = {
  /** Highest place in the log that is taken. */
  readonly last: number;
  /** The company's highest lamport (J4). */
  readonly lamport: number;
  /** Entries held with an id of the batch. */
  readonly byId: ReadonlyMap<string, Pick<Logged, 'hash' | 'position'>>;
  /** Numbers of the batch that held entries have, as `numberOf` writes them. */
  readonly numbers: ReadonlySet<string>;
  /** The store's own devices, past and present. */
  readonly ownDevices: ReadonlySet<string>;
  /** Of ids in the batch, or of what they were written again for: the redaction held that takes the content out. */
  readonly redactedBy: ReadonlyMap<string, string>;
};

export type Judgement = {
  /** One for each entry, in the order of the batch. */
  readonly verdicts: readonly Verdict[];
  /** To be added, in order of position; what a redaction aims at is a tombstone already. */
  readonly added: readonly Logged[];
  /**
   * Targets of the redactions added, with the redaction's id: what is held of them, and of what was written again for
   * the same, becomes a tombstone.
   */
  readonly redacted: ReadonlyMap<string, string>;
  readonly last: number;
  readonly lamport: number;
};

/** How far above the company's highest lamport an entry may lie (J4). */
export const lamportReach = 1_000_000;

/** Stream, device and number: what no two entries share. */
export const numberOf = ({ stream, device, seq }: Pick<Entry, 'stream' | 'device' | 'seq'>): string =>
  `${stream}/${device}/${seq}`;

export const judge = (batch: Batch, there: There): Judgement => {
  const bench = new Bench(batch, there);
  const verdicts = batch.entries.map((sealed) => bench.judge(sealed));
  return { verdicts, ...bench.outcome() };
};

/** What is there, growing as the batch is judged. */
class Bench {
  readonly #batch: Batch;
  readonly #there: There;
  readonly #byId: Map<string, Pick<Logged, 'hash' | 'position'>>;
  readonly #numbers: Set<string>;
  readonly #added: Logged[] = [];
  #lamport: number;

  constructor(batch: Batch, there: There) {
    this.#batch = batch;
    this.#there = there;
    this.#byId = new Map(there.byId);
    this.#numbers = new Set(there.numbers);
    this.#lamport = there.lamport;
  }

  judge(sealed: Sealed): Verdict {
    const { id, company } = sealed.entry;
    if (company !== this.#batch.company) return { id, state: 'refused', reason: 'other-company' };
    const held = this.#byId.get(id);
    if (held?.hash === sealed.hash) return { id, state: 'kept', position: held.position };
    const reason = held === undefined ? this.#faultOf(sealed.entry) : 'tampered';
    return reason === undefined ? this.#add(sealed) : { id, state: 'refused', reason };
  }

  #faultOf(entry: Entry): Refusal | undefined {
    if (this.#numbers.has(numberOf(entry))) return 'forked';
    if (entry.lamport > this.#lamport + lamportReach) return 'lamport';
    const mayRedact = this.#batch.isOwner || this.#there.ownDevices.has(entry.device);
    return isRedaction(entry) && !mayRedact ? 'not-owner' : undefined;
  }

  #add(sealed: Sealed): Verdict {
    const { id, lamport } = sealed.entry;
    const { pusher, received } = this.#batch;
    const position = this.#there.last + this.#added.length + 1;
    this.#added.push({ ...sealed, position, pusher, received });
    this.#byId.set(id, { hash: sealed.hash, position });
    this.#numbers.add(numberOf(sealed.entry));
    this.#lamport = Math.max(this.#lamport, lamport);
    return { id, state: 'kept', position };
  }

  outcome(): Omit<Judgement, 'verdicts'> {
    const redacted = new Map(
      this.#added.flatMap(({ entry }) => {
        const target = targetOf(entry);
        return target === undefined ? [] : [[target, entry.id] as const];
      }),
    );
    const here = withOrigins(redacted, (id) => this.#added.find(({ entry }) => entry.id === id)?.entry);
    const added = this.#added.map((one) => {
      const by = redactionOf(one.entry, this.#there.redactedBy) ?? redactionOf(one.entry, here);
      return by === undefined ? one : redact(one, by);
    });
    return { added, redacted, last: this.#there.last + added.length, lamport: this.#lamport };
  }
}

const redactionOf = (entry: Entry, redactedBy: ReadonlyMap<string, string>): string | undefined =>
  redactedBy.get(entry.id) ?? redactedBy.get(originOf(entry));

/** Redactions by what they aim at, and by what that was written again for: one content, one redaction (S1a, R1). */
export const withOrigins = (
  redactedBy: ReadonlyMap<string, string>,
  held: (id: string) => Entry | undefined,
): ReadonlyMap<string, string> =>
  new Map(
    [...redactedBy].flatMap(([target, by]) => {
      const entry = held(target);
      return [...(entry === undefined ? [] : [originOf(entry)]), target].map((id) => [id, by] as const);
    }),
  );
