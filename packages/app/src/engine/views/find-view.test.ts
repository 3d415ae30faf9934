import { describe, expect, it } from 'vitest';
import { bareVisit, demoVisit, english, madeOf, madeOfDemo, spanish } from '../testing/made-of-visit.ts';
import { findView } from './find-view.ts';

const demos = ['hotel', 'iron-well', 'laundry-fast', 'laundry-slow', 'look-alike', 'undescribed'];

describe('the odds', () => {
  it('close with none of these, which is the only dashed one, on every demo visit', () => {
    for (const name of demos) {
      const { odds } = findView(madeOfDemo(name));
      expect(odds.filter(({ isNone }) => isNone).length, name).toBe(1);
      expect(odds.at(-1)?.isNone, name).toBe(true);
      for (const { percent } of odds) expect(percent, name).toMatch(/^(< 5|\d+)\u00a0%$/);
    }
  });

  it('keep where each stood before the last reading, where that moved it', () => {
    const [leader] = findView(madeOfDemo('look-alike')).odds;
    expect(leader?.title).toBe('Treated water leaks to the drain (seal 4)');
    expect(leader?.before).toBeLessThan(leader?.p ?? 0);
    expect(leader?.for).toContain('Test the hardness of what runs at the drain');
    expect(leader?.against).toBe('Complaint: Hard water');
  });
});

describe('the test in hand', () => {
  const view = findView(madeOf(bareVisit));

  it('says what it takes, what to open, with what, and what each outcome leads to', () => {
    const { next } = view;
    expect(next?.title).toBe('Look into the brine tank and probe the salt');
    expect(next?.takes).toBe('3\u00a0min');
    expect(next?.opens).toBeUndefined();
    expect(next?.tools).toBe('Broom handle');
    expect(next?.cautions.map(({ title }) => title)).toContain('Brine and salt');
    for (const { leads, share } of next?.answers ?? []) expect([leads, share]).not.toContain(undefined);
  });

  it('has the questions before it, and other tests after it', () => {
    expect(view.askFirst).toHaveLength(2);
    expect(view.others.length).toBeGreaterThan(10);
    expect(view.others.map(({ id }) => id)).not.toContain(view.next?.id);
  });

  it('any test the address names can be taken, with its bands in the reader’s unit', () => {
    const named = (reader: typeof english) => findView(madeOf(bareVisit, reader), 'hardness-outlet').test;
    expect(named(english)?.answers.map(({ band }) => band)).toEqual([
      'below 1\u00a0gpg',
      '1 to 5\u00a0gpg',
      '5\u00a0gpg and more',
    ]);
    expect(named(spanish)?.answers[0]?.band).toBe('menos de 17.1\u00a0mg/L CaCO₃'.replace('L C', 'L\u00a0C'));
    expect(named(english)?.quantity).toMatchObject({ units: ['gpg', 'mg/L CaCO3'], byPail: false });
    expect(findView(madeOf(bareVisit), 'drain-in-service').test?.quantity?.byPail).toBe(true);
  });

  it('that runs by itself offers three others for the hands', () => {
    const waiting = findView(madeOf(bareVisit), 'brine-strength').test;
    expect(waiting?.takes).toBe('3\u00a0min and 10\u00a0min waiting');
  });
});

describe('readings so far', () => {
  it('are one line each, repeats as their median', () => {
    const { readings } = findView(madeOfDemo('hotel'));
    expect(readings.find(({ test }) => test === 'drain-in-service')).toMatchObject({
      text: '0.21\u00a0gpm',
      count: 3,
      isWild: false,
    });
  });

  it('that do not agree are marked and said, in the row and in the test itself', () => {
    const visit = demoVisit('hotel');
    const wild = {
      ...visit,
      readings: [...(visit.readings ?? []), { test: 'drain-in-service', value: '2.1 gpm' }],
    };
    const view = findView(madeOf(wild), 'drain-in-service');
    expect(view.readings.find(({ test }) => test === 'drain-in-service')?.isWild).toBe(true);
    expect(view.test?.taken.map(({ isWild }) => isWild)).toEqual([false, false, false, true]);
    expect(view.test?.wild?.says).toContain('4');
    expect(view.doubts).toHaveLength(1);
  });
});

describe('what is decided and drawn', () => {
  it('a leak is drawn as an if, with the seal it would need', () => {
    const { picture, canAct } = findView(madeOfDemo('look-alike'));
    expect(canAct).toBe(true);
    expect(picture?.title).toBe('If seal 4 is torn: service');
    expect(picture?.drawings.narrow.svg).toContain('<svg xmlns=');
    expect(picture?.drawings.narrow.twin[1]).toContain('Seal 4 is torn');
  });

  it('faults to choose from come only where the address asks for them', () => {
    expect(findView(madeOfDemo('laundry-fast')).faults).toEqual([]);
    const { faults } = findView(madeOfDemo('laundry-fast'), 'choose');
    expect(faults.length).toBeGreaterThan(30);
    expect(faults.map(({ title }) => title)).not.toContain('None of these');
  });

  it('what changed and who worked on it stand beside the complaint, in Spanish too', () => {
    const { before, complaint } = findView(madeOfDemo('laundry-slow', spanish));
    expect(complaint).toContain('Towels');
    expect(before.at(-1)).toBe(
      'Último trabajo: 20 oct 2026, the owner, Cleaned the brine side and put a spare refill control in',
    );
  });

  it('a unit whose definitions are not here still shows its complaint', () => {
    const visit = demoVisit('hotel');
    const gone = {
      ...visit,
      conditioners: visit.conditioners.map((one) => ({ ...one, family: 'gone-family' })),
    };
    const view = findView(madeOf(gone));
    expect(view.complaint).toContain('Hot water');
  });
});
