/** Exit codes of the contract. */
export const exit = {
  fine: 0,
  /** What was looked at has errors, or a check failed. */
  faulty: 1,
  usage: 2,
  /** A numerical failure that has a name. */
  numerical: 3,
  /** Our own mistake. */
  ours: 70,
} as const;
