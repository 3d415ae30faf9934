import { type Family, type Fault, type Fits, fitsVariant } from '@brinewright/equipment';
import { bodyFromPorts, leakOf } from '@brinewright/physics';
import { mean, sum } from '../recognition/bayes.ts';
import type { Belief } from '../recognition/recognition.ts';
import { variantSpace } from '../recognition/variant-space.ts';
import type { Situation } from '../situation/situation.ts';
import { noneOfThese } from './diagnosis.ts';

/** The faults that can be, and none of these last, with their odds before anything was said or read. */
export type Hypotheses = {
  readonly ids: readonly string[];
  readonly faults: readonly Fault[];
  readonly prior: Float64Array;
};

/** Odds of a fault nobody listed, before anything was seen; ours. */
const noneOdds = 0.05;

/**
 * Faults of this kind of unit whose leak the bore can have, weighed by their odds and by how far the variants they
 * fit are believed.
 */
export const hypothesesOf = (s: Situation, belief: Belief): Hypotheses => {
  const weighed = s.family.faults
    .filter((fault) => fault.kinds.includes(s.kind) && canLeak(s, fault))
    .map((fault) => ({ fault, odds: fault.odds * shareFitting(s.family, fault.fits, belief) }))
    .filter(({ odds }) => odds > 0);
  const total = sum(weighed.map(({ odds }) => odds));
  return {
    ids: [...weighed.map(({ fault }) => fault.id), noneOfThese],
    faults: weighed.map(({ fault }) => fault),
    prior: Float64Array.from([
      ...weighed.map(({ odds }) => ((1 - noneOdds) * odds) / total),
      total > 0 ? noneOdds : 1,
    ]),
  };
};

/** A bore that is not described may leak anywhere. */
const canLeak = ({ family, described }: Situation, fault: Fault): boolean =>
  fault.path === undefined || !described || family.bores.length === 0 || sealsOf(family, fault).length > 0;

const seals = new WeakMap<Family, Map<string, readonly number[]>>();

/** Seals of the family's bores that part the two ports of a leak, numbered from the drive side. */
export const sealsOf = (family: Family, fault: Fault): readonly number[] => {
  const known = seals.get(family) ?? new Map<string, readonly number[]>();
  seals.set(family, known);
  const found = known.get(fault.id) ?? sealsBetween(family, fault.path);
  known.set(fault.id, found);
  return found;
};

const sealsBetween = (family: Family, path: Fault['path']): readonly number[] => {
  if (path === undefined) return [];
  return family.bores.flatMap(({ ports }) => {
    const body = bodyFromPorts(ports);
    return body.seals.filter((seal) => leakOf(body, seal).ports.every((port) => path.includes(port)));
  });
};

const fitting = new WeakMap<Family, Map<Fits, Float64Array>>();

/** How far the variants that something fits are believed. */
export const shareFitting = (family: Family, fits: Fits, belief: Belief): number => {
  if (Object.keys(fits).length === 0) return 1;
  const known = fitting.get(family) ?? new Map<Fits, Float64Array>();
  fitting.set(family, known);
  const { variants } = variantSpace(family);
  const row =
    known.get(fits) ?? Float64Array.from(variants, (variant) => (fitsVariant(fits, variant) ? 1 : 0));
  known.set(fits, row);
  return mean(belief.odds, row);
};
