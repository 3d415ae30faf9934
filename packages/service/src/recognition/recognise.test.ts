import { english, spanish } from '@brinewright/words';
import { describe, expect, it } from 'vitest';
import type { Stage } from '../stage/stage.ts';
import { situationOf, tinyFamily } from '../testing/tiny-family.ts';
import type { TellAnswer } from '../visit/schema.ts';
import { believe, recognise } from './recognise.ts';
import type { Access, Recognition, Target } from './recognition.ts';

const free: Access = () => 0;
const perOperation: Access = (operations) => 10 * operations.length;
const restack: readonly Target[] = [
  { kind: 'replace', role: 'seal' },
  { kind: 'replace', role: 'spacer' },
];
const settings: readonly Target[] = [{ kind: 'settings' }];
const piston: readonly Target[] = [{ kind: 'replace', role: 'piston' }];

const foundIn = (stage: Stage<Recognition>): Recognition => {
  if (stage.state === 'blocked') throw new Error('blocked');
  return stage.value;
};

const recognised = (
  answers: readonly TellAnswer[],
  targets: readonly Target[] = restack,
  access: Access = free,
): Recognition => foundIn(recognise(situationOf({ answers }), targets, access));

const oddsOf = (found: Recognition, feature: string, value: string): number =>
  found.features.find((f) => f.feature === feature)?.odds.find((o) => o.value === value)?.p ?? Number.NaN;

describe('what remains', () => {
  it('starts from the weights of the features, without variants that are never made', () => {
    const start = recognised([]);
    expect(start.remaining).toBe(18);
    expect(oddsOf(start, 'regeneration', 'raw-pass')).toBeCloseTo(0.8 / (1 - 0.2 * 0.1), 12);
    expect(oddsOf(start, 'water', 'hot')).toBeCloseTo((0.8 * 0.1) / (1 - 0.2 * 0.1), 12);
  });

  it('takes an answer as right with the trust of its tell', () => {
    const found = recognised([{ tell: 'rib-count', answer: '3' }]);
    expect(oddsOf(found, 'size', 'slim')).toBeCloseTo(0.97, 12);
    expect(found.remaining).toBe(9);
    expect(found.features.find(({ feature }) => feature === 'size')?.settled).toBe('slim');
  });

  it('shares the trust among several answers that go with a variant', () => {
    const found = recognised([{ tell: 'plate', answer: 'plain' }]);
    const hotPrior = 0.08 / 0.98;
    const odds = ((1 - hotPrior) * 0.45) / ((1 - hotPrior) * 0.45 + hotPrior * 0.05);
    expect(oddsOf(found, 'water', 'cold')).toBeCloseTo(odds, 12);
  });

  it('counts an unsure answer for the cube root of a sure one', () => {
    const found = recognised([{ tell: 'rib-count', answer: '3', unsure: true }]);
    const ratio = (0.97 / 0.03) ** (1 / 3);
    expect(oddsOf(found, 'size', 'slim')).toBeCloseTo(ratio / (1 + ratio), 12);
  });

  it('reads a measured size against what each variant would show', () => {
    expect(oddsOf(recognised([{ tell: 'seal-size', answer: '41.1 mm' }]), 'size', 'slim')).toBeGreaterThan(
      0.99,
    );
    expect(oddsOf(recognised([{ tell: 'seal-size', answer: '48.4 mm' }]), 'size', 'slim')).toBeLessThan(0.01);
    expect(oddsOf(recognised([{ tell: 'seal-size', answer: '44.75 mm' }]), 'size', 'slim')).toBeCloseTo(
      0.5,
      9,
    );
  });

  it('takes what was told at 0.8 and lets what is fitted win over it', () => {
    const subject = {
      id: 's1',
      family: 'tiny',
      kind: 'softener',
      believed: { injector: 'b', size: 'slim' },
      fitted: { injector: 'a' },
    } as const;
    const found = foundIn(recognise(situationOf({ subject }), settings, free));
    expect(oddsOf(found, 'injector', 'a')).toBeCloseTo(0.8, 12);
    expect(oddsOf(found, 'injector', 'b')).toBeCloseTo(0.1, 12);
    expect(oddsOf(found, 'size', 'slim')).toBeCloseTo(0.8, 12);
  });
});

describe('what it is for', () => {
  it('needs nothing told apart when no target depends on the variant', () => {
    const found = recognised([], []);
    expect(found.decided).toBe(true);
    expect(found.groups).toHaveLength(1);
    expect(found.next).toEqual([]);
    expect(found.why.key).toBe('recognition.why.no-target');
  });

  it('asks the size and the water, not the injector, before the stack is replaced', () => {
    const found = recognised([], restack, perOperation);
    expect(found.decided).toBe(false);
    expect(found.groups).toHaveLength(4);
    expect(found.groups.flatMap(({ fits }) => Object.keys(fits))).not.toContain('injector');
    // The sleeve tells a little of the water: hot valves never shut the outlet.
    expect(found.next.map(({ tell }) => tell.id)).toEqual(['rib-count', 'plate', 'seal-size', 'sleeve']);
    expect(found.why).toEqual({ key: 'recognition.why.open', values: { count: 4, tell: 'rib-count' } });
  });

  it('is decided once one group holds 95 %', () => {
    const found = recognised([
      { tell: 'rib-count', answer: '3' },
      { tell: 'plate', answer: 'plain' },
      { tell: 'seal-size', answer: '41 mm' },
    ]);
    expect(found.decided).toBe(true);
    expect(found.groups[0]?.signature).toContain('part:kit-slim*1');
    expect(found.groups[0]?.signature).toContain('part:seal-slim*7');
    expect(found.groups[0]?.signature).toContain('tool:stuffer-slim');
    expect(found.groups[0]?.signature).not.toContain('stuffer-broad');
    expect(found.groups[0]?.fits).toMatchObject({ size: ['slim'], water: ['cold'] });
  });

  it('is not decided while another group holds a twentieth of the odds, whatever was ruled out', () => {
    // Cold of 90 % against a red plate at a trust of 0.99: hot remains alone, at odds of less than 95 %.
    const tells = tinyFamily().tells.map((tell) => (tell.id === 'plate' ? { ...tell, trust: 0.99 } : tell));
    const family = tinyFamily({ tells });
    const answers = [
      { tell: 'rib-count', answer: '3' },
      { tell: 'seal-size', answer: '41 mm' },
      { tell: 'sleeve', answer: 'no' },
      { tell: 'injector-mark', answer: 'a' },
      { tell: 'plate', answer: 'red' },
    ];
    const found = foundIn(recognise(situationOf({ family, answers }), restack, free));
    expect(oddsOf(found, 'water', 'hot')).toBeLessThan(0.95);
    expect(found.decided).toBe(false);
    expect(found.groups.map(({ fits }) => fits.water)).toEqual([['hot'], ['cold']]);
    expect(found.remaining).toBe(2);
    expect(found.why.key).not.toBe('recognition.why.one-left');
  });

  it('counts what must come off: a cheap look goes before a dear one that tells the same', () => {
    const found = recognised([], restack, perOperation);
    const ids = found.next.map(({ tell }) => tell.id);
    expect(ids.indexOf('rib-count')).toBeLessThan(ids.indexOf('seal-size'));
    expect(found.next.find(({ tell }) => tell.id === 'seal-size')?.minutes).toBe(11);
  });

  it('asks for the injector when settings hang on it, unless its rates were measured', () => {
    const asks = recognised([], settings).next.map(({ tell }) => tell.id);
    expect(asks).toContain('injector-mark');
    const flow = { value: { kind: 'flow', si: 1e-5 }, how: 'measured' } as const;
    const subject = {
      id: 's1',
      family: 'tiny',
      kind: 'softener',
      measured: { draw: flow, 'slow-rinse': flow },
    } as const;
    const measured = foundIn(recognise(situationOf({ subject }), settings, free));
    expect(measured.next.map(({ tell }) => tell.id)).not.toContain('injector-mark');
  });

  it('says of each answer how likely it is and how many groups it leaves', () => {
    const next = recognised([], piston).next.find(({ tell }) => tell.id === 'sleeve');
    expect(next?.leaves.map(({ answer }) => answer)).toEqual(['yes', 'no']);
    expect(next?.leaves.reduce((total, { p }) => total + p, 0)).toBeCloseTo(1, 12);
    expect(next?.leaves.map(({ groups }) => groups)).toEqual([1, 2]);
  });

  it('tells a conversion from what is already so', () => {
    const convert: readonly Target[] = [{ kind: 'convert', feature: 'regeneration', to: 'shut-outlet' }];
    const signatures = recognised([], convert).groups.map(({ signature }) => signature);
    expect(signatures.some((text) => text.includes('raw-pass>shut-outlet:link-pin-long'))).toBe(true);
    expect(signatures.some((text) => text.includes('convert-part:sleeve*1'))).toBe(true);
    expect(signatures.some((text) => text.includes('shut-outlet:as-it-is'))).toBe(true);
  });
});

describe('answers that disagree', () => {
  const boss = {
    kind: 'seen',
    id: 'boss',
    ask: 'boss',
    trust: 0.9,
    minutes: 1,
    after: [],
    answers: [
      { id: 'small', title: 'small', allows: { size: ['slim'] } },
      { id: 'big', title: 'big', allows: { size: ['broad'] } },
    ],
  } as const;

  it('names the fewest to doubt: the one against two, however well it is trusted', () => {
    const family = tinyFamily({ tells: [...tinyFamily().tells, boss] });
    const answers = [
      { tell: 'rib-count', answer: '3' },
      { tell: 'seal-size', answer: '48.5 mm' },
      { tell: 'boss', answer: 'big' },
    ];
    const { contradiction } = foundIn(recognise(situationOf({ family, answers }), restack, free));
    expect(contradiction).toEqual({
      doubt: [{ from: 'tell', tell: 'rib-count', answer: '3' }],
      conversions: [],
    });
  });

  it('is not troubled by a guess that disagrees', () => {
    const { contradiction } = recognised([
      { tell: 'rib-count', answer: '3' },
      { tell: 'seal-size', answer: '48.5 mm', unsure: true },
    ]);
    expect(contradiction).toBeUndefined();
  });

  it('names the conversion after which papers speak of the valve as made and the rod of the valve as it is', () => {
    const family = tinyFamily();
    const label = {
      kind: 'seen',
      id: 'label',
      ask: 'label',
      trust: 0.97,
      minutes: 1,
      after: [],
      answers: [
        { id: 'r', title: 'r', allows: { regeneration: ['raw-pass'] } },
        { id: 's', title: 's', allows: { regeneration: ['shut-outlet'] } },
      ],
    } as const;
    const inner = family.tells.map((tell) =>
      tell.id === 'sleeve' ? { ...tell, after: ['cover-off'] } : tell,
    );
    const twice = { ...family, tells: [...inner, label] };
    const found = (outer: string, inside: string) =>
      foundIn(
        recognise(
          situationOf({
            family: twice,
            answers: [
              { tell: 'label', answer: outer },
              { tell: 'sleeve', answer: inside },
            ],
          }),
          piston,
          perOperation,
        ),
      );
    expect(found('r', 'yes').contradiction?.conversions).toEqual([
      { feature: 'regeneration', from: 'raw-pass', to: 'shut-outlet' },
    ]);
    expect(found('r', 'yes').why.key).toBe('recognition.why.disagree-or-converted');
    expect(found('s', 'no').contradiction?.conversions).toEqual([]);
    expect(found('r', 'no').contradiction).toBeUndefined();
  });
});

describe('an answer to doubt', () => {
  it('is said as it was put to the technician, not by its id', () => {
    const tells = tinyFamily().tells.map((tell) =>
      tell.id === 'rib-count' && tell.kind === 'seen'
        ? {
            ...tell,
            answers: tell.answers.map((one) => ({ ...one, title: { en: `${one.id} ribs`, es: 'x' } })),
          }
        : tell,
    );
    const answers = [
      { tell: 'rib-count', answer: '3' },
      { tell: 'seal-size', answer: '48.5 mm' },
    ];
    const { why } = foundIn(
      recognise(situationOf({ family: tinyFamily({ tells }), answers }), restack, free),
    );
    expect(why.values?.answer).toEqual({ en: '3 ribs', es: 'x' });
  });
});

describe('what cannot be used', () => {
  it('keeps going without an answer it does not know, and says so', () => {
    const stage = recognise(situationOf({ answers: [{ tell: 'rib-count', answer: '5' }] }), restack, free);
    expect(stage.issues.map(({ code }) => code)).toEqual(['unknown-answer']);
    expect(foundIn(stage).remaining).toBe(18);
  });

  it('asks again for a size that is no size of the family, or no length', () => {
    const codes = (answer: string) =>
      believe(situationOf({ answers: [{ tell: 'seal-size', answer }] })).issues.map(({ code }) => code);
    expect(codes('410 mm')).toEqual(['no-such-size']);
    expect(codes('big')).toEqual(['quantity']);
    expect(codes('41 mm')).toEqual([]);
  });

  it('says nothing to tell apart for a make nobody described', () => {
    const family = tinyFamily({ id: 'undescribed', features: [], never: [], tells: [] });
    const found = foundIn(recognise(situationOf({ family, described: false }), restack, free));
    expect(found.single).toBe(true);
    expect(found.decided).toBe(true);
    expect(found.why.key).toBe('recognition.why.undescribed');
  });

  it('is blocked where the constraints leave no variant', () => {
    const family = tinyFamily({ never: [{ size: ['slim', 'broad'] }] });
    expect(recognise(situationOf({ family }), restack, free).state).toBe('blocked');
  });

  it('has every sentence in both languages', () => {
    const keys = Object.keys(english).filter((key) => key.startsWith('recognition.'));
    expect(keys.length).toBeGreaterThan(10);
    expect(keys.filter((key) => !Object.hasOwn(spanish, key))).toEqual([]);
  });
});
