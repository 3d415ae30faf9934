import { medianOfRepeats } from '@brinewright/physics';
import { parseQuantity, quantity } from '@brinewright/units';
import { type Issue, quantityProblemMessages } from '@brinewright/words';
import type { FigureId } from '../derivation/figure.ts';
import type { Ledger } from '../derivation/ledger.ts';
import type { Situation } from '../situation/situation.ts';
import { wildIssue } from '../situation/wild.ts';
import type { CheckDefinition } from './checks.ts';

type Measured = Extract<CheckDefinition, { u: unknown }>;

/** Median of the repeats as a figure; its uncertainty is the stated one where somebody stated it. */
export const readProof = (
  s: Situation,
  { id: check, read: kind, u }: Measured,
  ledger: Ledger,
  issues: Issue[],
): FigureId | undefined => {
  const number = (place: number, field: 'value' | 'u', text: string | undefined): number | undefined => {
    if (text === undefined) return undefined;
    const parsed = parseQuantity(text, kind);
    if (parsed.ok) return parsed.quantity.si;
    const at = ['proofs', place, field] as const;
    issues.push({ code: 'quantity', severity: 'warning', at, ...quantityProblemMessages(parsed.problem) });
    return undefined;
  };
  const read = (s.visit.proofs ?? []).flatMap((proof, place) => {
    if (proof.check !== check) return [];
    const value = number(place, 'value', proof.value);
    return value === undefined ? [] : [{ value, u: number(place, 'u', proof.u) ?? 0 }];
  });
  if (read.length === 0) return undefined;
  const stated = read.find((one) => one.u > 0)?.u ?? u.si;
  const { median, uncertainty, wild } = medianOfRepeats(
    read.map(({ value }) => value),
    stated,
  );
  if (wild.length > 0) issues.push(wildIssue(['proofs'], check, wild.length, read.length));
  const id = `proof.${check}.reading`;
  ledger.given(id, { value: quantity(kind, median), how: 'measured', u: quantity(kind, uncertainty) });
  return id;
};
