import type { Draft, Json } from '@brinewright/journal';

export type ReadingTyped = {
  /** Text with its unit, or nothing where it was not measured. */
  readonly raw: string | undefined;
  readonly outlet: string | undefined;
  /** An outcome of the look at the salt. */
  readonly salt: string | undefined;
};

export type ReadingOf = {
  readonly stream: string;
  readonly conditioner: string;
  readonly visit: string;
  readonly date: string;
  readonly by: string;
  readonly note: string;
  readonly at: string;
};

/** A visit of its own that is over as soon as it is written. */
export const justAReading = (of: ReadingOf, { raw, outlet, salt }: ReadingTyped): readonly Draft[] => {
  const say = (kind: string, payload: Json, about: Draft['about'] = {}): Draft => ({
    stream: of.stream,
    kind: `${kind}/1`,
    payload,
    about: { visit: of.visit, ...about },
  });
  const taken = (test: string, read: { readonly value: string } | { readonly state: string }): Draft =>
    say('reading-taken', { test, ...read, at: of.at }, { conditioner: of.conditioner });
  return [
    say('visit-started', { subject: of.conditioner, date: of.date, by: { name: of.by } }),
    say('visit-noted', { note: of.note }),
    ...(raw === undefined ? [] : [taken('hardness-raw', { value: raw })]),
    ...(outlet === undefined ? [] : [taken('hardness-outlet', { value: outlet })]),
    ...(salt === undefined ? [] : [taken('salt-look', { state: salt })]),
    say('handed-over', { at: of.at }),
  ];
};
