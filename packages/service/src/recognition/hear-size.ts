import type { MeasuredTell } from '@brinewright/equipment';
import { parseQuantity } from '@brinewright/units';
import type { Situation } from '../situation/situation.ts';
import type { TellAnswer } from '../visit/schema.ts';
import { answered, type Heard } from './evidence.ts';
import { noSuchSize, notASize } from './hear-issues.ts';
import { trustOf } from './tell-table.ts';
import { variantSpace } from './variant-space.ts';

/** A size this many standard uncertainties off speaks against a variant. */
const farOff = 3;

/**
 * A measured size: a normal density around the size each variant would show, over a floor that is even across
 * all sizes and six uncertainties more. A variant whose size nobody wrote down gets the even share alone.
 */
export const hearSize = (s: Situation, tell: MeasuredTell, answer: TellAnswer): Heard => {
  const parsed = parseQuantity(answer.answer, 'length');
  if (!parsed.ok) return { evidence: [], issues: [notASize(s, answer, parsed.problem)] };
  const off = variantSpace(s.family).variants.map((variant) => {
    const expected = tell.expected[variant[tell.feature] ?? ''];
    return expected === undefined ? undefined : Math.abs(parsed.quantity.si - expected.si) / tell.u.si;
  });
  const denied = Uint8Array.from(off, (z) => (z !== undefined && z > farOff ? 1 : 0));
  if (denied.every((no) => no === 1))
    return { evidence: [], issues: [noSuchSize(s, tell, answer, parsed.quantity)] };
  return { evidence: [answered(answer, density(tell, off), denied, trustOf(tell))], issues: [] };
};

/** Relative to the peak of the normal density. */
const density = (tell: MeasuredTell, off: readonly (number | undefined)[]): Float64Array => {
  const sizes = Object.values(tell.expected).map(({ si }) => si);
  const width = Math.max(...sizes) - Math.min(...sizes) + 6 * tell.u.si;
  const even = (tell.u.si * Math.sqrt(2 * Math.PI)) / width;
  const trust = trustOf(tell);
  return Float64Array.from(off, (z) =>
    z === undefined ? even : trust * Math.exp(-(z * z) / 2) + (1 - trust) * even,
  );
};
