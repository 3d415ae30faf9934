import type { Rival, Said } from '@brinewright/journal';
import { dated, type Sheet } from '@brinewright/papers';
import type { Made } from '../../made.ts';
import { clockTime, dayHere } from '../days.ts';
import { settingName, settingOrder } from './done.ts';

/** Two who did not know of one another said different things. */
export type RivalView = {
  readonly key: string;
  readonly what: string;
  readonly values: readonly RivalValue[];
};

export type RivalValue = {
  readonly text: string;
  readonly who: string;
  readonly when: string;
  readonly isInForce: boolean;
  /** The entry that would say it again; nothing where it cannot be written from here. */
  readonly again?: Again | undefined;
};

/** Kind without its version, payload and what it is about. */
export type Again = {
  readonly kind: string;
  readonly payload: string;
  readonly about: { readonly visit?: string | undefined; readonly conditioner?: string | undefined };
};

export type RemarkLine = { readonly says: string; readonly why?: string | undefined };

export type RemarksView = {
  readonly rivals: readonly RivalView[];
  readonly setAside: readonly RemarkLine[];
  readonly waiting: readonly RemarkLine[];
  /** Written by a newer program: what this one cannot read may matter. */
  readonly newer: readonly RemarkLine[];
};

/** What the journal says of itself, as far as it touches this visit or its unit. */
export const remarksView = (sheet: Sheet, { site, folded, subject }: Made): RemarksView => {
  const touches = ({ about }: { readonly about: Rival['about'] }): boolean =>
    (about.visit ?? folded.id) === folded.id && (about.conditioner ?? subject.id) === subject.id;
  return {
    rivals: site.rivals.filter(touches).map((rival) => rivalView(sheet, rival)),
    setAside: site.setAside.filter(touches).map((one) => ({
      says: saidOf(sheet, one.kind, one),
      why: one.issues.map(({ message }) => sheet.say(message)).join(' ') || undefined,
    })),
    waiting: site.waiting.filter(touches).map((one) => ({ says: saidOf(sheet, one.kind, one) })),
    newer: site.newer.filter(touches).map((one) => ({ says: saidOf(sheet, one.kind, one) })),
  };
};

const saidOf = (sheet: Sheet, kind: string, said: Said): string =>
  sheet.word('app.hand-over.said', {
    kind: kindName(sheet, kind),
    who: said.author,
    when: whenSaid(sheet, said),
  });

const whenSaid = (sheet: Sheet, { at }: Said): string => `${dated(sheet, dayHere(at))}, ${clockTime(at)}`;

/** A setting by its own name; any other by what kind of entry it is, with the place in it. */
const whatName = (sheet: Sheet, kind: string, what: string): string => {
  const setting = settingOrder.find((name) => name === what);
  if (setting !== undefined && kind.startsWith('setting-')) return settingName(sheet, setting);
  return what === '' ? kindName(sheet, kind) : `${kindName(sheet, kind)}, ${what}`;
};

const kindName = (sheet: Sheet, kind: string): string => {
  const name = kinds.find((one) => one === plainKind(kind));
  return name === undefined ? plainKind(kind) : sheet.word(`app.kind.${name}`);
};

const kinds = [
  'site-opened',
  'site-described',
  'water-analysed',
  'demand-described',
  'supply-described',
  'conditioner-added',
  'conditioner-described',
  'visit-started',
  'visit-noted',
  'complaint-told',
  'history-told',
  'tell-answered',
  'reading-taken',
  'decision-made',
  'gate-checked',
  'apart-noted',
  'operation-done',
  'part-used',
  'stock-listed',
  'setting-found',
  'setting-set',
  'meter-read',
  'proof-reading-taken',
  'caution-acknowledged',
  'photo-taken',
  'signature-given',
  'handed-over',
  'corrected',
] as const;

const plainKind = (kind: string): string => kind.replace(/\/\d+$/u, '');

const rivalView = (sheet: Sheet, { about, kind, what, values }: Rival): RivalView => ({
  key: [about.visit, about.conditioner, kind, what].join(' '),
  what: whatName(sheet, kind, what),
  values: values.map((one, place) => ({
    text: textOf(one.value),
    who: one.author,
    when: whenSaid(sheet, one),
    isInForce: place === 0,
    again: againOf(kind, what, about, one.value),
  })),
});

const textOf = (value: unknown): string => (typeof value === 'string' ? value : JSON.stringify(value));

/** Fields are written again one at a time; answers, operations and decisions are whole payloads already. */
const againOf = (kind: string, what: string, about: Rival['about'], value: unknown): Again | undefined => {
  const name = plainKind(kind);
  if (what === '' || value === null || name === 'visit-started') return undefined;
  const payload = wholeKinds.includes(name) ? value : nested(fieldNames.get(what) ?? what.split('.'), value);
  return { kind: describes.get(name) ?? name, payload: JSON.stringify(payload), about };
};

const wholeKinds = [
  'tell-answered',
  'decision-made',
  'operation-done',
  'part-used',
  'complaint-told',
  'caution-acknowledged',
  'handed-over',
];

/** Where a visit calls a field otherwise than the entry that says it. */
const fieldNames: ReadonlyMap<string, readonly string[]> = new Map([
  ['meterNow', ['volume']],
  ['stock', ['lines']],
]);

/** What was opened or added once is described from then on. */
const describes: ReadonlyMap<string, string> = new Map([
  ['site-opened', 'site-described'],
  ['conditioner-added', 'conditioner-described'],
]);

const nested = ([first = '', ...rest]: readonly string[], value: unknown): unknown => ({
  [first]: rest.length === 0 ? value : nested(rest, value),
});
