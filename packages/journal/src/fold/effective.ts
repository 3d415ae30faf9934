import canonicalize from 'canonicalize';
import type { Entry, Json } from '../entry/entry.ts';
import { isTombstone } from '../entry/read-entry.ts';
import type { Payload } from '../kinds/payloads.ts';
import { type Fact, kindOf, payloadAs, readPayload } from '../kinds/read-payload.ts';
import type { Newer, Rival, Said, SetAside, Waiting } from './folded.ts';
import { differ, type Written, withWritten } from './heads.ts';
import { oneOfEach, type Standing } from './one-of-each.ts';
import { saidOf } from './said.ts';

/** A fact in force, as it was said or as a correction put it, at the place of the entry that first said it. */
export type Effective = { readonly entry: Entry; readonly fact: Fact };

export type EffectiveFacts = {
  /** In fold order. */
  readonly facts: readonly Effective[];
  /** Taken back by a correction; what hangs on them waits for nothing. */
  readonly withdrawn: Entry[];
  readonly rivals: Rival[];
  readonly setAside: SetAside[];
  readonly waiting: Waiting[];
  readonly newer: Newer[];
};

type Correction = Payload<'corrected'>;

/** Repetitions, redactions, corrections and versions settled; what is left are facts (F1, F3, F4, R1). */
export const effectiveFacts = (all: readonly Entry[]): EffectiveFacts => {
  const standing = oneOfEach(all);
  const gone = redactedOf(standing);
  const out: EffectiveFacts & { readonly facts: Effective[] } = {
    facts: [],
    withdrawn: [],
    rivals: [],
    setAside: [],
    waiting: [],
    newer: [],
  };
  const isGone = (entry: Entry): boolean => isTombstone(entry) || gone.has(entry);
  const corrections = correctionsOf(standing, isGone, out);
  for (const entry of standing.entries) {
    const { name } = kindOf(entry);
    if (name === 'corrected' || name === 'redacted' || isGone(entry)) continue;
    const payload = inForce(entry, corrections.get(entry), out);
    if (payload === undefined) out.withdrawn.push(entry);
    else takeIn(entry, payload, out);
  }
  return out;
};

const takeIn = (entry: Entry, payload: Json, out: { readonly facts: Effective[] } & EffectiveFacts): void => {
  const read = readOnce(entry, payload);
  if (read.state === 'read') out.facts.push({ entry, fact: read.fact });
  else if (read.state === 'newer') out.newer.push(remark(entry));
  else out.setAside.push({ ...remark(entry), issues: read.issues });
};

/** Reading is most of the work of a fold and depends on the payload alone, which never changes. */
const readOnce = (entry: Entry, payload: Json): ReturnType<typeof readPayload> => {
  if (payload !== entry.payload) return readPayload(entry, payload);
  const known = alreadyRead.get(entry);
  if (known !== undefined) return known;
  const read = readPayload(entry, payload);
  alreadyRead.set(entry, read);
  return read;
};
const alreadyRead = new WeakMap<Entry, ReturnType<typeof readPayload>>();

/** Entries whose content was taken out, whether or not it still lies here (R1). A redaction itself stays. */
const redactedOf = ({ entries, byId }: Standing): ReadonlySet<Entry> =>
  new Set(
    entries.flatMap((entry) => {
      const target = payloadAs('redacted', entry)?.target;
      const found = target === undefined ? undefined : byId.get(target);
      return found === undefined || kindOf(found).name === 'redacted' ? [] : [found];
    }),
  );

type Corrections = ReadonlyMap<Entry, readonly Written<Correction>[]>;

/** Corrections by what they correct, those that others have seen left out. One without its target waits (F3). */
const correctionsOf = (
  { entries, byId }: Standing,
  isGone: (entry: Entry) => boolean,
  out: EffectiveFacts,
): Corrections => {
  const found = new Map<Entry, readonly Written<Correction>[]>();
  for (const entry of entries) {
    if (kindOf(entry).name !== 'corrected' || isGone(entry)) continue;
    const correction = payloadAs('corrected', entry);
    const target = correction === undefined ? undefined : byId.get(correction.target);
    if (correction === undefined) setAsideCorrection(entry, out);
    else if (target === undefined) out.waiting.push({ ...remark(entry), for: correction.target });
    else if (isRuledOut(entry, target)) out.setAside.push({ ...remark(entry), issues: [] });
    else if (!isGone(target) && canRead(target, correction, entry, out))
      found.set(target, withWritten(found.get(target) ?? [], { entry, value: correction }));
  }
  return found;
};

/** A correction never targets a correction or a redaction, nor anything in another stream. */
const isRuledOut = (entry: Entry, target: Entry): boolean =>
  target.stream !== entry.stream || ['corrected', 'redacted'].includes(kindOf(target).name);

const setAsideCorrection = (entry: Entry, out: EffectiveFacts): void => {
  const read = readPayload(entry, entry.payload);
  if (read.state === 'newer') out.newer.push(remark(entry));
  else out.setAside.push({ ...remark(entry), issues: read.state === 'set-aside' ? read.issues : [] });
};

/** A new payload must fit the kind of its target; else the correction is set aside, and what it corrects stands. */
const canRead = (target: Entry, correction: Correction, entry: Entry, out: EffectiveFacts): boolean => {
  if (!('payload' in correction)) return true;
  const read = readPayload(target, correction.payload);
  if (read.state !== 'set-aside') return true;
  out.setAside.push({ ...remark(entry), issues: read.issues });
  return false;
};

/** The payload as the last correction has it; nothing where that withdrew it. */
const inForce = (
  entry: Entry,
  corrections: readonly Written<Correction>[] | undefined,
  out: EffectiveFacts,
): Json | undefined => {
  const last = corrections?.at(-1);
  if (corrections === undefined || last === undefined) return entry.payload;
  if (differ(corrections, contentOf))
    out.rivals.push({
      about: entry.about,
      kind: entry.kind,
      what: '',
      values: corrections
        .toReversed()
        .map((one) => ({ ...saidOf(one.entry), value: correctedTo(one.value) ?? null })),
    });
  return correctedTo(last.value);
};

const correctedTo = (correction: Correction): Json | undefined =>
  'payload' in correction ? correction.payload : undefined;

const contentOf = (correction: Correction): string => canonicalize(correctedTo(correction) ?? null) ?? '';

const remark = (entry: Entry): Said & { readonly kind: string; readonly about: Entry['about'] } => ({
  ...saidOf(entry),
  kind: entry.kind,
  about: entry.about,
});
