import type { StackPiece } from '@brinewright/equipment';
import { type Message, type MessageKey, message } from '@brinewright/words';
import { element, type Markup } from '../markup/element.ts';
import { polygon, polyline } from '../markup/path.ts';
import { fillOf } from '../markup/patterns.ts';
import { capital, sayKey } from '../say.ts';
import { type Drawing, type DrawingOptions, drawn, text } from './drawing.ts';

/** The pieces in the order they come out; how many are out already. */
export type Stack = { readonly pieces: readonly StackPiece[]; readonly out?: number };

export const pieceWords: Readonly<Record<StackPiece['is'], MessageKey>> = {
  seal: 'papers.stack.seal',
  spacer: 'papers.stack.spacer',
  ring: 'papers.stack.ring',
  plug: 'papers.stack.plug',
};

const thickness: Readonly<Record<StackPiece['is'], number>> = { seal: 11, spacer: 30, ring: 9, plug: 24 };
const gap = 9;

const saysOf = (stack: Stack): readonly Message[] => [
  message('papers.stack.says', { count: stack.pieces.length }),
  ...stack.pieces.map((piece, index) =>
    message('papers.stack.piece', { number: index + 1, piece: message(pieceWords[piece.is]) }),
  ),
];

type State = 'out' | 'next' | 'in';

const stateOf = (index: number, out: number): State => (index < out ? 'out' : index === out ? 'next' : 'in');

const outlines: Readonly<Record<State, string>> = { out: 'edge', next: 'accent-line', in: 'hidden' };

const half = { seal: 50, spacer: 46, ring: 50, plug: 56 } as const;

const pieceDrawn = (
  piece: StackPiece,
  y: number,
  state: State,
  axis: number,
  id: string,
): readonly Markup[] => {
  const [width, height] = [half[piece.is], thickness[piece.is]];
  const fill =
    state === 'in'
      ? 'none'
      : piece.is === 'seal' || piece.is === 'ring'
        ? 'var(--solid)'
        : fillOf(id, 'fine-metal');
  const body = element('rect', {
    x: axis - width,
    y,
    width: width * 2,
    height,
    class: outlines[state],
    style: `fill:${fill}`,
  });
  if (piece.is !== 'spacer') return [body];
  const windows = [-0.55, 0, 0.55].map((place) =>
    element('rect', {
      x: axis + place * width - 9,
      y: y + 8,
      width: 18,
      height: height - 16,
      class: outlines[state],
      style: 'fill:var(--sheet)',
    }),
  );
  return [body, ...windows];
};

const balloon = (x: number, y: number, number: number, state: State): readonly Markup[] => [
  element('path', {
    d: polyline([
      [x - 48, y],
      [x - 12, y],
    ]),
    class: 'fine',
  }),
  element('circle', { cx: x, cy: y, r: 11.5, class: 'balloon' }),
  text(x, y + 5.2, String(number), { of: state === 'next' ? 'number accent-ink' : 'number' }),
];

/** The way out, drawn at the mouth. */
const mouthArrow = (axis: number): readonly Markup[] => [
  element('path', {
    d: polyline([
      [axis, 24],
      [axis, 10],
    ]),
    class: 'edge',
  }),
  element('path', {
    d: polygon([
      [axis, 0],
      [axis - 6, 11],
      [axis + 6, 11],
    ]),
    class: 'ink',
  }),
];

/** The stack pulled apart along its axis: numbers are the order in which pieces come out. */
export const stackList = (stack: Stack, options: DrawingOptions): Drawing => {
  const out = stack.out ?? stack.pieces.length;
  const axis = 74;
  let y = 34;
  const rows = stack.pieces.map((piece, index) => {
    const row = { piece, top: y, state: stateOf(index, out) };
    y += Math.max(thickness[piece.is], 18) + gap;
    return row;
  });
  const labels = rows.flatMap(({ piece, top, state }, index) => {
    const middle = top + thickness[piece.is] / 2;
    return [
      ...balloon(172, middle, index + 1, state),
      text(
        194,
        middle + 5,
        capital(sayKey(options, pieceWords[piece.is])),
        state === 'next' ? { of: 'accent-ink' } : {},
      ),
    ];
  });
  return drawn(
    options,
    { height: y + 22, twin: saysOf(stack), patterns: ['fine-metal'] },
    mouthArrow(axis),
    text(axis + 14, 16, capital(sayKey(options, 'papers.stack.mouth')), { of: 'second' }),
    element('path', {
      d: polyline([
        [axis, 28],
        [axis, y],
      ]),
      class: 'axis',
    }),
    rows.map(({ piece, top, state }) => pieceDrawn(piece, top, state, axis, options.id)),
    labels,
    text(axis, y + 14, capital(sayKey(options, 'papers.stack.far')), { of: 'second', anchor: 'middle' }),
  );
};
