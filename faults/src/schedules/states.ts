/** What must have happened at least once over a run, for the run to mean anything. */
export const states = [
  'acknowledged and killed before the pull',
  'crash between page and cursor',
  'crash in a write',
  'request lost',
  'reply lost after commit',
  'cut between pages',
  'session ended',
  'delivered twice',
  'delivered late',
  'messages overtook one another',
  'server restarted',
  'restored from an old backup',
  'restored without what it had acknowledged',
  'healed by another than the author',
  'import while another device writes',
  'profile copied',
  'storage evicted',
  'followed anew',
  'let go of a stream',
  'stream not let go of: unsent',
  'two tabs at once',
  'clock years off',
  'fork found at push',
  'fork found at pull',
  'fork after a restore with its author gone',
  'written again by another than the author',
  'twin found by its entries',
  'redaction before its target',
  'correction before its target',
  'redacted entry written again',
  'redaction refused',
  'lamport refused',
  'newer kind passed on',
  'gap in a vector healed',
  'own device of the server wrote',
  'rivals',
] as const;

export type State = (typeof states)[number];

/** How often each state was reached. */
export class Reached {
  readonly counts = new Map<State, number>();

  mark(state: State, times = 1): void {
    if (times > 0) this.counts.set(state, (this.counts.get(state) ?? 0) + times);
  }

  add(other: Reached): void {
    for (const [state, times] of other.counts) this.mark(state, times);
  }

  missing(): readonly State[] {
    return states.filter((state) => !this.counts.has(state));
  }
}
