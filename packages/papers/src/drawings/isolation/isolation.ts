import { type Message, message } from '@brinewright/words';
import { element, type Markup } from '../../markup/element.ts';
import { type Point, polygon } from '../../markup/path.ts';
import { sayKey } from '../../say.ts';
import { type Drawing, type DrawingOptions, drawn, text } from '../drawing.ts';
import { behind, box, type Frame, frameOf, type Isolation, line, valveAt } from './line-model.ts';
import { pipes, stroke, valves } from './pipes.ts';

/** The unit with its three valves and a gauge, as it stands once a step is done. */
export const isolation = (state: Isolation, options: DrawingOptions): Drawing => {
  const frame = frameOf(options.width);
  return drawn(
    options,
    { height: 226, twin: twinOf(state), patterns: ['raw', 'treated'], moving: true },
    pipes(state, frame, options.id),
    valves(state, frame),
    flows(state, frame),
    element('rect', {
      x: frame.inlet - 26,
      y: box.top,
      width: frame.outlet - frame.inlet + 52,
      height: box.bottom - box.top,
      class: 'edge',
      style: 'fill:var(--metal)',
    }),
    gauge(state, frame),
    words(state, frame, options),
  );
};

/** Dashes where water moves, with a head at the building. */
const flows = (state: Isolation, { inlet, outlet, middle, end }: Frame): readonly Markup[] => {
  if (behind(state) === undefined) return [];
  const head = element('path', {
    d: polygon([
      [end - 4, line],
      [end - 20, line - 9],
      [end - 20, line + 9],
    ]),
    class: 'ink',
  });
  const way = (points: readonly Point[]): readonly Markup[] => [
    stroke(points, 'bed'),
    stroke(points, 'flow'),
  ];
  if (state.water === 'off')
    return [
      ...way([
        [6, line],
        [middle - 24, line],
      ]),
      ...way([
        [middle + 24, line],
        [end - 22, line],
      ]),
      head,
    ];
  return [
    ...way([
      [6, line],
      [inlet, line],
      [inlet, valveAt - 24],
    ]),
    ...way([
      [inlet, valveAt + 24],
      [inlet, box.top - 2],
    ]),
    ...way([
      [outlet, box.top - 2],
      [outlet, valveAt + 24],
    ]),
    ...way([
      [outlet, valveAt - 24],
      [outlet, line],
      [end - 22, line],
    ]),
    head,
  ];
};

const gauge = ({ pressure }: Isolation, { outlet, end }: Frame): readonly Markup[] => {
  const [x, y, radius] = [end - 40, 156, 29];
  const turn = pressure === 'none' ? 0.75 * Math.PI : -0.3 * Math.PI;
  const at = (angle: number, far: number): Point => [x + far * Math.cos(angle), y + far * Math.sin(angle)];
  const ticks = [0, 1, 2, 3, 4, 5, 6].map((place) => 0.75 * Math.PI + (place / 6) * 1.5 * Math.PI);
  return [
    stroke(
      [
        [outlet + 26, 190],
        [x, 190],
        [x, y + radius],
      ],
      'edge',
    ),
    element('circle', { cx: x, cy: y, r: radius, class: 'edge', style: 'fill:var(--field)' }),
    ...ticks.map((angle) => stroke([at(angle, radius - 7), at(angle, radius - 2)], 'fine')),
    stroke([[x, y], at(turn, radius - 8)], 'accent-line'),
    element('circle', { cx: x, cy: y, r: 4, class: 'accent-fill' }),
  ];
};

const words = (state: Isolation, frame: Frame, options: DrawingOptions): readonly Markup[] => {
  const { inlet, outlet, middle, end } = frame;
  const isOn = state.water === 'on';
  const stands = sayKey(options, isOn ? 'papers.isolation.open' : 'papers.isolation.shut');
  const leads = sayKey(options, isOn ? 'papers.isolation.bypass-shut' : 'papers.isolation.bypass-open');
  const water = behind(state);
  const gaugeSays = state.pressure === 'none' ? 'papers.isolation.zero' : 'papers.isolation.full';
  return [
    text(4, line - 26, sayKey(options, 'papers.isolation.raw'), { of: 'second' }),
    ...(state.bypass === 'none' ? [] : [text(middle, line - 26, leads, { of: 'strong', anchor: 'middle' })]),
    text(
      end - 2,
      12,
      sayKey(options, water === undefined ? 'papers.isolation.none' : `papers.isolation.${water}-on`),
      {
        of: 'second',
        anchor: 'end',
      },
    ),
    text(inlet + 28, valveAt + 5, stands, { of: 'strong' }),
    text(outlet + 28, valveAt + 5, stands, { of: 'strong' }),
    text((inlet + outlet) / 2, (box.top + box.bottom) / 2 + 5, sayKey(options, 'papers.isolation.unit'), {
      anchor: 'middle',
    }),
    text(end - 4, 216, sayKey(options, gaugeSays), { of: 'strong', anchor: 'end' }),
  ];
};

const twinOf = ({ water, pressure, bypass }: Isolation): readonly Message[] => [
  water === 'on' ? message('papers.isolation.says-on') : message(`papers.isolation.says-off-${bypass}`),
  message(pressure === 'none' ? 'papers.isolation.says-zero' : 'papers.isolation.says-full'),
];
