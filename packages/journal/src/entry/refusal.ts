/** Why an entry is refused; only ever for its envelope (S1). Each has a sentence in the catalogue, `record.refused.*`. */
export const refusals = [
  'not-json',
  'malformed',
  'too-large',
  'other-company',
  'tampered',
  'forked',
  'lamport',
  'not-owner',
] as const;
export type Refusal = (typeof refusals)[number];
