/** One tolerance per number: a share of the expected value, or an amount. */
export type Tolerance = { readonly rel: number } | { readonly abs: number };

/** What a family states; nothing is judged yet. Numbers are compared within the tolerance, words exactly. */
export type Claim = {
  readonly id: string;
  readonly title: string;
  /** Who computed or published the expected value. */
  readonly source: string;
  /** As the data file has it: seen, computed, memory … */
  readonly mark: string;
  readonly computed: number | string;
  readonly expected: number | string;
  readonly tolerance: Tolerance;
  /** Why the row is shown but proves nothing, beside a mark of memory. */
  readonly notCounted?: string;
};

export type Verdict = 'pass' | 'fail' | 'shown';

export type CheckRow = Claim & {
  /** Computed minus expected; words have none. */
  readonly difference?: number;
  readonly verdict: Verdict;
};

/** A value from memory is shown beside ours and never counted. */
export const isCounted = (claim: Claim): boolean =>
  !claim.mark.startsWith('memory') && claim.notCounted === undefined;

const allowed = (tolerance: Tolerance, expected: number): number =>
  'rel' in tolerance ? tolerance.rel * Math.abs(expected) : tolerance.abs;

/** Rounding of the decimal difference itself must not fail a value that sits exactly on its tolerance. */
const rounding = 1e-12;

export const agrees = ({ computed, expected, tolerance }: Claim): boolean => {
  if (typeof computed === 'string' || typeof expected === 'string') return computed === expected;
  const slack = rounding * Math.max(Math.abs(computed), Math.abs(expected));
  return Math.abs(computed - expected) <= allowed(tolerance, expected) + slack;
};

export const judge = (claim: Claim): CheckRow => {
  const { computed, expected } = claim;
  const verdict = isCounted(claim) ? (agrees(claim) ? 'pass' : 'fail') : 'shown';
  return typeof computed === 'number' && typeof expected === 'number'
    ? { ...claim, difference: computed - expected, verdict }
    : { ...claim, verdict };
};
