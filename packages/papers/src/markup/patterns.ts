import { element, type Markup } from './element.ts';

export const patternNames = [
  'raw',
  'treated',
  'brine',
  'drain',
  'casting',
  'fine-metal',
  'piston',
  'hatch',
  'resin',
] as const;
export type PatternName = (typeof patternNames)[number];

/** Ids are told apart by a prefix, so that several drawings share one page. */
export const fillOf = (prefix: string, pattern: PatternName): string => `url(#${prefix}-${pattern})`;

type Tile = {
  readonly width: number;
  readonly height: number;
  readonly turn?: number;
  readonly draws: readonly Markup[];
};

const ground = (width: number, height: number, of: string): Markup =>
  element('rect', { width, height, class: of });
const line = (d: string, of: string): Markup => element('path', { d, class: of });
const dot = (cx: number, cy: number, r: number, of: string): Markup =>
  element('circle', { cx, cy, r, class: of });

const slanted = (gap: number, turn: number, wash: string, mark: string): Tile => ({
  width: gap,
  height: gap,
  turn,
  draws: [ground(gap, gap, wash), line(`M0 0V${gap}`, mark)],
});

const tiles: Readonly<Record<PatternName, Tile>> = {
  raw: slanted(7, 45, 'w-raw', 'm-raw'),
  treated: { width: 18, height: 9, draws: [ground(18, 9, 'w-treated'), line('M0 4.5H18', 'm-treated')] },
  brine: {
    width: 9,
    height: 9,
    draws: [ground(9, 9, 'w-brine'), dot(2.2, 2.2, 1.4, 'd-brine'), dot(6.7, 6.7, 1.4, 'd-brine')],
  },
  drain: {
    width: 12,
    height: 8,
    draws: [ground(12, 8, 'w-drain'), line('M-6 4Q-3 -1.4 0 4T6 4T12 4T18 4', 'm-drain')],
  },
  casting: slanted(5.5, -45, 'w-metal', 'm-metal'),
  'fine-metal': slanted(3.6, 45, 'w-metal', 'm-metal'),
  piston: slanted(11, -45, 'w-field', 'm-metal'),
  hatch: { width: 5, height: 5, turn: 45, draws: [line('M0 0V5', 'm-ink')] },
  resin: { width: 10, height: 10, draws: [dot(2.5, 2.5, 1.5, 'd-bead'), dot(7.5, 7.5, 1.5, 'd-bead')] },
};

const pattern = (prefix: string, name: PatternName): Markup => {
  const { width, height, turn, draws } = tiles[name];
  return element(
    'pattern',
    {
      id: `${prefix}-${name}`,
      width,
      height,
      patternUnits: 'userSpaceOnUse',
      patternTransform: turn === undefined ? undefined : `rotate(${turn})`,
    },
    draws,
  );
};

export const patternDefs = (prefix: string, names: readonly PatternName[]): Markup =>
  element(
    'defs',
    {},
    names.map((name) => pattern(prefix, name)),
  );
