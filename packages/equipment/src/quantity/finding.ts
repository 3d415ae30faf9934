import type { QuantityProblem } from '@brinewright/units';
import { quantityProblemMessages } from '@brinewright/words';
import type { Finding } from '../issue/codes.ts';

/** A quantity's problem in the words that `words` has for it. */
export const quantityFinding = (problem: QuantityProblem): Finding => ({
  code: `quantity.${problem.what}`,
  ...quantityProblemMessages(problem),
});
