import type { Quantity } from '@brinewright/units';
import { formatQuantity, type Message, message } from '@brinewright/words';
import { element, type Markup } from '../markup/element.ts';
import { polyline } from '../markup/path.ts';
import { textWidth } from '../markup/text-width.ts';
import type { Reader } from '../say.ts';
import { type Drawing, type DrawingOptions, drawingText, drawn, text } from './drawing.ts';
import { around, linear, type Scale } from './scale.ts';
import { rowsOf } from './stagger.ts';

/** Limits, prediction and reading of one check. All of one kind. */
export type Tolerance = {
  readonly lower?: Quantity;
  readonly upper?: Quantity;
  readonly predicted?: Quantity;
  readonly reading?: { readonly value: Quantity /** Standard uncertainty in SI. */; readonly u?: number };
  readonly verdict: 'pass' | 'fail' | 'not-decided' | 'open';
};

const limitSays = ({ lower, upper }: Tolerance): Message => {
  if (lower !== undefined && upper !== undefined) return message('papers.tolerance.within', { lower, upper });
  if (upper !== undefined) return message('papers.tolerance.at-most', { upper });
  return lower === undefined
    ? message('papers.tolerance.open')
    : message('papers.tolerance.at-least', { lower });
};

/** Two digits of an uncertainty are all that can be known of it. */
export const uncertainty = (value: Quantity, u: number, reader: Reader): string =>
  formatQuantity({ kind: value.kind, si: u }, { ...reader, digits: 2 }).text;

const readSays = ({ reading }: Tolerance, reader: Reader): Message => {
  if (reading === undefined) return message('papers.tolerance.not-read');
  if (reading.u === undefined || reading.value.kind === 'temperature')
    return message('papers.tolerance.read-plain', { value: reading.value });
  return message('papers.tolerance.read', {
    value: reading.value,
    u: uncertainty(reading.value, reading.u, reader),
  });
};

export const toleranceSays = (tolerance: Tolerance, reader: Reader): readonly Message[] => [
  limitSays(tolerance),
  readSays(tolerance, reader),
  ...(tolerance.predicted === undefined
    ? []
    : [message('papers.tolerance.predicted', { value: tolerance.predicted })]),
];

const valuesOf = ({ lower, upper, predicted, reading }: Tolerance): readonly number[] => {
  const read =
    reading === undefined ? [] : [reading.value.si - (reading.u ?? 0), reading.value.si + (reading.u ?? 0)];
  return [lower?.si, upper?.si, predicted?.si].filter((value) => value !== undefined).concat(read);
};

const scaleFor = (tolerance: Tolerance, width: number): Scale => {
  const values = valuesOf(tolerance);
  const [from, to] = around(values.length === 0 ? [0, 1] : values, 0.35);
  return linear(from, to, 4, width - 4);
};

const level = 22;

const bracket = (x: number, opens: 1 | -1): Markup =>
  element('path', {
    d: polyline([
      [x + opens * 7, level - 16],
      [x, level - 16],
      [x, level + 16],
      [x + opens * 7, level + 16],
    ]),
    class: 'edge',
  });

const allowed = (tolerance: Tolerance, at: Scale, width: number): Markup => {
  const from = tolerance.lower === undefined ? 0 : at(tolerance.lower.si);
  const to = tolerance.upper === undefined ? width : at(tolerance.upper.si);
  return element('rect', {
    x: from,
    y: level - 11,
    width: Math.max(0, to - from),
    height: 22,
    class: 'wash',
  });
};

const whisker = (tolerance: Tolerance, at: Scale): readonly Markup[] => {
  const { reading, verdict } = tolerance;
  if (reading === undefined) return [];
  const x = at(reading.value.si);
  const [from, to] = [at(reading.value.si - (reading.u ?? 0)), at(reading.value.si + (reading.u ?? 0))];
  const of = verdict === 'fail' ? 'whisker fail' : 'whisker';
  const ends = [from, to].map((end) =>
    element('path', {
      d: polyline([
        [end, level - 7],
        [end, level + 7],
      ]),
      class: of,
    }),
  );
  const dot =
    verdict === 'not-decided' || verdict === 'open' ? 'hollow' : verdict === 'fail' ? 'fail-fill' : 'ink';
  return [
    element('path', {
      d: polyline([
        [from, level],
        [to, level],
      ]),
      class: of,
    }),
    ...ends,
    element('circle', { cx: x, cy: level, r: 6, class: dot }),
  ];
};

const limits = (tolerance: Tolerance, at: Scale, reader: Reader, width: number): readonly Markup[] => {
  const known = [tolerance.lower, tolerance.upper].filter((limit) => limit !== undefined);
  const words = known.map((limit) => formatQuantity(limit, reader).text);
  const rows = rowsOf(
    known.map((limit, index) => ({ at: at(limit.si), size: textWidth(words[index] ?? '', drawingText) })),
    width,
  );
  return rows.map(({ at: x, row }, index) =>
    text(x, level + 34 + row * 18, words[index] ?? '', { of: 'second', anchor: 'middle' }),
  );
};

/** Brackets are the limits, dashes the prediction, dot and whisker the reading with its standard uncertainty. */
export const toleranceLine = (tolerance: Tolerance, options: DrawingOptions): Drawing => {
  const { width } = options;
  const at = scaleFor(tolerance, width);
  const { lower, upper, predicted } = tolerance;
  const dashes =
    predicted === undefined
      ? undefined
      : element('path', {
          d: polyline([
            [at(predicted.si), level - 15],
            [at(predicted.si), level + 15],
          ]),
          class: 'accent-dash',
        });
  return drawn(
    options,
    { height: level + 60, twin: toleranceSays(tolerance, options) },
    lower === undefined && upper === undefined ? undefined : allowed(tolerance, at, width),
    element('path', {
      d: polyline([
        [0, level],
        [width, level],
      ]),
      class: 'fine',
    }),
    lower === undefined ? undefined : bracket(at(lower.si), 1),
    upper === undefined ? undefined : bracket(at(upper.si), -1),
    dashes,
    whisker(tolerance, at),
    limits(tolerance, at, options, width),
  );
};
