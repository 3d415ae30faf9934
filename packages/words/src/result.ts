import type { Message } from './message.ts';

/** Where in a document or definition: keys and places from the root. */
export type Path = readonly (string | number)[];

export type Severity = 'error' | 'warning' | 'note';

/** Where in a file, counted from 1. */
export type Place = { readonly file: string; readonly line: number; readonly column: number };

/** Something to tell about an input: what, where, why and how to mend it. `code` is stable and documented. */
export type Issue = {
  readonly code: string;
  readonly severity: Severity;
  readonly at: Path;
  readonly place?: Place;
  readonly message: Message;
  readonly mend?: Message;
};

/** Expected failure is data. */
export type Result<T> =
  | { readonly ok: true; readonly value: T; readonly issues: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };
