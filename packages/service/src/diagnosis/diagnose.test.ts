import type { DiagnosisTest, Family } from '@brinewright/equipment';
import { english, spanish } from '@brinewright/words';
import { describe, expect, it } from 'vitest';
import { believe } from '../recognition/recognise.ts';
import type { Access } from '../recognition/recognition.ts';
import type { Situation, TestReading } from '../situation/situation.ts';
import type { Stage } from '../stage/stage.ts';
import { finish } from '../stage/work.ts';
import { situationOf, tinyFamily } from '../testing/tiny-family.ts';
import { diagnose } from './diagnose.ts';
import { type Diagnosis, type FaultOdds, noneOfThese } from './diagnosis.ts';
import { statedOdds } from './stated-odds.ts';

const perOperation: Access = (operations) => 10 * operations.length;

const stageOf = (given: Partial<Situation>, access: Access = perOperation): Stage<Diagnosis> => {
  const s = situationOf(given);
  return finish(diagnose(s, believe(s).belief, statedOdds, access));
};

const foundIn = (given: Partial<Situation>, access: Access = perOperation): Diagnosis => {
  const stage = stageOf(given, access);
  if (stage.state === 'blocked') throw new Error('blocked');
  return stage.value;
};

const testOf = (id: string, family: Family = tinyFamily()): DiagnosisTest => {
  const test = family.tests.find((one) => one.id === id);
  if (test === undefined) throw new Error(id);
  return test;
};

const saw = (test: string, outcome: string): TestReading => ({ kind: 'state', test: testOf(test), outcome });
const measured = (test: string, value: number, u: number): TestReading => ({
  kind: 'quantity',
  test: testOf(test),
  repeats: [value],
  wild: [],
  value,
  u,
});

const of = (found: Diagnosis, fault: string): FaultOdds => {
  const odds = found.odds.find((one) => one.fault === fault);
  if (odds === undefined) throw new Error(`no ${fault}`);
  return odds;
};

/** Two faults of odds 3 and 7 and one test, as decision example D5 has them, beside none-of-these. */
const twoFaults = (): Family => {
  const family = tinyFamily();
  const [first, second] = family.faults;
  if (first === undefined || second === undefined) throw new Error('faults');
  const plain = { path: undefined, afterService: false, fits: {} };
  const { path: _a, ...bare } = { ...first, ...plain };
  const { path: _b, ...other } = { ...second, ...plain };
  return {
    ...family,
    faults: [
      { ...bare, id: 'faulty', odds: 3, repair: { replace: ['seal'], do: [], settings: false } },
      { ...other, id: 'sound', odds: 7, repair: { replace: [], do: [], settings: true } },
    ],
    tests: [
      {
        ...testOf('trickle'),
        outcomes: [
          { id: 'clear', title: 'clear', faults: {} },
          { id: 'shown', title: 'shown', faults: { faulty: 'likely' } },
        ],
        normal: 'clear',
      },
    ],
  };
};

describe('odds', () => {
  it('follow Bayes as in decision example D5, with the strengths of the definition', () => {
    const family = twoFaults();
    const reading: TestReading = { kind: 'state', test: testOf('trickle', family), outcome: 'shown' };
    const found = foundIn({ family, readings: [reading] });
    const weights = { faulty: 0.95 * 0.3 * 0.8, sound: 0.95 * 0.7 * 0.1, none: 0.05 * 0.5 };
    const total = weights.faulty + weights.sound + weights.none;
    expect(of(found, 'faulty').p).toBeCloseTo(weights.faulty / total, 12);
    expect(of(found, 'sound').p).toBeCloseTo(weights.sound / total, 12);
    expect(of(found, 'faulty').before).toBeCloseTo(0.95 * 0.3, 12);
  });

  it('keep none-of-these at 5 % before anything is told', () => {
    const family = twoFaults();
    expect(of(foundIn({ family }), noneOfThese).p).toBeCloseTo(0.05, 12);
  });

  it('leave out what this bore cannot leak and this kind of unit cannot have', () => {
    const ids = foundIn({}).odds.map(({ fault }) => fault);
    expect(ids).not.toContain('leak-top-to-outside');
    expect(ids).toContain('leak-raw-to-treated');
    const filter = foundIn({ kind: 'filter', subject: { id: 's1', family: 'tiny', kind: 'filter' } });
    expect(filter.odds.map(({ fault }) => fault)).toEqual(['pin-not-in', noneOfThese]);
  });

  it('keep every leak of a make nobody described', () => {
    const family = tinyFamily({ bores: [] });
    expect(of(foundIn({ family, described: false }), 'leak-top-to-outside').p).toBeGreaterThan(0);
  });

  it('weigh a fault of one variant by the belief in it', () => {
    const unseen = of(foundIn({}), 'sleeve-lost').p;
    const seen = of(foundIn({ answers: [{ tell: 'sleeve', answer: 'no' }] }), 'sleeve-lost').p;
    expect(seen).toBeLessThan(unseen / 10);
  });

  it('name the seals that carry a leak', () => {
    expect(of(foundIn({}), 'leak-raw-to-drain').seals).toEqual([3]);
    expect(of(foundIn({}), 'leak-raw-to-treated').seals).toEqual([6]);
    expect(of(foundIn({}), 'injector-plugged').seals).toEqual([]);
  });

  it('rise for after-service faults when somebody was there lately, and fall when it was long ago', () => {
    const p = (given: Partial<Situation>) => of(foundIn(given), 'pin-not-in').p;
    const long = situationOf();
    const visit = { ...long.visit, history: { lastWork: { when: '2020-01-01' } } };
    expect(p({ recentlyServiced: true })).toBeGreaterThan(p({}));
    expect(p({ visit })).toBeLessThan(p({}));
  });

  it('rise for what a change raises and a complaint names, a complaint less than a test', () => {
    expect(of(foundIn({ changes: ['refill-changed'] }), 'refill-time-wrong').p).toBeGreaterThan(
      5 * of(foundIn({}), 'refill-time-wrong').p,
    );
    const told = of(foundIn({ complaints: ['hard-water'] }), 'no-salt').p;
    const seen = of(foundIn({ readings: [saw('salt-level', 'low')] }), 'no-salt').p;
    expect(told).toBeGreaterThan(of(foundIn({}), 'no-salt').p);
    expect(seen).toBeGreaterThan(told);
  });
});

describe('what a reading does', () => {
  const trickle = [measured('drain-in-service', 2.6e-5, 6e-7), saw('trickle', 'raw')];

  it('makes the fault of its sure outcome lead, and says what speaks for it', () => {
    const found = foundIn({ readings: trickle });
    expect(found.odds[0]?.fault).toBe('leak-raw-to-drain');
    expect(found.odds[0]?.word).toBe('likely');
    expect(found.odds[0]?.speaksFor.map(({ key }) => key)).toEqual([
      'diagnosis.clue.seen',
      'diagnosis.clue.measured',
    ]);
    expect(of(found, 'no-salt').word).toBe('unlikely');
    expect(of(found, 'no-salt').speaksAgainst.map(({ values }) => values?.outcome)).toEqual(['some', 'raw']);
  });

  it('shows where the odds stood before the test read last', () => {
    const visit = {
      ...situationOf().visit,
      readings: [
        { test: 'trickle', state: 'raw' },
        { test: 'drain-in-service', value: '0.4 gpm' },
      ],
    };
    const found = foundIn({ readings: trickle, visit });
    const without = foundIn({ readings: [saw('trickle', 'raw')] });
    expect(of(found, 'leak-raw-to-drain').before).toBeCloseTo(of(without, 'leak-raw-to-drain').p, 12);
  });

  it('is a gap, not a guess, while the figure it is compared with is missing', () => {
    const stage = stageOf({ readings: [measured('draw', 1e-5, 1e-6)] });
    expect(stage.gaps.map(({ message }) => message.key)).toContain('diagnosis.gap.reading-not-judged');
    const plain = foundIn({});
    expect(foundIn({ readings: [measured('draw', 1e-5, 1e-6)] }).odds.map(({ p }) => p)).toEqual(
      plain.odds.map(({ p }) => p),
    );
  });
});

describe('what is to be done', () => {
  it('groups faults by their repair: one leak or the other, the stack is drawn', () => {
    const found = foundIn({
      readings: [measured('drain-in-service', 2.6e-5, 6e-7), saw('salt-level', 'fine')],
    });
    expect(found.groups[0]?.key).toBe('do:draw-stack;replace:seal;replace:spacer');
    expect(found.groups[0]?.faults.slice(0, 2)).toEqual(['leak-raw-to-drain', 'leak-soft-to-drain']);
    expect(of(found, 'leak-raw-to-drain').p).toBeLessThan(0.8);
    expect(found.act?.key).toBe(found.groups[0]?.key);
    expect(found.says.key).toBe('diagnosis.says.act-alike');
    expect(found.standsOn).toBe('measured');
  });

  it('mends faults without parts, work or settings each in its own way', () => {
    expect(foundIn({}).groups.map(({ key }) => key)).toEqual(
      expect.arrayContaining(['mend:no-salt', 'mend:pin-not-in', 'settings']),
    );
  });

  it('begins with a test, and does not act on odds of the definition alone', () => {
    const found = foundIn({});
    expect(found.act).toBeUndefined();
    expect(found.says.key).toBe('diagnosis.says.begin');
    expect(found.askFirst.map(({ key }) => key)).toEqual([
      'diagnosis.ask.changed',
      'diagnosis.ask.last-work',
    ]);
  });

  it('acts on the leader when no test is left that helps, and names what it cannot be told from', () => {
    const family = tinyFamily({ tests: [] });
    const found = foundIn({ family, complaints: ['hard-water'] });
    expect(found.next).toEqual([]);
    expect(found.act).toBe(found.groups[0]);
    expect(found.says.key).toBe('diagnosis.says.cannot-tell');
    expect(found.says.values).toMatchObject({ first: 'injector-plugged', second: 'leak-raw-to-treated' });
    expect(found.standsOn).toBe('told');
  });

  it('lets the technician decide', () => {
    const { visit } = situationOf();
    const found = foundIn({ visit: { ...visit, decided: [{ what: 'fault', value: 'injector-plugged' }] } });
    expect(found.act?.key).toBe('do:clean-injector');
    expect(found.standsOn).toBe('told');
  });

  it('never says that nothing is measured once something was read, whoever decides', () => {
    const { visit } = situationOf();
    const decided = [{ what: 'fault', value: 'leak-raw-to-drain' }] as const;
    const read = (readings: readonly TestReading[]) =>
      foundIn({ visit: { ...visit, decided: [...decided] }, readings }).standsOn;
    expect(read([measured('drain-in-service', 2.6e-5, 6e-7)])).toBe('measured');
    expect(read([saw('salt-level', 'fine')])).toBe('stated-odds');
  });

  it('says with how many others of the same repair the leading fault holds its odds', () => {
    const found = foundIn({ readings: [measured('drain-in-service', 2e-6, 6e-7)] });
    const [lead] = found.groups;
    const alone = found.odds.find(({ fault }) => fault === lead?.faults[0])?.p ?? 0;
    expect(found.says.key).toBe('diagnosis.says.test');
    expect(alone).toBeLessThan((lead?.p ?? 0) - 0.05);
    expect(found.says.values?.fault).toMatchObject({
      key: 'diagnosis.with-others',
      values: { fault: 'leak-raw-to-drain', count: 2 },
    });
  });

  it('names the leading fault alone where it holds the odds alone', () => {
    const found = foundIn({ readings: [saw('salt-level', 'full')] });
    expect(found.says).toMatchObject({ values: { fault: 'injector-plugged' } });
  });

  it('is blocked where the definition has no fault for the kind of unit', () => {
    const stage = stageOf({ family: tinyFamily({ faults: [] }) });
    expect(stage.state).toBe('blocked');
    expect(stage.gaps[0]?.message.key).toBe('diagnosis.gap.no-faults');
  });
});

describe('the next test', () => {
  it('leaves out what was made and what cannot be done', () => {
    const ids = (given: Partial<Situation>) => foundIn(given).next.map(({ test }) => test.id);
    expect(ids({})).toEqual(expect.arrayContaining(['drain-in-service', 'salt-level', 'seal-look']));
    expect(ids({ readings: [{ kind: 'cannot-do', test: testOf('salt-level') }] })).not.toContain(
      'salt-level',
    );
    expect(ids({ readings: [saw('salt-level', 'fine')] })).not.toContain('salt-level');
  });

  it('is worth what it tells of the repair, not of the fault', () => {
    const leaks = tinyFamily().faults.filter(({ id }) => id.endsWith('-to-drain'));
    const other = { replace: ['body'], do: [], settings: false };
    const apart = leaks.map((fault, n) => (n === 0 ? fault : { ...fault, repair: other }));
    const bits = (faults: Family['faults']) =>
      foundIn({ family: tinyFamily({ faults, tests: [testOf('trickle')] }) }).next[0]?.bits ?? 0;
    expect(bits(apart)).toBeGreaterThan(0.5);
    expect(bits(leaks)).toBeLessThan(0.2 * bits(apart));
  });

  it('counts what must be opened', () => {
    const look = foundIn({}).next.find(({ test }) => test.id === 'seal-look');
    expect(look?.opens).toEqual(['draw-stack']);
    expect(look?.minutes).toBe(12);
    expect(foundIn({}).next.at(-1)?.test.id).toBe('seal-look');
  });

  it('does not count waiting while other useful tests can be made meanwhile', () => {
    const family = tinyFamily();
    const waits = { hands: 2, waiting: 6 };
    const slow = { ...testOf('salt-level'), minutes: waits, needs: { water: 'on' } } as const;
    const dry = { ...testOf('drain-in-service'), needs: { water: 'off' } } as const;
    const minutes = (tests: readonly DiagnosisTest[]) =>
      foundIn({ family: { ...family, tests } }).next.find(({ test }) => test.id === 'salt-level');
    expect(minutes([slow, testOf('trickle')])).toMatchObject({ minutes: 2, meanwhile: ['trickle'] });
    expect(minutes([slow, dry])).toMatchObject({ minutes: 8, meanwhile: [] });
  });

  it('says where each outcome leads', () => {
    const next = foundIn({}).next.find(({ test }) => test.id === 'salt-level');
    expect(next?.outcomes.map(({ outcome, leads }) => [outcome, leads])).toEqual([
      ['fine', 'do:draw-stack;replace:seal;replace:spacer'],
      ['low', 'mend:no-salt'],
      ['full', 'do:clean-injector'],
    ]);
    expect(next?.outcomes.reduce((total, { p }) => total + p, 0)).toBeCloseTo(1, 12);
  });

  it('reports progress test by test', () => {
    const s = situationOf();
    const work = diagnose(s, believe(s).belief, statedOdds, perOperation);
    expect(work.next()).toEqual({ done: false, value: { done: 1, of: 5 } });
  });
});

it('has every sentence in both languages', () => {
  const keys = Object.keys(english).filter((key) => key.startsWith('diagnosis.'));
  expect(keys.length).toBeGreaterThan(10);
  expect(keys.filter((key) => !Object.hasOwn(spanish, key))).toEqual([]);
});
