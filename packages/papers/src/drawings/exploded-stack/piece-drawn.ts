import type { StackPiece } from '@brinewright/equipment';
import { element, type Markup, rounded } from '../../markup/element.ts';
import { type Point, polygon } from '../../markup/path.ts';
import { fillOf } from '../../markup/patterns.ts';
import { type Span, type StackFrame, slice } from './stack-frame.ts';

type Look = { readonly line: string; readonly body: string; readonly hole: string };

const share: Readonly<Record<StackPiece['is'], number>> = { seal: 1, spacer: 0.96, plug: 1.06, ring: 0.98 };
const holes: Readonly<Record<StackPiece['is'], number>> = {
  seal: 0.66,
  spacer: 0.68,
  plug: 0.34,
  ring: 0.78,
};

const lookOf = (is: StackPiece['is'], isNext: boolean, id: string): Look => {
  const hole = 'var(--sheet)';
  if (isNext) return { line: 'accent-line', body: 'var(--accent-wash)', hole };
  if (is === 'seal' || is === 'ring') return { line: 'edge', body: 'var(--solid)', hole };
  return { line: 'edge', body: is === 'plug' ? fillOf(id, 'fine-metal') : 'var(--metal)', hole };
};

/** A piece as it lies on the bench, seen from the mouth side. */
export const onBench = (
  frame: StackFrame,
  is: StackPiece['is'],
  span: Span,
  more: { readonly id: string; readonly isNext: boolean },
): readonly Markup[] => {
  const look = lookOf(is, more.isNext, more.id);
  const across = frame.radius.across * share[is];
  const along = frame.radius.along * share[is];
  const [x, y] = frame.axis(span.from);
  return [
    element('path', { d: barrel(frame, span, across, along), class: look.line, style: `fill:${look.body}` }),
    ...(is === 'spacer' ? windows(frame, span, across, along, look) : []),
    face(x, y, 1, across, along, look.line, look.body),
    face(x, y, holes[is], across, along, look.line, look.hole),
  ];
};

const face = (
  cx: number,
  cy: number,
  scale: number,
  across: number,
  along: number,
  line: string,
  fill: string,
): Markup =>
  element('ellipse', { cx, cy, rx: along * scale, ry: across * scale, class: line, style: `fill:${fill}` });

/** The round of a piece from its near face to its far one. */
const barrel = ({ axis }: StackFrame, { from, to }: Span, across: number, along: number): string => {
  const [x1, y1] = axis(from);
  const [x2, y2] = axis(to);
  const arc = `A${rounded(along)} ${rounded(across)} 0 0 1 ${rounded(x2)} ${rounded(y2 + across)}`;
  const near = `M${rounded(x1)} ${rounded(y1 - across)}L${rounded(x2)} ${rounded(y2 - across)}`;
  return `${near}${arc}L${rounded(x1)} ${rounded(y1 + across)}`;
};

/** Windows of a spacer stand round its side, as far as it is seen. */
const windows = (
  { axis }: StackFrame,
  { from, to }: Span,
  across: number,
  along: number,
  { line, hole }: Look,
): readonly Markup[] => {
  const inset = (to - from) * 0.2;
  if (to - from < 5) return [];
  const corner = (at: number, turn: number): Point => {
    const [x, y] = axis(at);
    return [x + along * Math.cos(turn), y + across * Math.sin(turn)];
  };
  return [-0.85, 0, 0.85].map((turn) =>
    element('path', {
      d: polygon([
        corner(from + inset, turn - 0.24),
        corner(to - inset, turn - 0.24),
        corner(to - inset, turn + 0.24),
        corner(from + inset, turn + 0.24),
      ]),
      class: line === 'edge' ? 'rule' : line,
      style: `fill:${hole};stroke:${line === 'edge' ? 'var(--ink)' : 'var(--accent)'}`,
    }),
  );
};

/** A piece still in the bore: in section, dashed, its cut faces hatched. */
export const inBore = (
  frame: StackFrame,
  is: StackPiece['is'],
  span: Span,
  id: string,
): readonly Markup[] => {
  const across = frame.radius.across * share[is] * 0.94;
  const inner = is === 'spacer' ? across * 0.8 : across * holes[is];
  return [
    ...(
      [
        [-across, -inner],
        [inner, across],
      ] as const
    ).map((edges) =>
      element('path', {
        d: polygon(slice(frame, span, edges)),
        class: 'hidden',
        style: `fill:${is === 'spacer' ? 'none' : fillOf(id, 'hatch')}`,
      }),
    ),
  ];
};
