import type { StackPiece } from '@brinewright/equipment';

/** The stack, where its seals stand, and which way it goes. */
export type ExplodedStack = {
  /** From the mouth of the bore. */
  readonly pieces: readonly StackPiece[];
  /** In metres from the datum of the bore, mouth first; of the definition, or placed by us. */
  readonly sealsAt: readonly number[];
  readonly schematic: boolean;
  readonly way: 'out' | 'in';
  /** How many have gone that way: drawn out from the mouth, or put in from the far end. */
  readonly moved: number;
};

/** A piece along the axis, in metres from the mouth of the bore. */
export type Placed = {
  readonly piece: StackPiece;
  /** Its number among its kind: seal 4. */
  readonly number: number;
  readonly from: number;
  readonly to: number;
};

export type PieceState = 'out' | 'next' | 'in';

/** No definition gives the thickness of these; only the places of the seals are to scale. Invented. */
const thickness = { seal: 0.005, plug: 0.014, ring: 0.005, spacer: 0.018 } as const;

/** Each piece with its length: a spacer fills what its two seals leave. */
export const placedPieces = ({ pieces, sealsAt }: ExplodedStack): readonly Placed[] => {
  const counts = new Map<StackPiece['is'], number>();
  let at = 0;
  return pieces.map((piece) => {
    const number = (counts.get(piece.is) ?? 0) + 1;
    const from = at;
    at += lengthOf(piece, counts.get('seal') ?? 0, sealsAt);
    counts.set(piece.is, number);
    return { piece, number, from, to: at };
  });
};

const lengthOf = (piece: StackPiece, sealsBefore: number, sealsAt: readonly number[]): number => {
  const before = sealsAt[sealsBefore - 1];
  const after = sealsAt[sealsBefore];
  if (piece.is !== 'spacer' || before === undefined || after === undefined) return thickness[piece.is];
  return Math.max(0.002, after - before - thickness.seal);
};

export const stateOf = (index: number, { pieces, way, moved }: ExplodedStack): PieceState => {
  const out = way === 'out' ? moved : pieces.length - moved;
  const next = way === 'out' ? out : out - 1;
  if (index === next) return 'next';
  return index < out ? 'out' : 'in';
};
