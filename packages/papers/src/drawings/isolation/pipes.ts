import { element, type Markup } from '../../markup/element.ts';
import { type Point, polygon, polyline } from '../../markup/path.ts';
import { fillOf } from '../../markup/patterns.ts';
import { behind, box, type Frame, half, type Isolation, line, valveAt, type Water } from './line-model.ts';

export const stroke = (points: readonly Point[], of: string): Markup =>
  element('path', { d: polyline(points), class: of });

export const pipes = (
  state: Isolation,
  { inlet, outlet, middle, end }: Frame,
  id: string,
): readonly Markup[] => {
  const isOn = state.water === 'on';
  const round = state.bypass === 'not-known' ? 'hidden' : 'edge';
  return [
    ...pipe([0, inlet + half], 'raw', id, 'edge'),
    ...(state.bypass === 'none'
      ? [inlet + half, outlet - half].map((x) => pipeEnd(x))
      : [
          ...pipe([inlet + half, middle], 'raw', id, round),
          ...pipe([middle, outlet - half], behind(state), id, round),
        ]),
    ...pipe([outlet - half, end], behind(state), id, 'edge'),
    ...branch(inlet, ['raw', isOn ? 'raw' : undefined], id),
    ...branch(outlet, [behind(state), isOn ? 'treated' : undefined], id),
  ];
};

const filled = (x: number, y: number, width: number, height: number, water: Water, id: string): Markup =>
  element('rect', {
    x,
    y,
    width,
    height,
    style: `fill:${water === undefined ? 'var(--field)' : fillOf(id, water)}`,
  });

const pipe = (
  [from, to]: readonly [number, number],
  water: Water,
  id: string,
  of: string,
): readonly Markup[] => [
  filled(from, line - half, to - from, 2 * half, water, id),
  stroke(
    [
      [from, line - half],
      [to, line - half],
    ],
    of,
  ),
  stroke(
    [
      [from, line + half],
      [to, line + half],
    ],
    of,
  ),
];

/** Where nothing leads on: the pipe turns down. */
const pipeEnd = (x: number): Markup =>
  stroke(
    [
      [x, line - half],
      [x, line + half],
    ],
    'edge',
  );

/** From the line down to the unit, with what stands above and below its valve. */
const branch = (x: number, [above, below]: readonly [Water, Water], id: string): readonly Markup[] => [
  filled(x - half, line + half - 2, 2 * half, valveAt - line - half + 2, above, id),
  filled(x - half, valveAt, 2 * half, box.top - valveAt, below, id),
  stroke(
    [
      [x - half, line + half],
      [x - half, box.top],
    ],
    'edge',
  ),
  stroke(
    [
      [x + half, line + half],
      [x + half, box.top],
    ],
    'edge',
  ),
];

export const valves = ({ water, bypass }: Isolation, { inlet, outlet, middle }: Frame): readonly Markup[] => [
  valve([inlet, valveAt], 'upright', water === 'on'),
  valve([outlet, valveAt], 'upright', water === 'on'),
  ...(bypass === 'none' ? [] : [valve([middle, line], 'level', water === 'off')]),
];

/** Two triangles: solid is shut, hollow is open. */
const valve = ([x, y]: Point, way: 'upright' | 'level', isOpen: boolean): Markup => {
  const [wide, long] = [22, 20];
  const points: readonly Point[] =
    way === 'level'
      ? [
          [x - long, y - wide],
          [x + long, y + wide],
          [x + long, y - wide],
          [x - long, y + wide],
        ]
      : [
          [x - wide, y - long],
          [x + wide, y - long],
          [x - wide, y + long],
          [x + wide, y + long],
        ];
  return element('path', {
    d: polygon(points),
    class: 'edge',
    style: `fill:var(--${isOpen ? 'sheet' : 'ink'})`,
  });
};
