import type { Step, TimedStep } from '@brinewright/equipment';
import type { Quantity } from '@brinewright/units';
import { formatQuantity, type Message, type MessageKey, message } from '@brinewright/words';
import { element, type Markup } from '../markup/element.ts';
import { type Point, polygon, polyline } from '../markup/path.ts';
import { fillOf } from '../markup/patterns.ts';
import { textWidth } from '../markup/text-width.ts';
import { type Reader, sayKey } from '../say.ts';
import { type Drawing, type DrawingOptions, drawingText, drawn, text } from './drawing.ts';
import { rowsOf } from './stagger.ts';

export type TimelineStep = {
  readonly step: TimedStep;
  readonly time: Quantity<'time'>;
  readonly toDrain?: Quantity<'flow'>;
};

export const stepWords: Readonly<Record<TimedStep, MessageKey>> = {
  backwash: 'program.step.backwash',
  brine: 'program.step.brine',
  draw: 'program.step.draw',
  'slow-rinse': 'program.step.slow-rinse',
  'fast-rinse': 'program.step.fast-rinse',
  refill: 'program.step.refill',
};

type Through = { readonly water: 'raw' | 'brine'; readonly way: 'up' | 'down' } | undefined;

const through: Readonly<Record<Step | 'brine', Through>> = {
  backwash: { water: 'raw', way: 'up' },
  brine: { water: 'brine', way: 'down' },
  draw: { water: 'brine', way: 'down' },
  'slow-rinse': { water: 'raw', way: 'down' },
  'fast-rinse': { water: 'raw', way: 'down' },
  refill: undefined,
};

const saysKeys = { up: 'papers.timeline.step-up', down: 'papers.timeline.step-down' } as const;

const saysOf = ({ step, time }: TimelineStep): Message => {
  const passes = through[step];
  const values = { step: message(stepWords[step]), time };
  if (passes === undefined) return message('papers.timeline.step-still', values);
  return message(passes.water === 'brine' ? 'papers.timeline.step-brine' : saysKeys[passes.way], values);
};

type Piece = { readonly item: TimelineStep; readonly from: number; readonly to: number };

const piecesOf = (steps: readonly TimelineStep[], width: number): readonly Piece[] => {
  const total = steps.reduce((sum, { time }) => sum + time.si, 0) || 1;
  let at = 1;
  return steps.map((item) => {
    const from = at;
    at += (item.time.si / total) * (width - 2);
    return { item, from, to: at };
  });
};

const rowHeight = 40;
const barHeight = 52;

const arrowOf = ({ item, from, to }: Piece, top: number): readonly Markup[] => {
  const passes = through[item.step];
  if (passes === undefined || to - from < 18) return [];
  const x = (from + to) / 2;
  const [tail, tip] = passes.way === 'up' ? [top + 40, top + 12] : [top + 12, top + 40];
  const back = passes.way === 'up' ? tip + 11 : tip - 11;
  const head: readonly Point[] = [
    [x, tip],
    [x - 6, back],
    [x + 6, back],
  ];
  const shaft = polyline([
    [x, tail],
    [x, back],
  ]);
  return [
    element('path', { d: shaft, class: 'bed' }),
    element('path', { d: shaft, class: 'edge' }),
    element('path', { d: polygon(head), class: 'ink' }),
  ];
};

const barOf = (piece: Piece, top: number, id: string): Markup => {
  const water = through[piece.item.step]?.water;
  const fill = water === undefined ? 'var(--field)' : fillOf(id, water);
  return element('rect', {
    x: piece.from,
    y: top,
    width: piece.to - piece.from,
    height: barHeight,
    class: 'edge',
    style: `fill:${fill}`,
  });
};

/** A dimension over the bar, with a tick across each end. */
const dimension = ({ from, to }: Piece, y: number): readonly Markup[] => [
  element('path', {
    d: polyline([
      [from, y],
      [to, y],
    ]),
    class: 'fine',
  }),
  ...[from, to].map((x) =>
    element('path', {
      d: polyline([
        [x - 4, y + 4],
        [x + 4, y - 4],
      ]),
      class: 'edge',
    }),
  ),
];

type Label = { readonly piece: Piece; readonly name: string; readonly time: string };

const labelsOf = (pieces: readonly Piece[], reader: Reader): readonly Label[] =>
  pieces.map((piece) => ({
    piece,
    name: sayKey(reader, stepWords[piece.item.step]),
    time: formatQuantity(piece.item.time, reader).text,
  }));

const labelled = (
  labels: readonly Label[],
  width: number,
): { readonly rows: number; readonly draw: (bottom: number) => readonly Markup[] } => {
  const wanted = labels.map(({ piece, name, time }) => ({
    at: (piece.from + piece.to) / 2,
    size: Math.max(textWidth(name, drawingText, true), textWidth(time, drawingText)),
  }));
  const places = rowsOf(wanted, width);
  const rows = places.reduce((most, { row }) => Math.max(most, row + 1), 1);
  const draw = (bottom: number): readonly Markup[] => {
    const leaders = labels.flatMap(({ piece }, index) => {
      const row = places[index]?.row ?? 0;
      const x = (piece.from + piece.to) / 2;
      const d = polyline([
        [x, bottom - row * rowHeight + 2],
        [x, bottom + 7],
      ]);
      return row > 0 ? [element('path', { d, class: 'fine' })] : [];
    });
    const words = labels.flatMap(({ name, time }, index) => {
      const { at, row } = places[index] ?? { at: 0, row: 0 };
      const y = bottom - row * rowHeight;
      return [
        text(at, y - 20, name, { of: 'strong halo', anchor: 'middle' }),
        text(at, y - 2, time, { of: 'halo', anchor: 'middle' }),
      ];
    });
    return [...leaders, ...words];
  };
  return { rows, draw };
};

const drainHeight = 56;

/** Flow to the drain under the bar, its figure where there is room for it. */
const drainLine = (pieces: readonly Piece[], top: number, options: DrawingOptions): readonly Markup[] => {
  const most = Math.max(...pieces.map(({ item }) => item.toDrain?.si ?? 0));
  if (!(most > 0)) return [];
  const base = top + drainHeight - 20;
  const height = (piece: Piece): number => base - ((piece.item.toDrain?.si ?? 0) / most) * 32;
  const outline = pieces.flatMap((piece): readonly Point[] => [
    [piece.from, height(piece)],
    [piece.to, height(piece)],
  ]);
  const figures = pieces.flatMap((piece) => {
    const words = piece.item.toDrain === undefined ? '0' : formatQuantity(piece.item.toDrain, options).figure;
    const fits = textWidth(words, drawingText) < piece.to - piece.from - 4;
    const y = height(piece) < base - 22 ? height(piece) + 17 : height(piece) - 5;
    return fits ? [text((piece.from + piece.to) / 2, y, words, { of: 'second', anchor: 'middle' })] : [];
  });
  const unit = formatQuantity({ kind: 'flow', si: most }, options).unit;
  const first = pieces.at(0)?.from ?? 0;
  const last = pieces.at(-1)?.to ?? 0;
  return [
    element('path', {
      d: polyline([
        [first, base],
        [last, base],
      ]),
      class: 'fine',
    }),
    element('path', { d: polyline([[first, base], ...outline, [last, base]]), class: 'edge' }),
    ...figures,
    text(last, base + 18, sayKey(options, 'papers.timeline.to-drain', { unit }), {
      of: 'second',
      anchor: 'end',
    }),
  ];
};

/** The step in hand: its bar in the accent, at the weight of a cut. */
const marked = ({ from, to }: Piece, top: number): Markup =>
  element('rect', {
    x: from,
    y: top,
    width: to - from,
    height: barHeight,
    class: 'accent-line',
    style: 'stroke-width:var(--w-cut)',
  });

/** A regeneration to scale: minutes, the water into the bed, its direction, and what goes down the drain. */
export const timeline = (
  steps: readonly TimelineStep[],
  options: DrawingOptions & { readonly now?: TimedStep | undefined },
): Drawing => {
  const pieces = piecesOf(steps, options.width);
  const total = steps.reduce((sum, { time }) => sum + time.si, 0);
  const labels = labelled(labelsOf(pieces, options), options.width);
  const bottom = labels.rows * rowHeight;
  const top = bottom + 18;
  const under = top + barHeight + 12;
  const drained = steps.some(({ toDrain }) => toDrain !== undefined && toDrain.si > 0);
  return drawn(
    options,
    {
      height: drained ? under + drainHeight + 6 : under - 6,
      twin: [message('papers.timeline.says', { time: { kind: 'time', si: total } }), ...steps.map(saysOf)],
      patterns: ['raw', 'brine'],
    },
    pieces.map((piece) => [
      barOf(piece, top, options.id),
      ...dimension(piece, bottom + 9),
      ...arrowOf(piece, top),
    ]),
    pieces.filter(({ item }) => item.step === options.now).map((piece) => marked(piece, top)),
    labels.draw(bottom),
    drained ? drainLine(pieces, under, options) : undefined,
  );
};
