import type { Quantity } from '@brinewright/units';
import { formatQuantity, type Message, message } from '@brinewright/words';
import { element, type Markup } from '../markup/element.ts';
import { polygon, polyline } from '../markup/path.ts';
import { fillOf } from '../markup/patterns.ts';
import { textWidth } from '../markup/text-width.ts';
import { sayKey } from '../say.ts';
import { type Drawing, type DrawingOptions, drawingText, drawn, text } from './drawing.ts';
import { around, linear } from './scale.ts';
import { rowsOf } from './stagger.ts';

type Flow = Quantity;

/** Between the flow that lifts enough in the warmest water and the one that keeps the resin in the coldest. */
export type FlowWindow = {
  readonly floor: Flow;
  readonly ceiling: Flow;
  readonly limit: 'bed' | 'supply' | 'drain';
  readonly aim?: Flow;
  readonly fitted?: Flow;
};

const saysOf = ({ floor, ceiling, aim, fitted }: FlowWindow): readonly Message[] => [
  message(floor.si > ceiling.si ? 'papers.window.empty' : 'papers.window.says', { floor, ceiling }),
  ...(aim === undefined ? [] : [message('papers.window.aim', { flow: aim })]),
  ...(fitted === undefined ? [] : [message('papers.window.fitted', { flow: fitted })]),
];

type Mark = { readonly x: number; readonly words: string; readonly of: string };

/** Labels in rows away from the line, each with a leader to its mark. */
const marked = (
  marks: readonly Mark[],
  width: number,
  y: number,
  way: 1 | -1,
): { readonly rows: number; readonly draw: readonly Markup[] } => {
  const rows = rowsOf(
    marks.map(({ x, words, of }) => ({ at: x, size: textWidth(words, drawingText, of !== 'second') })),
    width,
  );
  const base = (index: number): number => y + way * (24 + (rows[index]?.row ?? 0) * 20);
  const leaders = marks.flatMap(({ x }, index) => {
    const end = base(index) + (way > 0 ? -14 : 4);
    const d = polyline([
      [x, y + way * 20],
      [x, end],
    ]);
    return (rows[index]?.row ?? 0) > 0 ? [element('path', { d, class: 'fine' })] : [];
  });
  const labels = marks.map(({ words, of }, index) =>
    text(rows[index]?.at ?? 0, base(index) + (way > 0 ? 12 : 0), words, {
      of: `${of} halo`,
      anchor: 'middle',
    }),
  );
  const draw = [...leaders, ...labels];
  return { rows: rows.reduce((most, { row }) => Math.max(most, row + 1), 0), draw };
};

const bracket = (x: number, y: number, opens: 1 | -1): Markup =>
  element('path', {
    d: polyline([
      [x + opens * 8, y - 16],
      [x, y - 16],
      [x, y + 16],
      [x + opens * 8, y + 16],
    ]),
    class: 'edge',
  });

/** The backwash window on a line of flow: brackets for the two waters, the aim, and what is fitted. */
export const backwashWindow = (window: FlowWindow, options: DrawingOptions): Drawing => {
  const { width, id } = options;
  const { floor, ceiling, limit, aim, fitted } = window;
  const flows = [floor, ceiling, aim, fitted].filter((flow) => flow !== undefined).map((flow) => flow.si);
  const [from, to] = around(flows, 0.3);
  const at = linear(from, to, 8, width - 8);
  const said = (flow: Flow): string => formatQuantity(flow, options).text;
  const over: readonly Mark[] = [
    ...(aim === undefined
      ? []
      : [
          {
            x: at(aim.si),
            words: sayKey(options, 'papers.window.aim-label', { flow: aim }),
            of: 'accent-ink',
          },
        ]),
    ...(fitted === undefined
      ? []
      : [
          {
            x: at(fitted.si),
            words: sayKey(options, 'papers.window.fitted-label', { flow: fitted }),
            of: 'strong',
          },
        ]),
  ];
  const beneath: readonly Mark[] = [
    { x: at(floor.si), words: `${said(floor)}: ${sayKey(options, 'papers.window.floor')}`, of: 'second' },
    {
      x: at(ceiling.si),
      words: `${said(ceiling)}: ${sayKey(options, `papers.window.ceiling-${limit}`)}`,
      of: 'second',
    },
  ];
  const rowsAbove = marked(over, width, 0, -1).rows;
  const y = 34 + Math.max(0, rowsAbove - 1) * 20;
  const above = marked(over, width, y, -1);
  const below = marked(beneath, width, y, 1);
  const open = floor.si <= ceiling.si;
  const [left, right] = open ? [at(floor.si), at(ceiling.si)] : [at(ceiling.si), at(floor.si)];
  const tip = fitted === undefined ? 0 : at(fitted.si);
  return drawn(
    options,
    { height: y + 40 + below.rows * 20, twin: saysOf(window), patterns: ['hatch'] },
    element('rect', {
      x: left,
      y: y - 11,
      width: right - left,
      height: 22,
      class: 'wash',
      style: open ? undefined : `fill:${fillOf(id, 'hatch')}`,
    }),
    element('path', {
      d: polyline([
        [0, y],
        [width, y],
      ]),
      class: 'fine',
    }),
    bracket(at(floor.si), y, 1),
    bracket(at(ceiling.si), y, -1),
    aim === undefined
      ? undefined
      : element('path', {
          d: polyline([
            [at(aim.si), y - 16],
            [at(aim.si), y + 16],
          ]),
          class: 'accent-line',
        }),
    fitted === undefined
      ? undefined
      : element('path', {
          d: polygon([
            [tip, y - 7],
            [tip + 7, y],
            [tip, y + 7],
            [tip - 7, y],
          ]),
          class: 'ink',
        }),
    above.draw,
    below.draw,
  );
};
