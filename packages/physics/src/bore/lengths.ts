import type { BoreBody, Chamber, SealNo } from './body.ts';

/** From and to along an axis, m. */
export type Span = readonly [from: number, to: number];

/** Grooves let water along, everything else is full-width land. Piston coordinate = bore coordinate less shift. */
export type Piston = { readonly grooves: readonly Span[]; readonly length: Span };

/** How far a groove must reach past a seal to open it, and land past a seal to shut it, m. */
export type SealRule = { readonly reach: number; readonly cover: number };

export type BoreLengths = {
  readonly chambers: readonly (Chamber & { readonly from: number; readonly to: number })[];
  readonly seals: readonly { readonly id: SealNo; readonly at: number }[];
  readonly fixedPassages: readonly (readonly [string, string])[];
  readonly piston: Piston;
  readonly rule: SealRule;
};

/** A bore with a piston in it. `schematic`: the lengths are made up so that the joins come out right. */
export type Bore = { readonly body: BoreBody; readonly lengths: BoreLengths; readonly schematic: boolean };

/** Measured lengths that cannot all be true. */
export type LengthProblem =
  | { readonly kind: 'seal-count'; readonly seals: number; readonly wanted: number }
  | { readonly kind: 'seal-twice'; readonly seal: SealNo }
  | { readonly kind: 'seal-off-wall'; readonly seal: SealNo; readonly at: number; readonly wall: number }
  | { readonly kind: 'chambers-apart'; readonly chambers: readonly [string, string] }
  | { readonly kind: 'chamber-backwards'; readonly chamber: string }
  | { readonly kind: 'unknown-chamber'; readonly chamber: string }
  | { readonly kind: 'groove-off-piston'; readonly groove: Span };

export type BoreResult =
  | { readonly ok: true; readonly bore: Bore }
  | { readonly ok: false; readonly problems: readonly LengthProblem[] };

/** Lengths are told apart from here on: far below any tape, far above rounding. */
export const sameLength = 1e-7;

const apart = (a: number, b: number): boolean => Math.abs(a - b) > sameLength;

const chamberProblems = ({ chambers }: BoreLengths): readonly LengthProblem[] =>
  chambers.flatMap((chamber, place): LengthProblem[] => {
    const next = chambers[place + 1];
    const backwards = !(chamber.from < chamber.to);
    const gap = next !== undefined && apart(chamber.to, next.from);
    return [
      ...(backwards ? [{ kind: 'chamber-backwards' as const, chamber: chamber.id }] : []),
      ...(gap ? [{ kind: 'chambers-apart' as const, chambers: [chamber.id, next.id] as const }] : []),
    ];
  });

const sealProblems = ({ chambers, seals }: BoreLengths): readonly LengthProblem[] => {
  const wanted = Math.max(0, chambers.length - 1);
  if (seals.length !== wanted) return [{ kind: 'seal-count', seals: seals.length, wanted }];
  return seals.flatMap(({ id, at }, place): LengthProblem[] => {
    const wall = chambers[place]?.to ?? at;
    const twice = seals.findIndex((seal) => seal.id === id) !== place;
    return [
      ...(twice ? [{ kind: 'seal-twice' as const, seal: id }] : []),
      ...(apart(at, wall) ? [{ kind: 'seal-off-wall' as const, seal: id, at, wall }] : []),
    ];
  });
};

const passageProblems = ({ chambers, fixedPassages }: BoreLengths): readonly LengthProblem[] =>
  fixedPassages
    .flat()
    .filter((id) => !chambers.some((chamber) => chamber.id === id))
    .map((chamber) => ({ kind: 'unknown-chamber', chamber }));

const pistonProblems = ({ piston }: BoreLengths): readonly LengthProblem[] =>
  piston.grooves
    .filter(([from, to]) => !(piston.length[0] <= from && from < to && to <= piston.length[1]))
    .map((groove) => ({ kind: 'groove-off-piston', groove }));

/**
 * A bore from measured lengths: chambers end to end from the drive, a seal at each wall between them, and a piston.
 *
 * Lengths that cannot all be true come back as problems. Checked: checks/src/published/bore.ts.
 */
export const boreFromLengths = (lengths: BoreLengths): BoreResult => {
  const problems = [
    ...chamberProblems(lengths),
    ...sealProblems(lengths),
    ...passageProblems(lengths),
    ...pistonProblems(lengths),
  ];
  if (problems.length > 0) return { ok: false, problems };
  const body = {
    chambers: lengths.chambers.map(({ id, port }) => ({ id, port })),
    seals: lengths.seals.map((seal) => seal.id),
    passages: lengths.fixedPassages,
  };
  return { ok: true, bore: { body, lengths, schematic: false } };
};
