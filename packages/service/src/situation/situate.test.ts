import { toUnit } from '@brinewright/units';
import { describe, expect, it } from 'vitest';
import { laundry, situationFor } from '../testing/laundry.ts';
import type { VisitDocument } from '../visit/schema.ts';

const situated = (document: VisitDocument) => {
  const stage = situationFor(document);
  if (stage.state === 'blocked') throw new Error('blocked');
  const read = (id: string, unit: string): number => {
    const figure = stage.figures[id];
    if (figure === undefined) throw new Error(`no figure ${id}`);
    return toUnit(figure.quantity, unit);
  };
  return { stage, read, s: stage.value, by: (id: string) => stage.figures[id]?.by };
};

const gapsOf = (document: VisitDocument): readonly string[] =>
  situationFor(document).gaps.map(({ message }) => message.key);

const codesOf = (document: VisitDocument): readonly string[] =>
  situationFor(document).issues.map(({ code }) => code);

describe('a situation', () => {
  it('is blocked only where nobody knows which unit is meant or what it is', () => {
    const elsewhere = situationFor(laundry({ subject: 's2' }));
    expect(elsewhere).toMatchObject({ state: 'blocked', issues: [{ code: 'no-subject', at: ['subject'] }] });
    const nobody = situationFor(laundry({}, { family: 'nobody' }));
    expect(nobody).toMatchObject({
      state: 'blocked',
      issues: [{ code: 'unknown-family', at: ['conditioners', 0, 'family'] }],
    });
    const bare: VisitDocument = {
      schema: 1,
      id: 'v1',
      site: { name: 'Site' },
      conditioners: [{ id: 's1', family: 'undescribed', kind: 'softener' }],
      subject: 's1',
    };
    expect(situationFor(bare).state).toBe('done');
    expect(gapsOf(bare)).toEqual([
      'situation.gap.water',
      'situation.gap.tank',
      'situation.gap.bed',
      'situation.gap.free',
      'situation.gap.age',
      'situation.gap.demand',
      'situation.gap.rate.backwash',
      'situation.gap.rate.draw',
      'situation.gap.rate.slow-rinse',
      'situation.gap.rate.refill',
      'situation.gap.controller',
    ]);
  });

  it('has no gap where everything is known', () => {
    const media = [{ medium: 'gel-cation', volume: '3 ft3', free: '20 in', age: '2 yr' }];
    expect(gapsOf(laundry({}, { media }))).toEqual([]);
    expect(codesOf(laundry())).toEqual([]);
  });

  it('reckons the tank from girth and wall, and the bed from depth', () => {
    const media = [{ medium: 'gel-cation', depth: '34 in', free: '20 in' }];
    const { read } = situated(laundry({}, { tank: { girth: '45.4 in', wall: '0.25 in' }, media }));
    // 45.4 / π − 2 × 0.25 = 13.951 in; π/4 × 13.951² × 34 / 1728 = 3.008 ft³.
    expect(read('situation.tank.diameter', 'in')).toBeCloseTo(13.951, 3);
    expect(read('situation.bed.volume', 'ft3')).toBeCloseTo(3.008, 3);
  });

  it('takes hardness from calcium and magnesium where nobody titrated it', () => {
    const { read } = situated(laundry({ water: [{ of: 'raw', calcium: '100 mg/L', magnesium: '21 mg/L' }] }));
    // 100 / 20.039 + 21 / 12.1525 = 4.990 + 1.728 = 6.718 eq/m³; × 50.04 = 336 mg/L as CaCO3.
    expect(read('situation.hardness', 'mg/L CaCO3')).toBeCloseTo(336.2, 0);
  });

  it('holds a titrated hardness against calcium and magnesium only where both were analysed', () => {
    const of = (ions: object) => codesOf(laundry({ water: [{ of: 'raw', hardness: '18 gpg', ...ions }] }));
    expect(of({ iron: '0.2 mg/L', calcium: '10 mg/L' })).not.toContain('water-hardness');
    // 20 and 5 mg/L make 70.5 mg/L as CaCO3, and 18 gpg are 308.
    expect(of({ calcium: '20 mg/L', magnesium: '5 mg/L' })).toContain('water-hardness');
  });

  it('marks every default as assumed, and what was written as it was written', () => {
    const { by } = situated(laundry({ water: [{ of: 'raw', hardness: '18 gpg' }] }));
    expect(by('situation.water.iron')).toEqual({ kind: 'given', how: 'assumed' });
    expect(by('situation.temperature.coldest')).toEqual({ kind: 'given', how: 'assumed' });
    expect(by('situation.hardness')).toEqual({ kind: 'given', how: 'measured' });
    expect(by('situation.bed.volume')).toEqual({ kind: 'given', how: 'read' });
  });

  it('lets a measured rate beat the chart, and the chart serve where nobody measured', () => {
    const measured = { backwash: '5 gpm' };
    const { read, by } = situated(laundry({}, { measured }));
    expect(read('situation.rate.backwash', 'gpm')).toBeCloseTo(5, 9);
    expect(read('situation.chart.backwash', 'gpm')).toBeCloseTo(4.6, 9);
    // The middle injector at 60 psi, and the refill control of 2 slots.
    expect(read('situation.rate.draw', 'gpm')).toBeCloseTo(0.305, 9);
    expect(read('situation.rate.refill', 'gpm')).toBeCloseTo(0.5, 9);
    expect(by('situation.rate.fast-rinse')).toEqual({ kind: 'choice', rule: 'same-drain-control' });
  });

  it('reads an injector between the pressures of its chart, and at its end beyond them', () => {
    const drawAt = (pressure: string) =>
      situated(laundry({ supply: { pressure } }, { measured: {} })).read('situation.rate.slow-rinse', 'gpm');
    // 0.55 gpm at 40 psi and 0.65 at 60: 0.60 at 50.
    expect(drawAt('50 psi')).toBeCloseTo(0.6, 9);
    expect(drawAt('150 psi')).toBeCloseTo(0.8, 9);
    expect(drawAt('5 psi')).toBeCloseTo(0.44, 9);
  });

  it('takes a rate read as a test for the rate of the unit only while the unit is sound', () => {
    const refill = (value: string) =>
      situated(laundry({ readings: [{ test: 'refill-rate', value }] }, { measured: {} })).read(
        'situation.rate.refill',
        'gpm',
      );
    expect(refill('0.55 gpm')).toBeCloseTo(0.55, 9);
    // Half of the chart's 0.5 gpm tells of a fault, not of a rate to program for.
    expect(refill('0.25 gpm')).toBeCloseTo(0.5, 9);
  });
});

describe('readings', () => {
  const of = (...values: readonly string[]) =>
    laundry({ readings: values.map((value) => ({ test: 'drain-in-service', value })) });

  it('of one test are repeats: their median, with the wild one marked', () => {
    const { s } = situated(of('0.21 gpm', '0.20 gpm', '2.2 gpm', '0.22 gpm'));
    const [reading] = s.readings;
    if (reading?.kind !== 'quantity') throw new Error('no quantity');
    expect(reading.value).toBeCloseTo(0.215 * 6.30902e-5, 9);
    expect(reading.wild).toEqual([2]);
  });

  it('are asked about when odd, with the unit that was probably meant', () => {
    const odd = situationFor(laundry({ readings: [{ test: 'hardness-outlet', value: '150 gpg' }] }));
    const issue = odd.issues.find(({ code }) => code === 'reading-odd');
    expect(issue?.at).toEqual(['readings', 0, 'value']);
    expect(issue?.mend?.key).toMatch(/^situation\.reading\.odd/u);
  });

  it('are kept and said where test, state or unit are not known', () => {
    const codes = codesOf(
      laundry({
        readings: [
          { test: 'nothing-known', value: '1 gpm' },
          { test: 'drain-in-service', value: '1 psi' },
          { test: 'bypass-look', state: 'sideways' },
        ],
      }),
    );
    expect(codes).toEqual(expect.arrayContaining(['unknown-test', 'quantity', 'unknown-state']));
  });

  it('of another unit are left to the visit of that unit', () => {
    const { s } = situated(
      laundry({ readings: [{ test: 'drain-in-service', conditioner: 'f1', value: '1 gpm' }] }),
    );
    expect(s.readings).toEqual([]);
  });

  it('that could not be done are known as such, unless somebody did it after all', () => {
    const cannot = { test: 'bypass-look', state: 'cannot-do' };
    const kindOf = (readings: VisitDocument['readings']) =>
      situated(laundry({ readings })).s.readings.map(({ kind }) => kind);
    expect(kindOf([cannot])).toEqual(['cannot-do']);
    expect(kindOf([cannot, { test: 'bypass-look', state: 'service' }])).toEqual(['state']);
  });
});

describe('ids that the definitions do not have', () => {
  it('are said with their place and what is known instead', () => {
    const issues = situationFor(
      laundry(
        { answers: [{ tell: 'no-tell', answer: 'x' }], done: [{ operation: 'no-operation' }] },
        {
          fitted: { controller: 'no-controller' },
          media: [{ medium: 'no-medium', volume: '3 ft3', free: '20 in' }],
        },
      ),
    ).issues.filter(({ code }) => code === 'unknown-id');
    expect(issues.map(({ at }) => at)).toEqual([
      ['conditioners', 0, 'fitted', 'controller'],
      ['conditioners', 0, 'media', 0, 'medium'],
      ['answers', 0, 'tell'],
      ['done', 0, 'operation'],
    ]);
    expect(issues.every(({ mend }) => mend !== undefined)).toBe(true);
  });
});

describe('what was heard', () => {
  it('names complaints and changes by the words of the customer, at the beginning of a word', () => {
    const { s } = situated(
      laundry({
        complaint: { words: 'Hard water, and salty after the night' },
        history: { changed: 'The refill control was exchanged' },
      }),
    );
    expect(s.complaints.length).toBeGreaterThan(0);
    expect(s.changes).toContain('refill-control-changed');
    const { s: other } = situated(laundry({ complaint: { words: 'asphalt' } }));
    expect(other.complaints).toEqual([]);
  });

  it('remembers work of the last two months only', () => {
    const when = (day: string) =>
      situated(laundry({ date: '2026-11-25', history: { lastWork: { when: day } } })).s.recentlyServiced;
    expect(when('2026-10-20')).toBe(true);
    expect(when('2026-08-20')).toBe(false);
    expect(when('2026-12-20')).toBe(false);
  });
});

describe('the pail under the drain', () => {
  const impossible = { seen: 'nothing', rate: '0 gpm', temperature: '50 degF' } as const;

  it('that cannot be reckoned with is said, and the assumed bead size stands', () => {
    const { stage, by } = situated(laundry({}, { pail: impossible }));
    expect(stage.issues.map(({ code }) => code)).toContain('cannot-compute');
    expect(by('situation.bed.grain')).toEqual({ kind: 'given', how: 'assumed' });
  });
});

it('takes the newest analysis of the raw water, wherever it stands', () => {
  const hardness = (...water: NonNullable<VisitDocument['water']>): number =>
    situated(laundry({ water })).read('situation.hardness', 'gpg');
  const old = { of: 'raw', date: '2024-03-01', hardness: '22 gpg' } as const;
  const fresh = { of: 'raw', date: '2026-09-01', hardness: '14 gpg' } as const;
  const undated = { of: 'raw', hardness: '30 gpg' } as const;
  expect([hardness(fresh, old), hardness(old, fresh), hardness(fresh, undated)].map(Math.round)).toEqual([
    14, 14, 14,
  ]);
  expect(hardness(fresh, { ...fresh, hardness: '15 gpg' })).toBeCloseTo(15, 9);
  expect(hardness({ of: 'treated', hardness: '1 gpg' }, undated)).toBeCloseTo(30, 9);
});
