import { type Message, message } from '@brinewright/words';
import { element, type Markup } from '../markup/element.ts';
import { polyline } from '../markup/path.ts';
import { fillOf } from '../markup/patterns.ts';
import { wrapped } from '../markup/text-width.ts';
import { type Drawing, type DrawingOptions, drawingText, drawn, text } from './drawing.ts';

export type Odds = {
  readonly name: string;
  /** 0 to 1. */
  readonly p: number;
  /** Before the last reading; drawn as a tick where it differs. */
  readonly before?: number;
  /** The hypothesis that nothing listed is the cause: dashed. */
  readonly none?: boolean;
};

/** Stated odds are no better than this. */
const step = 5;

export const shownPercent = (p: number): number => Math.round((p * 100) / step) * step;

/** In percent. Nothing is ever certain, and nothing ruled out altogether. */
export const oddsText = (p: number): string => {
  const percent = shownPercent(p);
  if (percent <= 0) return `< ${step}`;
  return String(Math.min(percent, 100 - step));
};

const moved = ({ p, before }: Odds): boolean =>
  before !== undefined && shownPercent(before) !== shownPercent(p);

const saysOf = (odds: Odds): Message => {
  const values = { name: odds.name, percent: oddsText(odds.p) };
  return moved(odds)
    ? message('papers.odds.moved', { ...values, before: oddsText(odds.before ?? odds.p) })
    : message('papers.odds.says', values);
};

const line = 19;
const bar = 16;

type Row = {
  readonly odds: Odds;
  readonly lines: readonly string[];
  readonly top: number;
  readonly first: boolean;
};

const rowsFor = (all: readonly Odds[], width: number): readonly Row[] => {
  let top = 0;
  return all.map((odds, index) => {
    const lines = wrapped(odds.name, drawingText, width - 64, index === 0);
    const row = { odds, lines, top, first: index === 0 };
    top += lines.length * line + bar + 14;
    return row;
  });
};

const barOf = ({ odds, lines, top, first }: Row, end: number, id: string): readonly Markup[] => {
  const y = top + lines.length * line + 4;
  const long = Math.max(1, odds.p * end);
  const look =
    odds.none === true
      ? { of: 'hidden', fill: 'none' }
      : { of: 'edge', fill: first ? 'var(--ink)' : fillOf(id, 'hatch') };
  const tick = (odds.before ?? odds.p) * end;
  return [
    ...[0.25, 0.5, 0.75].map((quarter) =>
      element('path', {
        d: polyline([
          [quarter * end, y],
          [quarter * end, y + bar],
        ]),
        class: 'rule',
      }),
    ),
    element('path', {
      d: polyline([
        [0, y + bar],
        [end, y + bar],
      ]),
      class: 'rule',
    }),
    element('rect', { x: 0, y, width: long, height: bar, class: look.of, style: `fill:${look.fill}` }),
    ...(moved(odds)
      ? [
          element('path', {
            d: polyline([
              [tick, y - 4],
              [tick, y + bar + 4],
            ]),
            class: 'accent-line',
          }),
        ]
      : []),
  ];
};

const wordsOf = ({ odds, lines, top, first }: Row, width: number): readonly Markup[] => [
  ...lines.map((words, index) => text(0, top + 14 + index * line, words, first ? { of: 'strong' } : {})),
  text(width, top + lines.length * line + 4 + 13, `${oddsText(odds.p)} %`, {
    of: first ? 'strong' : 'value',
    anchor: 'end',
  }),
];

/** The leader solid, the others hatched, 'none of these' dashed; a tick where each stood before the last reading. */
export const oddsBars = (all: readonly Odds[], options: DrawingOptions): Drawing => {
  const rows = rowsFor(all, options.width);
  const last = rows.at(-1);
  const height = last === undefined ? 20 : last.top + last.lines.length * line + bar + 8;
  return drawn(
    options,
    { height, twin: all.map(saysOf), patterns: ['hatch'] },
    rows.map((row) => [...barOf(row, options.width - 58, options.id), ...wordsOf(row, options.width)]),
  );
};
