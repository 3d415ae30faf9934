import { readData, schemaIssues } from '@brinewright/equipment';
import { type Issue, message } from '@brinewright/words';
import type { z } from 'zod';
import type { Entry, Json } from '../entry/entry.ts';
import { isKindName, type KindName, type Payload, payloads, scopeOf } from './payloads.ts';
import { newestVersion, type Upcasts, upcast, upcasts } from './versions.ts';

/** What to do with each kind, given its payload as read and as written; kinds without a handler are passed over. */
export type Handlers<To> = {
  readonly [K in KindName]?: (to: To, payload: Payload<K>, written: Json) => void;
};

/** A payload that could be read, ready to be told to the handler of its kind. */
export type Fact = {
  readonly name: KindName;
  readonly tell: <To>(handlers: Handlers<To>, to: To) => void;
};

export type PayloadRead =
  | { readonly state: 'read'; readonly fact: Fact }
  | { readonly state: 'newer' }
  | { readonly state: 'set-aside'; readonly issues: readonly Issue[] };

type Schemas = { readonly [K in KindName]: z.ZodType<Payload<K>> };
const schemas: Schemas = payloads;

/** What an entry says. A kind or version not known is newer; a payload that breaks its schema is set aside (F4). */
export const readPayload = (entry: Entry, payload: Json, steps: Upcasts = upcasts): PayloadRead => {
  const { name, version } = kindOf(entry);
  if (!isKindName(name) || version > newestVersion(name, steps)) return { state: 'newer' };
  if (lacksAbout(name, entry)) return { state: 'set-aside', issues: [aboutMissing(name, entry)] };
  return decoded(name, entry, upcast(name, version, payload, steps));
};

/** The payload of an entry of one kind, where it is of that kind and can be read. */
export const payloadAs = <K extends KindName>(kind: K, entry: Entry): Payload<K> | undefined => {
  const { name, version } = kindOf(entry);
  if (name !== kind || version > newestVersion(kind)) return undefined;
  const read = schemas[kind].safeParse(upcast(kind, version, entry.payload));
  return read.success ? read.data : undefined;
};

export const kindOf = ({ kind }: Entry): { readonly name: string; readonly version: number } => {
  const [name = '', version] = kind.split('/');
  return { name, version: Number(version) };
};

const decoded = <K extends KindName>(name: K, entry: Entry, payload: Json): PayloadRead => {
  const read = schemas[name].safeParse(payload);
  if (!read.success) {
    const issues = schemaIssues(read.error, schemas[name], readData(entry.kind, payload));
    return { state: 'set-aside', issues };
  }
  const { data } = read;
  return { state: 'read', fact: { name, tell: (handlers, to) => handlers[name]?.(to, data, payload) } };
};

/** An entry that does not say which visit or unit it is about. */
const aboutMissing = (name: KindName, { kind }: Entry): Issue => ({
  code: 'record.about-missing',
  severity: 'error',
  at: ['about'],
  place: { file: kind, line: 1, column: 1 },
  message: message('record.about-missing', { scope: message(`record.scope.${scopeOf(name)}`) }),
  mend: message('record.about-missing.mend'),
});

const lacksAbout = (name: KindName, { about }: Entry): boolean => {
  const scope = scopeOf(name);
  return (
    (scope === 'visit' && about.visit === undefined) ||
    (scope === 'conditioner' && about.conditioner === undefined)
  );
};
