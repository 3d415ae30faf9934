export type ToSync =
  | { readonly type: 'open'; readonly database: string; readonly api: string; readonly company: string }
  | { readonly type: 'nudge' };

/** How the last meeting with the server went. */
export type SyncStatus = {
  readonly state: 'begun' | 'done' | 'no-answer' | 'not-allowed' | 'failed';
  /** Since when there is no answer, in milliseconds since 1970. */
  readonly since: number | undefined;
};

export type FromSync = { readonly status: SyncStatus };
