import { message } from '@brinewright/words';
import { element, type Markup } from '../../markup/element.ts';
import { type Point, polygon, polyline } from '../../markup/path.ts';
import { fillOf } from '../../markup/patterns.ts';
import { textWidth, wrapped } from '../../markup/text-width.ts';
import { sayKey } from '../../say.ts';
import { type DrawingOptions, drawingText, text } from '../drawing.ts';
import { pieceWords } from '../stack-list.ts';
import { inBore, onBench } from './piece-drawn.ts';
import { type Span, type StackFrame, slice, stackFrame } from './stack-frame.ts';
import { type ExplodedStack, type PieceState, type Placed, placedPieces } from './stack-model.ts';

export type Scene = {
  readonly stack: ExplodedStack;
  readonly placed: readonly Placed[];
  readonly frame: StackFrame;
  readonly options: DrawingOptions;
};

export const sceneOf = (stack: ExplodedStack, options: DrawingOptions): Scene => {
  const placed = placedPieces(stack);
  return { stack, placed, frame: stackFrame(stack, placed, options.width), options };
};

export const patterns = ['hatch', 'casting', 'fine-metal'] as const;

export const inPaintingOrder = ({ placed }: Scene): readonly number[] =>
  placed.map((_, index) => index).toReversed();

export const pieceAs = (scene: Scene, index: number, state: PieceState): readonly Markup[] => {
  const { frame, options, placed } = scene;
  const piece = placed[index];
  if (piece === undefined) return [];
  const { is } = piece.piece;
  if (state === 'in')
    return [
      ...inBore(frame, is, frame.inBore(piece), options.id),
      ...(index === placed.length - 1 ? stillIn(scene) : []),
    ];
  const isNext = state === 'next';
  const span = isNext ? frame.apart(piece, index) : frame.onBench(piece, index);
  return [
    ...onBench(frame, is, span, { id: options.id, isNext }),
    ...(is === 'seal' ? balloon(scene, index, isNext) : []),
    ...(isNext ? wayOf(scene, piece) : []),
    ...(!isNext && index === 0 ? benchName(scene) : []),
  ];
};

/** The bore in section with its closed end, and the axis through everything. */
export const ground = ({ frame, options, stack }: Scene): readonly Markup[] => {
  const { across } = frame.radius;
  const wall = across + 13;
  const casting = (span: { from: number; to: number }, edges: readonly [number, number]): Markup =>
    element('path', {
      d: polygon(slice(frame, span, edges)),
      class: 'cut',
      style: `fill:${fillOf(options.id, 'casting')}`,
    });
  const { from, to } = frame.bore;
  return [
    element('path', { d: polygon(slice(frame, frame.bore, [-across, across])), class: 'w-field' }),
    casting(frame.bore, [-wall, -across]),
    casting(frame.bore, [across, wall]),
    casting({ from: to - 6, to }, [-across, across]),
    element('path', {
      d: polyline([frame.axis(2), frame.axis(Math.max(from, frame.width - 2))]),
      class: 'axis',
    }),
    ...(stack.schematic ? notToScale(options) : []),
  ];
};

const notToScale = (options: DrawingOptions): readonly Markup[] =>
  wrapped(sayKey(options, 'papers.cutaway.schematic'), drawingText, options.width - 4).map((line, index) =>
    text(2, 16 + index * 19, line, { of: 'second' }),
  );

const stillIn = ({ frame, options }: Scene): readonly Markup[] => {
  const words = sayKey(options, 'papers.exploded.still-in');
  const middle = (frame.bore.from + frame.bore.to) / 2;
  const half = textWidth(words, drawingText) / 2;
  const [x, y] = frame.axis(Math.min(middle, frame.width - half - 2));
  return [text(x, y - frame.radius.across - 24 - half * 0.15, words, { of: 'second', anchor: 'middle' })];
};

const benchName = ({ frame, options }: Scene): readonly Markup[] => [
  text(10, frame.height - 32, sayKey(options, 'papers.exploded.on-bench'), { of: 'second' }),
];

const balloonRadius = 11.5;

/** Seals are numbered from the mouth; where two stand close the second stands higher. */
const balloon = (scene: Scene, index: number, isNext: boolean): readonly Markup[] => {
  const { frame, placed } = scene;
  const piece = placed[index];
  if (piece === undefined) return [];
  const [x, y] = isNext ? middleOf(frame, frame.apart(piece, index)) : axisOfPiece(frame, piece, index);
  const foot = y - frame.radius.across;
  const middle = foot - 18 - balloonRadius - lift(scene, index);
  return [
    element('path', {
      d: polyline([
        [x, foot],
        [x, middle + balloonRadius],
      ]),
      class: 'fine',
    }),
    element('circle', { cx: x, cy: middle, r: balloonRadius, class: 'balloon' }),
    text(x, middle + 5.2, String(piece.number), { of: isNext ? 'number accent-ink' : 'number' }),
  ];
};

const axisOfPiece = (frame: StackFrame, piece: Placed, index: number): Point =>
  middleOf(frame, frame.onBench(piece, index));

const middleOf = (frame: StackFrame, { from, to }: Span): Point => frame.axis((from + to) / 2);

const lift = ({ frame, placed }: Scene, index: number): number => {
  let lifted = false;
  let last = Number.NEGATIVE_INFINITY;
  for (const [place, piece] of placed.entries()) {
    if (piece.piece.is !== 'seal' || place > index) continue;
    const [x] = axisOfPiece(frame, piece, place);
    lifted = x - last < 2 * balloonRadius + 1 && !lifted;
    last = x;
  }
  return lifted ? 2 * balloonRadius + 2 : 0;
};

/** The next piece by name and the way it moves, below the axis. */
const wayOf = ({ frame, options, stack: { way } }: Scene, piece: Placed): readonly Markup[] => {
  const words = sayKey(
    options,
    way === 'out' ? 'papers.exploded.straight-out' : 'papers.exploded.straight-in',
    {
      piece: message(pieceWords[piece.piece.is]),
      number: piece.number,
    },
  );
  const width = textWidth(words, drawingText, true);
  const y = frame.height - 13;
  const end = frame.width - 6;
  const start = end - width;
  const [tail, head] = way === 'out' ? [start - 8, start - 44] : [start - 44, start - 8];
  const back = way === 'out' ? 11 : -11;
  return [
    text(end, y + 5, words, { of: 'accent-ink', anchor: 'end' }),
    element('path', {
      d: polyline([
        [tail, y],
        [head, y],
      ]),
      class: 'accent-line',
    }),
    element('path', {
      d: polygon([
        [head, y],
        [head + back, y - 6],
        [head + back, y + 6],
      ]),
      class: 'accent-fill',
    }),
  ];
};
