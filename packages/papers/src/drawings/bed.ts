import type { Quantity } from '@brinewright/units';
import { formatQuantity, type Message, message } from '@brinewright/words';
import { element, type Markup, rounded } from '../markup/element.ts';
import { polyline } from '../markup/path.ts';
import { fillOf } from '../markup/patterns.ts';
import { sayKey } from '../say.ts';
import { type Drawing, type DrawingOptions, drawn, text } from './drawing.ts';
import { spreadDown } from './stagger.ts';

export type Rise = {
  readonly temperature: Quantity<'temperature'> /** Height of the lifted bed. */;
  readonly height: Quantity<'length'>;
};

export type Bed = {
  readonly diameter: Quantity<'length'>;
  readonly depth: Quantity<'length'>;
  readonly free: Quantity<'length'>;
  /** Where backwash lifts it to, per temperature of the water. */
  readonly rises: readonly Rise[];
};

const riseSays = (bed: Bed, { temperature, height }: Rise): Message =>
  message(height.si > bed.depth.si + bed.free.si ? 'papers.bed.rises-over' : 'papers.bed.rises', {
    temperature,
    height,
  });

const tall = 250;
const tankX = 24;

/** Room for the top of the bed beyond the tank, where a bed would go over. */
const top = 40;

/** A tank shell with domed ends. */
const shell = (x: number, width: number, y: number, height: number): Markup => {
  const dome = Math.min(26, width / 3);
  const [left, middle, right] = [x, x + width / 2, x + width].map(rounded);
  const [top, shoulder, heel, foot] = [y, y + dome, y + height - dome, y + height].map(rounded);
  const crown = `M${left} ${shoulder}Q${left} ${top} ${middle} ${top}Q${right} ${top} ${right} ${shoulder}`;
  const base = `V${heel}Q${right} ${foot} ${middle} ${foot}Q${left} ${foot} ${left} ${heel}Z`;
  return element('path', { d: `${crown}${base}`, class: 'cut' });
};

type Level = {
  readonly y: number;
  readonly words: string;
  readonly of: string /** A dimension has its own line. */;
  readonly dimension?: boolean;
};

const words = (levels: readonly Level[], from: number, to: number): readonly Markup[] => {
  const sorted = levels.toSorted((a, b) => a.y - b.y);
  const tops = spreadDown(sorted.map(({ y }) => ({ at: y, size: 18 })));
  return sorted.flatMap(({ y, words, of, dimension }, index) => {
    const at = (tops[index] ?? 0) + 9;
    const start = dimension === true ? from + 16 : from;
    return [
      element('path', {
        d: polyline([
          [start, y],
          [to - 18, y],
          [to - 4, at],
        ]),
        class: 'fine',
      }),
      text(to, at + 5, words, { of }),
    ];
  });
};

/** A dimension line with ticks at both ends. */
const dimension = (x: number, from: number, to: number): readonly Markup[] => [
  element('path', {
    d: polyline([
      [x, from],
      [x, to],
    ]),
    class: 'fine',
  }),
  ...[from, to].flatMap((y) => [
    element('path', {
      d: polyline([
        [x - 13, y],
        [x + 5, y],
      ]),
      class: 'fine',
    }),
    element('path', {
      d: polyline([
        [x - 4, y + 4],
        [x + 4, y - 4],
      ]),
      class: 'edge',
    }),
  ]),
];

/** The tank cut open: settled bed, the height free above it, and how far backwash lifts the bed. */
export const bedDrawing = (bed: Bed, options: DrawingOptions): Drawing => {
  const inside = bed.depth.si + bed.free.si;
  const perMetre = (tall - 20) / inside;
  const wide = Math.max(70, Math.min(options.width * 0.4, bed.diameter.si * perMetre));
  const bottom = top + tall;
  const level = (height: number): number => bottom - 10 - height * perMetre;
  const right = tankX + wide;
  const settled = level(bed.depth.si);
  const levels: readonly Level[] = [
    {
      y: (level(inside) + settled) / 2,
      dimension: true,
      words: sayKey(options, 'papers.bed.free', { free: bed.free }),
      of: 'value',
    },
    {
      y: (settled + level(0)) / 2,
      dimension: true,
      words: sayKey(options, 'papers.bed.depth', { depth: bed.depth }),
      of: 'strong',
    },
    ...bed.rises.map(({ temperature, height }) => ({
      y: Math.max(14, level(height.si)),
      words: `${formatQuantity(height, options).text}, ${sayKey(options, 'papers.bed.level', { temperature })}`,
      of: height.si > inside ? 'fail-ink' : 'accent-ink',
    })),
  ];
  const risen = bed.rises.map(({ height }) => {
    const y = Math.max(14, level(height.si));
    return element('path', {
      d: polyline([
        [tankX + 3, y],
        [right - 3, y],
      ]),
      class: 'accent-dash',
    });
  });
  const riser = tankX + wide / 2;
  return drawn(
    options,
    {
      height: bottom + 8,
      twin: [
        message('papers.bed.says', { depth: bed.depth, free: bed.free }),
        ...bed.rises.map((rise) => riseSays(bed, rise)),
      ],
      patterns: ['resin'],
    },
    element('rect', {
      x: tankX + 2,
      y: settled,
      width: wide - 4,
      height: bottom - settled - 12,
      style: `fill:${fillOf(options.id, 'resin')}`,
    }),
    element('path', {
      d: polyline([
        [tankX, settled],
        [right, settled],
      ]),
      class: 'edge',
    }),
    element('rect', {
      x: riser - 4,
      y: top - 14,
      width: 8,
      height: tall - 6,
      class: 'edge',
      style: 'fill:var(--sheet)',
    }),
    shell(tankX, wide, top - 4, tall + 6),
    risen,
    dimension(right + 16, level(inside), settled),
    dimension(right + 16, settled, level(0)),
    words(levels, right, right + 56),
  );
};
