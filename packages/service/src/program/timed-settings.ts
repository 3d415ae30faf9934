import { type Controller, steps, type TimedStep } from '@brinewright/equipment';
import { brineStepTime } from '@brinewright/physics';
import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { FigureId } from '../derivation/figure.ts';
import type { Ledger } from '../derivation/ledger.ts';
import type { Situation } from '../situation/situation.ts';
import {
  putBackwashWater,
  putBrineStep,
  putCapacity,
  putDoseOfRefill,
  putFastRinsed,
  putRinsed,
} from './chain.ts';
import type { Neighbour, TimedSetting } from './program-advice.ts';
import { type Neighbours, nearest, neighboursOf, upward } from './rounding.ts';

/** The exact time of each timed step; 'brine' is the sum of the two it holds. */
const exactOf: Readonly<Record<TimedStep, FigureId>> = {
  backwash: 'program.backwash.time',
  draw: 'program.draw.time',
  'slow-rinse': 'program.slow-rinse.time',
  brine: 'program.brine.time',
  'fast-rinse': 'program.fast-rinse.time',
  refill: 'program.refill.time',
};

/** Rinses and draws are never cut short, nor anything of a filter; refill and backwash go to the nearest time. */
const roundingOf: Readonly<
  Record<TimedStep, { rule: string; round: (exact: number, n: Neighbours) => number }>
> = {
  backwash: { rule: 'nearest', round: nearest },
  draw: { rule: 'upward', round: upward },
  'slow-rinse': { rule: 'upward', round: upward },
  brine: { rule: 'upward', round: upward },
  'fast-rinse': { rule: 'upward', round: upward },
  refill: { rule: 'nearest', round: nearest },
};

/** Without a controller every step is given alone, to the minute. */
export const anyController: Controller = {
  id: 'any',
  title: 'any',
  holds: steps,
  times: { min: quantity('time', 60), max: quantity('time', 99 * 60), by: quantity('time', 60) },
  starts: [],
};

export type Timed = { readonly settings: readonly TimedSetting[]; readonly notes: readonly Message[] };

/** Every step that this controller holds, with both rounding neighbours and what they do. */
export const timedSettings = (s: Situation, ledger: Ledger): Timed => {
  const controller = s.controller ?? anyController;
  ledger.derive(
    brineStepTime,
    { drawTime: 'program.draw.time', slowRinseTime: 'program.slow-rinse.time' },
    { brineStepTime: 'program.brine.time' },
  );
  const notes: Message[] = [];
  const settings = controller.holds.flatMap((step): TimedSetting[] => {
    const exact = ledger.value(exactOf[step]);
    if (exact === undefined) return [];
    const neighbours = neighboursOf(exact, controller.times);
    if (neighbours.beyond) notes.push(beyond(step, exact, controller));
    if (neighbours.short) notes.push(short(step, exact, controller));
    return [setting(s, ledger, step, exact, neighbours)];
  });
  return { settings, notes };
};

const setting = (
  s: Situation,
  ledger: Ledger,
  step: TimedStep,
  exact: number,
  neighbours: Neighbours,
): TimedSetting => {
  const { rule, round } = s.kind === 'filter' ? roundingOf['fast-rinse'] : roundingOf[step];
  const set = round(exact, neighbours);
  ledger.choose(`program.set.${step}`, quantity('time', set), rule, { exact: exactOf[step] });
  const found = s.found[step];
  if (found !== undefined) ledger.given(`program.found.${step}`, { value: found, how: 'read' });
  return {
    step,
    exact: exactOf[step],
    below: neighbour(ledger, step, 'below', neighbours.below),
    above: neighbour(ledger, step, 'above', neighbours.above),
    set: `program.set.${step}`,
    ...(found === undefined ? {} : { found: `program.found.${step}` }),
    changed: found !== undefined && Math.abs(found.si - set) > 0.5,
  };
};

const beyond = (step: TimedStep, exact: number, controller: Controller): Message =>
  message('program.beyond-controller', {
    step: message(`program.step.${step}`),
    exact: quantity('time', exact),
    most: controller.times.max,
  });

const short = (step: TimedStep, exact: number, controller: Controller): Message =>
  message('program.below-controller', {
    step: message(`program.step.${step}`),
    exact: quantity('time', exact),
    least: controller.times.min,
  });

/** What a neighbouring time does to salt, rinse, capacity or water. */
const neighbour = (ledger: Ledger, step: TimedStep, side: 'below' | 'above', time: number): Neighbour => {
  const at = `program.${side}.${step}`;
  ledger.choose(`${at}.time`, quantity('time', time), side, { exact: exactOf[step] });
  switch (step) {
    case 'refill':
      putDoseOfRefill(ledger, at, `${at}.time`);
      putCapacity(ledger, at, `${at}.dose`);
      return does(ledger, time, [
        ['salt', `${at}.salt`],
        ['capacity', `${at}.volume.full`],
      ]);
    case 'brine':
      putSameBrine(ledger, at);
      putBrineStep(ledger, at, `${at}.time`);
      return does(ledger, time, [['rinse', `${at}.slow-rinse.bed-volumes`]]);
    case 'slow-rinse':
      putRinsed(ledger, at, `${at}.time`);
      return does(ledger, time, [['rinse', `${at}.slow-rinse.bed-volumes`]]);
    case 'fast-rinse':
      putFastRinsed(ledger, at);
      return does(ledger, time, [['rinse', `${at}.fast-rinse.bed-volumes`]]);
    case 'backwash':
      putBackwashWater(ledger, at);
      return does(ledger, time, [['water', `${at}.water.backwash`]]);
    case 'draw':
      return { time, does: [] };
  }
};

const does = (
  ledger: Ledger,
  time: number,
  figures: readonly (readonly [Neighbour['does'][number]['what'], FigureId])[],
): Neighbour => ({
  time,
  does: figures.filter(([, id]) => ledger.has(id)).map(([what, figure]) => ({ what, figure })),
});

const putSameBrine = (ledger: Ledger, at: string): void => {
  const time = ledger.value('program.draw.time');
  if (time !== undefined)
    ledger.choose(
      `${at}.draw.time`,
      quantity('time', time),
      'same',
      { draw: 'program.draw.time' },
      { as: 'program.draw.time' },
    );
};
