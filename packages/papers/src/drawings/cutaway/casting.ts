import { element, type Markup } from '../../markup/element.ts';
import { type Point, polygon, polyline } from '../../markup/path.ts';
import { fillOf, type PatternName } from '../../markup/patterns.ts';
import { type BoreDrawing, type Chamber, dryPort, neckOf, portsOf } from './bore-drawing.ts';
import { box, type Frame, halfNeck, middle, sideOf } from './frame.ts';
import type { Standing } from './waters.ts';

export type Section = {
  readonly bore: BoreDrawing;
  readonly frame: Frame;
  readonly id: string;
  readonly standing: ReadonlyMap<string, Standing>;
};

const filled = (points: readonly Point[], fill: string, of = 'edge'): Markup =>
  element('path', { d: polygon(points), class: of, style: `fill:${fill}` });

export const metal = (
  section: Section,
  points: readonly Point[],
  pattern: PatternName,
  of = 'edge',
): Markup => filled(points, fillOf(section.id, pattern), of);

/** The fill of what stands in a port; nothing but the sheet where it is empty. */
export const waterFill = ({ id, standing }: Section, port: string): string => {
  const water = standing.get(port)?.water ?? 'none';
  return water === 'none' ? 'var(--field)' : fillOf(id, water);
};

const chamfer = 12;

const body = (section: Section): Markup => {
  const { frame } = section;
  const { outer } = frame.radii;
  const { from, to } = frame;
  const end = to + (frame.capEnd - to) * 0.45;
  const corners: readonly (readonly [number, number])[] = [
    [from, -outer + chamfer],
    [from + chamfer, -outer],
    [end - chamfer, -outer],
    [end, -outer + chamfer],
    [end, outer - chamfer],
    [end - chamfer, outer],
    [from + chamfer, outer],
    [from, outer - chamfer],
  ];
  return metal(
    section,
    corners.map(([u, v]) => frame.place(u, v)),
    'casting',
    'cut',
  );
};

/** The plate that carries the drive: it holds the stack in and lets the rod through. */
const backPlate = (section: Section): Markup => {
  const { frame } = section;
  const { outer } = frame.radii;
  return metal(
    section,
    box(frame, [frame.from - frame.scale * 0.008, frame.from], [-outer + 22, outer - 22]),
    'fine-metal',
    'cut',
  );
};

const screws = ({ frame }: Section): readonly Markup[] =>
  [-1, 1].map((side) => {
    const v = side * (frame.radii.outer - 30);
    const ends = [
      frame.place(frame.from - frame.scale * 0.012, v),
      frame.place(frame.from + frame.scale * 0.012, v),
    ];
    return element('path', { d: polyline(ends), class: 'axis' });
  });

/** A plug with a collar closes the far end. */
const endCap = (section: Section): readonly Markup[] => {
  const { frame } = section;
  const { wall } = frame.radii;
  const end = frame.to + (frame.capEnd - frame.to) * 0.45;
  return [
    metal(section, box(frame, [frame.to, end], [-wall, wall]), 'fine-metal', 'cut'),
    metal(section, box(frame, [end, frame.capEnd], [-wall + 16, wall - 16]), 'fine-metal', 'cut'),
  ];
};

const neckWall = 6;

const neck = (section: Section, port: string): readonly Markup[] => {
  const chamber = neckOf(section.bore, port);
  if (chamber === undefined || port === dryPort) return [];
  const { frame } = section;
  const { wall, outer, neck: mouth } = frame.radii;
  const side = sideOf(port);
  const half = halfNeck(frame, chamber);
  const u = middle(frame, chamber);
  const walls = [-1, 1].flatMap((edge) => [
    metal(
      section,
      box(frame, [u + edge * half, u + edge * (half + neckWall)], [side * outer, side * mouth]),
      'casting',
      'rule',
    ),
    element('path', {
      d: polyline([frame.place(u + edge * half, side * wall), frame.place(u + edge * half, side * mouth)]),
      class: 'cut',
    }),
    element('path', {
      d: polyline([
        frame.place(u + edge * (half + neckWall), side * outer),
        frame.place(u + edge * (half + neckWall), side * mouth),
      ]),
      class: 'edge',
    }),
  ]);
  return [
    filled(box(frame, [u - half, u + half], [side * wall, side * mouth]), waterFill(section, port), 'none'),
    ...walls,
  ];
};

/** Ways cast behind the cut from the neck of a port to its other chambers: dashed, as hidden edges are. */
const gallery = (section: Section, port: string): readonly Markup[] => {
  const home = neckOf(section.bore, port);
  if (home === undefined) return [];
  return section.bore.chambers
    .filter((chamber) => chamber.port === port && chamber !== home)
    .flatMap((chamber) => hiddenWay(section, home, chamber));
};

export const halfWay = (frame: Frame, chamber: Chamber): number =>
  Math.min(frame.lying ? 13 : 8, ((chamber.to - chamber.from) * frame.scale) / 2 - 8);

const hiddenWay = (section: Section, home: Chamber, chamber: Chamber): readonly Markup[] => {
  const { frame } = section;
  const { wall, gallery: band } = frame.radii;
  const side = sideOf(home.port);
  const half = halfWay(frame, chamber);
  const [near, far] = [middle(frame, home), middle(frame, chamber)];
  const out = far > near ? 1 : -1;
  const v = (radius: number): number => side * radius;
  const outline: readonly Point[] = [
    frame.place(near, v(band[1])),
    frame.place(far + out * half, v(band[1])),
    frame.place(far + out * half, v(wall)),
    frame.place(far - out * half, v(wall)),
    frame.place(far - out * half, v(band[0])),
    frame.place(near, v(band[0])),
  ];
  return [filled(outline, waterFill(section, home.port), 'hidden')];
};

/** Everything that is cast or screwed on, with the ways for the water in it. */
export const casting = (section: Section): readonly Markup[] => {
  const ports = portsOf(section.bore).filter((port) => port !== dryPort);
  return [
    body(section),
    backPlate(section),
    ...screws(section),
    ...ports.flatMap((port) => gallery(section, port)),
    ...ports.flatMap((port) => neck(section, port)),
    ...endCap(section),
  ];
};
