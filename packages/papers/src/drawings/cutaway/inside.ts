import { element, type Markup } from '../../markup/element.ts';
import { type Point, polygon, polyline } from '../../markup/path.ts';
import { type Chamber, neckOf, partings } from './bore-drawing.ts';
import { halfWay, metal, type Section, waterFill } from './casting.ts';
import { box, halfNeck, isWet, middle, sideOf } from './frame.ts';

const chamberFill = (section: Section, chamber: Chamber): Markup => {
  const { frame } = section;
  const points = box(
    frame,
    [frame.along(chamber.from), frame.along(chamber.to)],
    [-frame.radii.wall, frame.radii.wall],
  );
  return element('path', { d: polygon(points), style: `fill:${waterFill(section, chamber.port)}` });
};

const spacerDepth = (section: Section): number => (section.frame.lying ? 8 : 5);

/** The window of a spacer: where its chamber opens into a neck or a way behind the cut. */
const windowOf = (
  section: Section,
  chamber: Chamber,
  side: -1 | 1,
): readonly [number, number] | undefined => {
  if (sideOf(chamber.port) !== side) return undefined;
  const { frame, bore } = section;
  const half = neckOf(bore, chamber.port) === chamber ? halfNeck(frame, chamber) : halfWay(frame, chamber);
  const u = middle(frame, chamber);
  return [u - half, u + half];
};

/** Between two seals stands a spacer; the last chamber is open to the cap. */
const spacer = (section: Section, chamber: Chamber, side: -1 | 1): readonly Markup[] => {
  const { frame } = section;
  const { wall } = frame.radii;
  const inner = wall - spacerDepth(section);
  const ends: readonly [number, number] = [frame.along(chamber.from), frame.along(chamber.to)];
  const open = windowOf(section, chamber, side);
  const pieces: readonly (readonly [number, number])[] =
    open === undefined
      ? [ends]
      : [
          [ends[0], open[0]],
          [open[1], ends[1]],
        ];
  return pieces.map((piece) =>
    metal(section, box(frame, piece, [side * inner, side * wall]), 'fine-metal', 'fine'),
  );
};

const halfSeal = (section: Section): number => (section.frame.lying ? 7.5 : 5);

const sealOutline = (section: Section, at: number, side: -1 | 1): readonly Point[] => {
  const { frame } = section;
  const { land, wall } = frame.radii;
  const half = halfSeal(section);
  const u = frame.along(at);
  const shoulder = land + (wall - land) * 0.3;
  return (
    [
      [u - half, wall],
      [u - half, shoulder],
      [u - half * 0.45, land - 1],
      [u + half * 0.45, land - 1],
      [u + half, shoulder],
      [u + half, wall],
    ] as const
  ).map(([x, v]) => frame.place(x, side * v));
};

const seal = (section: Section, at: number, side: -1 | 1): Markup =>
  element('path', { d: polygon(sealOutline(section, at, side)), class: 'solid' });

/** A torn seal: the back of it stays in its seat, a piece of the lip is gone. */
const tornSeal = (section: Section, at: number, side: -1 | 1): Markup => {
  const { frame } = section;
  const { land, wall } = frame.radii;
  const half = halfSeal(section);
  const u = frame.along(at);
  const depth = wall - land;
  const stump: readonly (readonly [number, number])[] = [
    [u - half, wall],
    [u - half, wall - depth * 0.2],
    [u - half * 0.4, wall - depth * 0.42],
    [u + half * 0.1, wall - depth * 0.22],
    [u + half * 0.6, wall - depth * 0.46],
    [u + half, wall - depth * 0.26],
    [u + half, wall],
  ];
  return element('path', { d: polygon(stump.map(([x, v]) => frame.place(x, side * v))), class: 'solid' });
};

export const sealsDrawn = (section: Section, torn: number | undefined): readonly Markup[] =>
  partings(section.bore).flatMap(({ number, at }) =>
    ([-1, 1] as const).map((side) =>
      number === torn ? tornSeal(section, at, side) : seal(section, at, side),
    ),
  );

/** One half of the piston's outline, from the rod to the far end. */
const profile = (section: Section, side: -1 | 1): readonly Point[] => {
  const { bore, frame } = section;
  const { land, groove } = frame.radii;
  const u = (metres: number): number => frame.along(metres + bore.shift);
  const [from, to] = bore.piston.ends;
  const steps = bore.piston.grooves.flatMap(([a, b]): readonly (readonly [number, number])[] => [
    [u(a), land],
    [u(a), groove],
    [u(b), groove],
    [u(b), land],
  ]);
  return [[u(from), land] as const, ...steps, [u(to), land] as const].map(([x, v]) =>
    frame.place(x, side * v),
  );
};

const piston = (section: Section): Markup =>
  metal(section, [...profile(section, -1), ...profile(section, 1).toReversed()], 'piston', 'cut');

const rod = (section: Section): readonly Markup[] => {
  const { bore, frame } = section;
  const { rod: radius } = frame.radii;
  const end = frame.along(bore.piston.ends[0] + bore.shift);
  const [x, y] = frame.place(frame.rodEnd + radius, 0);
  return [
    metal(section, box(frame, [frame.rodEnd, end], [-radius, radius]), 'piston', 'edge'),
    element('circle', { cx: x, cy: y, r: radius * 0.42, class: 'edge', style: 'fill:var(--sheet)' }),
  ];
};

const boreLine = ({ frame }: Section, side: -1 | 1): Markup => {
  const v = side * frame.radii.wall;
  return element('path', {
    d: polyline([frame.place(frame.from, v), frame.place(frame.to, v)]),
    class: 'edge',
  });
};

export const inside = (section: Section, torn: number | undefined): readonly Markup[] => {
  const { bore, frame } = section;
  const wet = bore.chambers.filter(isWet);
  const axis = [frame.place(frame.rodEnd, 0), frame.place(frame.capEnd, 0)];
  return [
    ...bore.chambers.map((chamber) => chamberFill(section, chamber)),
    ...wet.flatMap((chamber) => ([-1, 1] as const).flatMap((side) => spacer(section, chamber, side))),
    ...([-1, 1] as const).map((side) => boreLine(section, side)),
    ...sealsDrawn(section, torn),
    ...rod(section),
    piston(section),
    element('path', { d: polyline(axis), class: 'axis' }),
  ];
};
