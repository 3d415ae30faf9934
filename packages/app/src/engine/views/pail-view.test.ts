import { describe, expect, it } from 'vitest';
import { speechFor } from '../speech.ts';
import { english, spanish } from '../testing/made-of-visit.ts';
import { pailView } from './pail-view.ts';

const us = speechFor(english);
const quart = (seconds: number) => ({ volume: '1 qt', milliseconds: seconds * 1000 });

describe('pails timed', () => {
  it('a quart in 75 s is 0.2 gpm, with its uncertainty at once', () => {
    // By hand: 0.25 gal / 1.25 min; mark 3 % / √3 and watch 0.5/75 together 1.86 %, so ± 0.0037 gpm.
    const { runs, keep, wild } = pailView(us, [quart(75)]);
    expect(keep).toEqual({ text: '0.2\u00a0gpm', spread: '±\u00a00.0037\u00a0gpm' });
    expect(runs).toHaveLength(1);
    expect(wild).toBeUndefined();
  });

  it('three are kept one by one, and the median is what the button says', () => {
    const { runs, keep } = pailView(us, [quart(75), quart(60), quart(70)]);
    expect(runs.map(({ text }) => text)).toEqual(['0.2\u00a0gpm', '0.25\u00a0gpm', '0.214\u00a0gpm']);
    expect(keep?.text).toBe('0.214\u00a0gpm');
  });

  it('one far from the others is marked, by the rule that every stage has', () => {
    const { runs, wild } = pailView(us, [quart(75), quart(74), quart(20)]);
    expect(runs.map(({ isWild }) => isWild)).toEqual([false, false, true]);
    expect(wild?.says).toContain('1');
    expect(wild?.mend).not.toBe('');
  });

  it('a run without water or time is no run', () => {
    expect(pailView(us, [])).toEqual({ runs: [] });
    expect(pailView(us, [{ volume: ' gal', milliseconds: 1000 }, quart(0)])).toEqual({ runs: [] });
  });

  it('says in the reader’s language and units where the flow comes from', () => {
    const { keep, derivation } = pailView(speechFor(spanish), [{ volume: '1 L', milliseconds: 30_000 }]);
    expect(keep?.text).toBe('2\u00a0L/min');
    expect(derivation?.inputs.map(({ value }) => value)).toEqual([
      '1\u00a0L ±\u00a00.03\u00a0L',
      '30\u00a0s ±\u00a00.5\u00a0s',
    ]);
    expect(derivation?.source).toContain('JCGM 100');
  });
});
