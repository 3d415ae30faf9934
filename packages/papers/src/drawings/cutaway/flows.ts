import { element, type Markup } from '../../markup/element.ts';
import { bent, type Point, polygon } from '../../markup/path.ts';
import { type Chamber, neckOf } from './bore-drawing.ts';
import type { Section } from './casting.ts';
import { type Frame, isWet, middle, sideOf } from './frame.ts';
import { type BrineStep, type Passage, partingOf } from './waters.ts';

type Across = readonly [number, number];

/** A piece of a way: in the cut, or behind piston or casting. */
type Piece = { readonly hidden: boolean; readonly points: readonly Across[] };

const annulus = (frame: Frame): number => (frame.radii.land + frame.radii.wall) / 2 - 3;
const under = (frame: Frame): number => (frame.radii.groove + frame.radii.land) / 2;
const bandMiddle = (frame: Frame): number => (frame.radii.gallery[0] + frame.radii.gallery[1]) / 2;

/** From the mouth of the neck to the middle of a chamber; by the way behind the cut where the neck is elsewhere. */
const inwards = (section: Section, chamber: Chamber): readonly Piece[] => {
  const { bore, frame } = section;
  const side = sideOf(chamber.port);
  const home = neckOf(bore, chamber.port);
  if (home === undefined) return [];
  const u = middle(frame, chamber);
  const ring: Across = [u, side * annulus(frame)];
  const mouth: Across = [middle(frame, home), side * frame.radii.neck];
  if (home === chamber) return [{ hidden: false, points: [mouth, ring] }];
  const band = side * bandMiddle(frame);
  return [
    { hidden: false, points: [mouth, [mouth[0], band]] },
    {
      hidden: true,
      points: [
        [mouth[0], band],
        [u, band],
        [u, side * frame.radii.wall],
      ],
    },
    { hidden: false, points: [[u, side * frame.radii.wall], ring] },
  ];
};

const backwards = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces.toReversed().map(({ hidden, points }) => ({ hidden, points: points.toReversed() }));

/** Past the seal through the groove under it. */
const pastSeal = (frame: Frame, at: number, from: number, to: number, side: -1 | 1): Piece => {
  const u = frame.along(at);
  const way = to > from ? 1 : -1;
  const near = Math.min(frame.scale * 0.0036, Math.abs(from - u), Math.abs(to - u));
  const [ring, deep] = [side * annulus(frame), side * under(frame)];
  const points: readonly Across[] = [
    [from, ring],
    [u - way * near, ring],
    [u - way * near, deep],
    [u + way * near, deep],
    [u + way * near, ring],
    [to, ring],
  ];
  return { hidden: false, points };
};

/** Round the piston from one half of the ring to the other; in the open where no piston stands in the way. */
const roundPiston = (section: Section, u: number, from: -1 | 1, to: -1 | 1): readonly Piece[] => {
  if (from === to) return [];
  const { bore, frame } = section;
  const [start, end] = bore.piston.ends.map((metres) => frame.along(metres + bore.shift));
  const hidden = start !== undefined && end !== undefined && u > start && u < end;
  return [
    {
      hidden,
      points: [
        [u, from * annulus(frame)],
        [u, to * annulus(frame)],
      ],
    },
  ];
};

const wayOf = (section: Section, passage: Passage): readonly Piece[] => {
  const { bore, frame } = section;
  const parting = partingOf(bore, passage.seal);
  if (parting === undefined) return [];
  const onwards = parting.before.port === passage.from;
  const [start, end] = onwards ? [parting.before, parting.after] : [parting.after, parting.before];
  const [near, far] = [sideOf(start.port), sideOf(end.port)];
  return [
    ...inwards(section, start),
    pastSeal(frame, parting.at, middle(frame, start), middle(frame, end), near),
    ...roundPiston(section, middle(frame, end), near, far),
    ...backwards(inwards(section, end)),
  ];
};

/** Neighbouring pieces in the cut are one line. */
const joined = (pieces: readonly Piece[]): readonly Piece[] => {
  const lines: Piece[] = [];
  for (const piece of pieces) {
    const last = lines.at(-1);
    if (last === undefined || last.hidden !== piece.hidden) lines.push(piece);
    else lines.splice(-1, 1, { hidden: last.hidden, points: [...last.points, ...piece.points.slice(1)] });
  }
  return lines;
};

const placed = (frame: Frame, points: readonly Across[]): readonly Point[] =>
  points.map(([u, v]) => frame.place(u, v));

export const arrow = (tip: Point, from: Point, size: number, of: string): Markup => {
  const length = Math.hypot(tip[0] - from[0], tip[1] - from[1]) || 1;
  const [x, y] = [(tip[0] - from[0]) / length, (tip[1] - from[1]) / length];
  const back: Point = [tip[0] - x * size, tip[1] - y * size];
  const half = size * 0.55;
  return element('path', {
    d: polygon([tip, [back[0] - y * half, back[1] + x * half], [back[0] + y * half, back[1] - x * half]]),
    class: of,
  });
};

const corner = 7;

const lineOf = (frame: Frame, piece: Piece): readonly Markup[] => {
  const d = bent(placed(frame, piece.points), corner);
  return piece.hidden
    ? [element('path', { d, class: 'bed' }), element('path', { d, class: 'behind' })]
    : [element('path', { d, class: 'bed' }), element('path', { d, class: 'flow' })];
};

const headOf = (frame: Frame, pieces: readonly Piece[]): readonly Markup[] => {
  const points = placed(frame, pieces.at(-1)?.points ?? []);
  const [before, tip] = points.slice(-2);
  return before === undefined || tip === undefined ? [] : [arrow(tip, before, 13, 'ink')];
};

const flow = (frame: Frame, pieces: readonly Piece[]): readonly Markup[] => {
  const lines = joined(pieces);
  return [...lines.flatMap((piece) => lineOf(frame, piece)), ...headOf(frame, lines)];
};

/** The injector always feeds the tank top; nothing else does at the brine stop. */
const fromInjector = (section: Section, step: BrineStep): readonly Markup[] => {
  const { bore, frame, standing } = section;
  const home = neckOf(bore, 'TOP');
  const water = step === 'draw' ? 'brine' : 'raw';
  if (bore.stop !== 'brine' || home === undefined || standing.get('TOP')?.water !== water) return [];
  return flow(frame, backwards(inwards(section, home)));
};

/** Through the gap of the torn seal, and out where the far chamber opens on this side. */
const leakWay = (section: Section, leak: Passage, side: -1 | 1): readonly Across[] => {
  const { bore, frame } = section;
  const parting = partingOf(bore, leak.seal);
  if (parting === undefined) return [];
  const onwards = parting.before.port === leak.from;
  const far = onwards ? parting.after : parting.before;
  const u = frame.along(parting.at);
  const reach = (onwards ? 1 : -1) * (frame.lying ? 24 : 13);
  const v = side * (frame.radii.land + (frame.radii.wall - frame.radii.land) * 0.28);
  const gap: readonly Across[] = [
    [u - reach, v],
    [u + reach, v],
  ];
  const opensHere = isWet(far) && sideOf(far.port) === side && neckOf(bore, far.port) === far;
  if (!opensHere) return gap;
  const out = middle(frame, far);
  return [
    [u - reach, v],
    [out, v],
    [out, side * frame.radii.neck],
  ];
};

const leakLine = (section: Section, leak: Passage): readonly Markup[] =>
  ([-1, 1] as const).flatMap((side) => {
    const points = placed(section.frame, leakWay(section, leak, side));
    const [before, tip] = points.slice(-2);
    if (before === undefined || tip === undefined) return [];
    const d = bent(points, corner);
    return [
      element('path', { d, class: 'bed' }),
      element('path', { d, class: 'leak' }),
      arrow(tip, before, 12, 'fail-fill'),
    ];
  });

export const flows = (
  section: Section,
  passages: readonly Passage[],
  leak: Passage | undefined,
  step: BrineStep,
): readonly Markup[] => [
  ...passages.flatMap((passage) => flow(section.frame, wayOf(section, passage))),
  ...fromInjector(section, step),
  ...(leak === undefined ? [] : leakLine(section, leak)),
];
