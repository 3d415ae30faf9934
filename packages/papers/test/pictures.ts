import { type Quantity, type QuantityKind, quantity } from '@brinewright/units';
import type { Reader } from '@brinewright/words';
import { backwashWindow } from '../src/drawings/backwash-window.ts';
import { bedDrawing } from '../src/drawings/bed.ts';
import { cutaway } from '../src/drawings/cutaway/cutaway.ts';
import type { Drawing, DrawingOptions } from '../src/drawings/drawing.ts';
import { explodedStack } from '../src/drawings/exploded-stack/exploded-stack.ts';
import type { ExplodedStack } from '../src/drawings/exploded-stack/stack-model.ts';
import { isolation } from '../src/drawings/isolation/isolation.ts';
import { oddsBars } from '../src/drawings/odds-bars.ts';
import { stackList } from '../src/drawings/stack-list.ts';
import { timeline } from '../src/drawings/timeline.ts';
import { toleranceLine } from '../src/drawings/tolerance-line.ts';
import { boreAt } from './bore.ts';

const gallonPerMinute = 6.30902e-5;
const flow = (gpm: number): Quantity<'flow'> => quantity('flow', gpm * gallonPerMinute);
const minutes = (count: number): Quantity<'time'> => quantity('time', count * 60);
const inches = (count: number): Quantity<'length'> => quantity('length', count * 0.0254);
const kelvin = (value: number): Quantity<'temperature'> => quantity('temperature', value);
const si = <K extends QuantityKind>(kind: K, value: number): Quantity<K> => quantity(kind, value);

type Picture = { readonly name: string; readonly draw: (options: DrawingOptions) => Drawing };

/** Seven seals, six spacers, a plug and a ring, by the distances of the invented bore. */
const stackAt = (way: ExplodedStack['way'], moved: number): ExplodedStack => {
  const bore = boreAt('raw-pass', 'service');
  const sealsAt = bore.seals.map(({ at }) => at);
  const pairs = sealsAt.flatMap((_, index) => [
    ...(index === 0 ? [] : [{ is: 'spacer' } as const]),
    { is: 'seal' } as const,
  ]);
  return { pieces: [{ is: 'plug' }, ...pairs, { is: 'ring' }], sealsAt, schematic: false, way, moved };
};

/** One example is one test and one picture. */
export const pictures: readonly Picture[] = [
  {
    name: 'isolation-off',
    draw: (options) => isolation({ water: 'off', pressure: 'none', bypass: 'there' }, options),
  },
  {
    name: 'isolation-not-known',
    draw: (options) => isolation({ water: 'off', pressure: 'full', bypass: 'not-known' }, options),
  },
  {
    name: 'isolation-none',
    draw: (options) => isolation({ water: 'off', pressure: 'none', bypass: 'none' }, options),
  },
  {
    name: 'isolation-on',
    draw: (options) => isolation({ water: 'on', pressure: 'full', bypass: 'there' }, options),
  },
  { name: 'exploded-stack', draw: (options) => explodedStack(stackAt('out', 8), options) },
  { name: 'exploded-stack-full', draw: (options) => explodedStack(stackAt('out', 0), options) },
  { name: 'exploded-stack-in', draw: (options) => explodedStack(stackAt('in', 6), options) },
  {
    name: 'exploded-stack-schematic',
    draw: (options) => explodedStack({ ...stackAt('out', 15), schematic: true }, options),
  },
  { name: 'cutaway-service', draw: (options) => cutaway(boreAt('raw-pass', 'service'), options) },
  { name: 'cutaway-backwash', draw: (options) => cutaway(boreAt('raw-pass', 'backwash'), options) },
  { name: 'cutaway-brine', draw: (options) => cutaway(boreAt('raw-pass', 'brine'), options) },
  {
    name: 'cutaway-slow-rinse',
    draw: (options) => cutaway(boreAt('shut-outlet', 'brine'), { ...options, step: 'slow-rinse' }),
  },
  { name: 'cutaway-fast-rinse', draw: (options) => cutaway(boreAt('shut-outlet', 'fast-rinse'), options) },
  {
    name: 'cutaway-seal-4-torn',
    draw: (options) => cutaway(boreAt('raw-pass', 'service'), { ...options, torn: 4 }),
  },
  {
    name: 'cutaway-schematic',
    draw: (options) => cutaway({ ...boreAt('shut-outlet', 'service'), schematic: true }, options),
  },
  {
    name: 'timeline',
    draw: (options) =>
      timeline(
        [
          { step: 'backwash', time: minutes(10), toDrain: flow(5) },
          { step: 'draw', time: minutes(20), toDrain: flow(1.3) },
          { step: 'slow-rinse', time: minutes(32), toDrain: flow(0.85) },
          { step: 'fast-rinse', time: minutes(9), toDrain: flow(5) },
          { step: 'refill', time: minutes(16) },
        ],
        options,
      ),
  },
  {
    name: 'tolerance-not-decided',
    draw: (options) =>
      toleranceLine(
        {
          lower: flow(0.4),
          upper: flow(0.5),
          predicted: flow(0.45),
          reading: { value: flow(0.42), u: 0.032 * gallonPerMinute },
          verdict: 'not-decided',
        },
        options,
      ),
  },
  {
    name: 'tolerance-fail',
    draw: (options) =>
      toleranceLine(
        { lower: inches(1.5), reading: { value: inches(0.5), u: 0.001 }, verdict: 'fail' },
        options,
      ),
  },
  {
    name: 'odds',
    draw: (options) =>
      oddsBars(
        [
          { name: 'Seal 4 torn', p: 0.82, before: 0.4 },
          { name: 'Piston worn', p: 0.1, before: 0.3 },
          { name: 'None of these', p: 0.08, before: 0.08, none: true },
        ],
        options,
      ),
  },
  {
    name: 'stack-in-part',
    draw: (options) =>
      stackList(
        {
          pieces: [
            { is: 'plug' },
            { is: 'seal' },
            { is: 'spacer' },
            { is: 'seal' },
            { is: 'spacer' },
            { is: 'seal' },
            { is: 'ring' },
          ],
          out: 3,
        },
        options,
      ),
  },
  {
    name: 'bed',
    draw: (options) =>
      bedDrawing(
        {
          diameter: inches(14),
          depth: inches(34),
          free: inches(20),
          rises: [
            { temperature: kelvin(278.15), height: inches(56) },
            { temperature: kelvin(298.15), height: inches(43) },
          ],
        },
        options,
      ),
  },
  {
    name: 'window',
    draw: (options) =>
      backwashWindow(
        { floor: flow(4.2), ceiling: flow(5.6), limit: 'bed', aim: flow(4.9), fitted: si('flow', 3.2e-4) },
        options,
      ),
  },
  {
    name: 'window-empty',
    draw: (options) =>
      backwashWindow({ floor: flow(6.2), ceiling: flow(5.6), limit: 'bed', fitted: flow(5) }, options),
  },
];

export const english: Reader = { language: 'en', system: 'us' };
export const spanish: Reader = { language: 'es', system: 'metric' };
