import { type Message, type MessageKey, message } from '@brinewright/words';
import { element, escaped, type Markup, written } from '../../markup/element.ts';
import { type Point, polygon, polyline } from '../../markup/path.ts';
import { fillOf } from '../../markup/patterns.ts';
import { textWidth, wrapped } from '../../markup/text-width.ts';
import { say, sayKey } from '../../say.ts';
import { type Drawing, type DrawingOptions, drawingText, drawn, text } from '../drawing.ts';
import { pieceWords } from '../stack-list.ts';
import { inBore, onBench } from './piece-drawn.ts';
import { type Span, type StackFrame, slice, stackFrame } from './stack-frame.ts';
import { type ExplodedStack, type PieceState, type Placed, placedPieces, stateOf } from './stack-model.ts';

type Scene = {
  readonly stack: ExplodedStack;
  readonly placed: readonly Placed[];
  readonly frame: StackFrame;
  readonly options: DrawingOptions;
};

const sceneOf = (stack: ExplodedStack, options: DrawingOptions): Scene => {
  const placed = placedPieces(stack);
  return { stack, placed, frame: stackFrame(stack, placed, options.width), options };
};

/**
 * The stack along its axis: what is out lies on the bench in order, the next piece in accent with the way it moves,
 * what is still in stands dashed in the bore. Distances of the seals are true to the definition.
 */
export const explodedStack = (stack: ExplodedStack, options: DrawingOptions): Drawing => {
  const scene = sceneOf(stack, options);
  return drawn(
    options,
    {
      height: scene.frame.height,
      twin: twinOf(stack, scene.placed),
      patterns: ['hatch', 'casting', 'fine-metal'],
    },
    ground(scene),
    inPaintingOrder(scene).map((index) => pieceAs(scene, index, stateOf(index, stack))),
  );
};

/** The same drawing in pieces, so that a count moves them without drawing anew. */
export type StackLayers = {
  /** Up to the name of the drawing, and from there to the first piece. */
  readonly open: readonly [string, string];
  /** By place in the stack from the mouth. */
  readonly pieces: readonly Readonly<Record<PieceState, string>>[];
  readonly close: string;
  /** What it shows when so many have moved. */
  readonly says: readonly (readonly string[])[];
};

export const stackLayers = (stack: ExplodedStack, options: DrawingOptions): StackLayers => {
  const scene = sceneOf(stack, options);
  const nothing = { ...scene, stack: { ...stack, pieces: [], moved: 0 } };
  const empty = drawn(
    options,
    { height: scene.frame.height, twin: [], patterns: ['hatch', 'casting', 'fine-metal'] },
    ground(nothing),
  ).svg.markup;
  const [before = '', after = ''] = empty.split('aria-label=""');
  return {
    open: [`${before}aria-label="`, `"${after.slice(0, -'</svg>'.length)}`],
    pieces: stack.pieces.map((_, index) => ({
      out: written(pieceAs(scene, index, 'out')),
      next: written(pieceAs(scene, index, 'next')),
      in: written(pieceAs(scene, index, 'in')),
    })),
    close: '</svg>',
    says: Array.from({ length: stack.pieces.length + 1 }, (_, moved) =>
      twinOf({ ...stack, moved }, scene.placed).map((one) => say(options, one)),
    ),
  };
};

/** The drawing of layers when so many have moved: pieces nearer the mouth cover those behind. */
export const stackFromLayers = (
  { open, pieces, close, says }: StackLayers,
  { way, moved }: Pick<ExplodedStack, 'way' | 'moved'>,
): { readonly svg: string; readonly twin: readonly string[] } => {
  const as = {
    pieces: pieces.map(() => ({ is: 'seal' }) as const),
    sealsAt: [],
    schematic: false,
    way,
    moved,
  };
  const drawnPieces = pieces.map((piece, index) => piece[stateOf(index, as)]).toReversed();
  const twin = says[moved] ?? [];
  return { svg: [open[0], escaped(twin.join(' ')), open[1], ...drawnPieces, close].join(''), twin };
};

const inPaintingOrder = ({ placed }: Scene): readonly number[] =>
  placed.map((_, index) => index).toReversed();

const pieceAs = (scene: Scene, index: number, state: PieceState): readonly Markup[] => {
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
const ground = ({ frame, options, stack }: Scene): readonly Markup[] => {
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

const nameKeys: Readonly<Record<ExplodedStack['way'], MessageKey>> = {
  out: 'papers.exploded.says-out',
  in: 'papers.exploded.says-in',
};

/** In words: how many have moved, which is next, and the whole order. */
const twinOf = (stack: ExplodedStack, placed: readonly Placed[]): readonly Message[] => {
  const { way, moved, pieces, schematic } = stack;
  const next = placed.find((_, index) => stateOf(index, stack) === 'next');
  return [
    message(nameKeys[way], { count: moved, of: pieces.length }),
    ...(next === undefined
      ? []
      : [
          message('papers.exploded.next', { piece: message(pieceWords[next.piece.is]), number: next.number }),
        ]),
    ...placed.map((piece, index) =>
      message(`papers.exploded.piece-${stateOf(index, stack)}`, {
        place: index + 1,
        piece: message(pieceWords[piece.piece.is]),
        number: piece.number,
      }),
    ),
    ...(schematic ? [message('papers.cutaway.schematic')] : []),
  ];
};
