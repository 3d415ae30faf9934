import { isPair, isScalar, type Scalar } from 'yaml';

/** A value that a comma inside braces or brackets broke: `5,5 gpm` is read as `5` and `5 gpm`. */
export type Rejoined = {
  readonly offset: number;
  /** As it was meant to be one value. */
  readonly text: string;
  /** With a point, where the comma was a decimal sign; absent where it stands between thousands. */
  readonly mended?: string;
  /** Items that belong to it, the first one included. */
  readonly pieces: number;
};

/** The value of a pair with the keys behind it that are no keys, or of an item with its neighbours. */
export const rejoined = (items: readonly unknown[], index: number): Rejoined | undefined => {
  const isInMap = isPair(items[index]);
  const first = plain(isInMap ? pairValue(items[index]) : items[index]);
  if (first === undefined) return undefined;
  const others: Piece[] = [];
  for (const item of items.slice(index + 1)) {
    const next = plain(isInMap ? bareKeyOf(item) : item);
    if (next === undefined || !isBroken(others.at(-1) ?? first, next, isInMap)) break;
    others.push(next);
  }
  if (others.length === 0) return undefined;
  return { offset: first.start, ...texts(first, others), pieces: 1 + others.length };
};

type Piece = { readonly source: string; readonly start: number; readonly end: number };

const pairValue = (pair: unknown): unknown => (isPair(pair) ? pair.value : undefined);

/** A key without a colon. */
const bareKeyOf = (pair: unknown): unknown => (isPair(pair) && pair.value === null ? pair.key : undefined);

const plain = (node: unknown): Piece | undefined => (isScalar(node) ? pieceOf(node) : undefined);

const pieceOf = ({ type, source, range }: Scalar): Piece | undefined =>
  type !== 'PLAIN' || source === undefined || range === undefined || range === null
    ? undefined
    : { source, start: range[0], end: range[1] };

/** A comma right between two figures; in a list the second one needs a unit, or 3,6 would be one. */
const isBroken = (last: Piece, next: Piece, isInMap: boolean): boolean =>
  next.start === last.end + 1 &&
  /\d$/u.test(last.source) &&
  (isInMap ? /^\d/u : /^\d+\s+[\p{L}°%]/u).test(next.source);

const texts = (first: Piece, others: readonly Piece[]): Pick<Rejoined, 'text' | 'mended'> => {
  const text = [first, ...others].map(({ source }) => source).join(',');
  const mended = others.reduce(
    (all, { source }) => `${all}${signBetween(all, source)}${source}`,
    first.source,
  );
  return mended === text ? { text } : { text, mended };
};

/** A comma between thousands stays; any other was a decimal sign. */
const signBetween = (before: string, after: string): ',' | '.' =>
  /(?<!\d)[1-9]\d{0,2}$/u.test(before) && /^\d{3}(?!\d)/u.test(after) ? ',' : '.';
