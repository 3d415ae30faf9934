import type { Draft } from '@brinewright/journal';
import { describe, expect, test } from 'vitest';
import { gateAgreed, handChanged, wayBackSaid } from '../../features/work/commands/gate.ts';
import type { Place } from '../../offline/draft-about.ts';
import { cautionAcknowledged, operationDone } from '../../steps/commands/done.ts';
import { bareVisit, demoVisit, english, madeOf, madeOfDemo, spanish } from '../testing/made-of-visit.ts';
import { testStream } from '../testing/written-entries.ts';
import { type WorkView, workView } from './work-view.ts';

const placeOf = (name: string): Place => {
  const { id, subject } = demoVisit(name);
  return { stream: testStream, visit: id, conditioner: subject };
};

const hotel = placeOf('hotel');
const at = (minute: number): string => `2026-11-25T10:${String(minute).padStart(2, '0')}:00Z`;
const minuteOf = new Map<string, number>();

/** Everything of the plan up to a step, each marked done with its full count. */
const upTo = (view: WorkView, step: string): readonly Draft[] => {
  const end = view.steps.findIndex(({ id }) => id === step);
  return view.steps.slice(0, end).flatMap(({ id, writes, counts }, minute) => {
    minuteOf.set(id, minute);
    const full = Object.fromEntries(counts.map(({ is, of }) => [is, of]));
    return operationDone(hotel, writes, at(minute), counts.length === 0 ? undefined : full);
  });
};

const facts = (...ids: readonly string[]): readonly Draft[] =>
  ids.flatMap((id) => cautionAcknowledged(hotel, id, at(30)));

const passedGate: readonly Draft[] = [
  ...handChanged(hotel, 'kit', ['reseal-broad-epdm'], 'drain-d6'),
  ...handChanged(hotel, 'tools', ['puller-broad', 'hook-broad', 'nut-driver-11'], 'stuffer-broad'),
];

const stepOf = (view: WorkView, id: string) => {
  const step = view.steps.find((one) => one.id === id);
  if (step === undefined) throw new Error(`no step ${id} among ${view.steps.map((one) => one.id).join(' ')}`);
  return step;
};

const fresh = workView(madeOfDemo('hotel'));

describe('the work view', () => {
  test('starts with the first record and counts the operations without the gate', () => {
    expect(fresh.now).toBe('note-readings');
    expect(fresh.steps).toHaveLength(42);
    expect(fresh.steps.map(({ number }) => number)).toEqual(fresh.steps.map((_, index) => index + 1));
    expect(fresh.minutesLeft).toBe('192\u00a0min');
  });

  test('keeps what shuts the water blocked until the gate is passed, and the records open', () => {
    expect(stepOf(fresh, 'note-readings').blocked).toBeUndefined();
    expect(stepOf(fresh, 'warn-people').blocked).toEqual({
      at: 'gate',
      why: 'The gate is not passed. The water stays on until it is.',
    });
  });

  test('names at the gate what is not in hand, with the price of the parts', () => {
    expect(fresh.gate?.passed).toBe(false);
    expect(fresh.gate?.before).toBe('warn-people');
    expect(fresh.gate?.kit.map(({ id, inHand }) => `${id} ${inHand}`)).toEqual([
      'reseal-broad-epdm true',
      'drain-d6 false',
    ]);
    expect(fresh.gate?.asks.filter(({ met }) => !met).map(({ id }) => id)).toContain('kit');
    expect(fresh.gate?.price).toBe('93\u00a0USD');
  });

  test('lets a part in the hand pass the gate, and the first fact to be seen block next', () => {
    const view = workView(madeOfDemo('hotel', english, passedGate));
    expect(view.gate?.asks.filter(({ met }) => !met)).toEqual([]);
    expect(view.gate?.passed).toBe(true);
    expect(stepOf(view, 'warn-people').blocked).toBeUndefined();
    expect(stepOf(view, 'isolate-unit').blocked?.why).toBe('To be seen: A tap above stands open');
  });

  test('asks for the fact of a caution with the last preparing step that names it', () => {
    const due = fresh.steps.flatMap(({ id, cautions }) =>
      cautions.filter(({ isDue }) => isDue).map((one) => `${one.id} at ${id}`),
    );
    expect(due).toEqual([
      'vacuum-collapse at open-to-air',
      'people-warned at isolate-unit',
      'hot-water at let-cool',
      'mains-power at power-off',
      'isolate-and-vent at verify-no-pressure',
      'air-gap at drain-line-off',
      'pressure-returns at open-water',
    ]);
  });

  test('marks nothing after an unseen fact as ready, and opens the way once it was seen', () => {
    const done = [...passedGate, ...upTo(fresh, 'cover-off')];
    const unseen = workView(
      madeOfDemo('hotel', english, [
        ...done,
        ...facts('vacuum-collapse', 'people-warned', 'hot-water', 'mains-power'),
      ]),
    );
    expect(stepOf(unseen, 'cover-off').blocked).toEqual({
      at: 'verify-no-pressure',
      why: 'To be seen: Gauge at 0 and the open tap dry',
    });
    const seen = workView(
      madeOfDemo('hotel', english, [
        ...done,
        ...facts('vacuum-collapse', 'people-warned', 'hot-water', 'mains-power', 'isolate-and-vent'),
      ]),
    );
    expect(stepOf(seen, 'cover-off').blocked).toBeUndefined();
    const vent = stepOf(seen, 'back-plate-off').cautions.find(({ id }) => id === 'isolate-and-vent');
    expect(vent?.seen).toEqual({ at: '10:30' });
  });

  test('draws the stack only for the step that is looked at', () => {
    expect(fresh.steps.filter(({ stack }) => stack !== undefined)).toEqual([]);
    const view = workView(madeOfDemo('hotel'), 'stack-out');
    const step = stepOf(view, 'stack-out');
    expect(step.stack?.way).toBe('out');
    expect(step.stack?.order).toHaveLength(15);
    expect(step.counts.map(({ is, of }) => `${is} ${of}`)).toEqual([
      'seal 7',
      'spacer 6',
      'plug 1',
      'ring 1',
    ]);
    expect(stepOf(workView(madeOfDemo('hotel'), 'stack-out.back'), 'stack-out.back').stack?.way).toBe('in');
    expect(stepOf(workView(madeOfDemo('hotel'), 'home-valve'), 'home-valve').picture?.narrow.svg).toContain(
      '<svg',
    );
  });

  test('draws the valves of the line once they are shut, and once they are open again', () => {
    const pictureOf = (id: string) => stepOf(workView(madeOfDemo('hotel'), id), id).picture?.wide.twin;
    expect(pictureOf('isolate-unit')).toEqual([
      'Inlet and outlet are shut; raw water goes round by the bypass, where there is one.',
      'The gauge shows the pressure of the line.',
    ]);
    expect(pictureOf('verify-no-pressure')?.[1]).toBe('The gauge rests at 0.');
    expect(pictureOf('open-water')?.[0]).toMatch(/^Inlet and outlet are open/u);
    expect(pictureOf('cover-off')).toBeUndefined();
  });

  test('stops at a miscount with what is missing, and blocks everything else', () => {
    const done = [...passedGate, ...upTo(fresh, 'stack-out')];
    const short = operationDone(hotel, { operation: 'stack-out' }, at(40), {
      plug: 1,
      seal: 6,
      spacer: 6,
      ring: 1,
    });
    const view = workView(madeOfDemo('hotel', english, [...done, ...short]));
    expect(view.stopped?.at).toBe('stack-out');
    expect(view.stopped?.why).toContain('6');
    expect(view.now).toBe('stack-out');
    expect(stepOf(view, 'inspect-bore').blocked?.at).toBe('stack-out');
    expect(stepOf(view, 'stack-out').counts.find(({ is }) => is === 'seal')?.counted).toBe(6);
  });

  test('names the entry that can be taken back, and what is off at this moment', () => {
    const view = workView(madeOfDemo('hotel', english, [...passedGate, ...upTo(fresh, 'piston-out')]));
    const cover = stepOf(view, 'cover-off');
    expect(cover.done).toBe(true);
    expect(cover.entry).toMatch(/^0000/u);
    expect(cover.doneAt).toBe(`10:${minuteOf.get('cover-off')}`);
    expect(view.apart.states.map(({ id, value }) => `${id} ${value}`)).toEqual([
      'water off',
      'pressure none',
      'power off',
      'piston removal',
    ]);
    expect(view.apart.off).toContain('Put the cover on');
    expect(view.apart.off).not.toContain('Slide the piston in');
  });

  test('asks for the facts anew once the unit was shut a second time', () => {
    const first = [
      ...passedGate,
      ...upTo(fresh, 'look-for-leaks'),
      ...cautionAcknowledged(hotel, 'isolate-and-vent', at(5)),
    ];
    const again = ['isolate-unit', 'cover-off', 'link-pin-out', 'wiring-off', 'drive-off'].flatMap(
      (operation) => operationDone(hotel, { operation, instance: 2 }, at(50)),
    );
    const stale = workView(madeOfDemo('hotel', english, [...first, ...again]));
    const open = stepOf(stale, 'verify-no-pressure#2');
    expect(open.writes).toEqual({ operation: 'verify-no-pressure', instance: 2 });
    const caution = open.cautions.find(({ id }) => id === 'isolate-and-vent');
    expect(caution).toMatchObject({ isDue: true });
    expect(caution?.seen).toBeUndefined();
    const anew = cautionAcknowledged(hotel, 'isolate-and-vent', at(55));
    const seen = stepOf(workView(madeOfDemo('hotel', english, [...first, ...again, ...anew])), open.id);
    expect(seen.cautions.find(({ id }) => id === 'isolate-and-vent')?.seen).toEqual({ at: '10:55' });
  });

  test('speaks Spanish and metric', () => {
    const view = workView(madeOfDemo('hotel', spanish), 'stack-out');
    expect(stepOf(view, 'power-off').order).toBe('Cortar la corriente y desconectar');
    expect(stepOf(view, 'stack-out').counts.map(({ name }) => name)).toEqual([
      'Sellos',
      'Espaciadores',
      'Tapones',
      'Anillos',
    ]);
    expect(view.language).toBe('es');
  });

  test('reads a step aloud: order, tools, side, cautions, how', () => {
    const { aloud } = stepOf(fresh, 'back-plate-off');
    expect(aloud).toMatch(/^Take the back plate off\. /u);
    expect(aloud).toContain('Warning. Pressure in the unit.');
  });

  test('of a unit nobody knows it still says what to do first', () => {
    const view = workView(madeOf(bareVisit));
    expect(view.gaps).toEqual(['Nothing to do yet. Find the fault, or write what is to be done.']);
    expect(view.found.looks.length).toBeGreaterThan(3);
  });

  test('an undescribed make has the way in ready, and no gate where the water stays on', () => {
    const view = workView(madeOfDemo('undescribed'));
    expect(view.gate).toBeUndefined();
    expect(view.wayIn?.orders.length).toBeGreaterThan(5);
  });

  test('a family that is not on this device says so and shows no steps of its own', () => {
    const gone = {
      ...demoVisit('hotel'),
      conditioners: demoVisit('hotel').conditioners.map((one) => ({ ...one, family: 'not-here' })),
    };
    const view = workView(madeOf(gone));
    expect(view.steps.every(({ order }) => order !== '')).toBe(true);
    expect(view.found.tells).toEqual([]);
  });

  test('the way back written and the outage agreed close their asks', () => {
    const place = placeOf('look-alike');
    const more = [...gateAgreed(place, 'outageAgreed', true), ...wayBackSaid(place, 'Old stack on a board')];
    const view = workView(madeOfDemo('look-alike', english, more));
    const met = view.gate?.asks.filter((ask) => ask.met).map(({ id }) => id);
    expect(met).toEqual(['variant', 'photographed', 'price', 'outage', 'way-back']);
    expect(view.gate?.kit.find(({ id }) => id === 'reseal-broad-nitrile')?.wrong).toContain('broad');
  });
});
