import { describe, expect, it } from 'vitest';
import { bareVisit, demoVisit, madeOf, madeOfDemo, spanish } from '../testing/made-of-visit.ts';
import { proveView } from './prove-view.ts';

const withProofs = (proofs: NonNullable<ReturnType<typeof demoVisit>['proofs']>) =>
  proveView(madeOf({ ...demoVisit('laundry-fast'), proofs }));

describe('checks', () => {
  const view = withProofs([
    { check: 'outlet-hardness', value: '0.2 gpg' },
    { check: 'air-gap', value: '1 in' },
    { check: 'brine-draw', value: '0.27 gpm', u: '0.03 gpm' },
    { check: 'no-leaks', state: 'seen' },
  ]);
  const check = (id: string) => [...view.now, ...view.tomorrow].find((one) => one.id === id);

  it('that fail stand first, then what is not decided, then what is open, then what passes', () => {
    const order = view.now.map(({ verdict }) => verdict);
    const rank = { fail: 0, 'not-decided': 1, open: 2, pass: 3 };
    expect(order.map((one) => rank[one])).toEqual(order.map((one) => rank[one]).toSorted((a, b) => a - b));
    expect(view.now[0]?.id).toBe('air-gap');
  });

  it('have their reading with its uncertainty, and a line once there is something to stand on it', () => {
    expect(check('outlet-hardness')).toMatchObject({
      verdict: 'pass',
      reading: { text: '0.2\u00a0gpg', spread: '±\u00a00.3' },
      must: 'Must be at most 1\u00a0gpg.',
    });
    expect(check('outlet-hardness')?.line?.narrow.twin[1]).toContain('Read 0.2');
    expect(check('backwash-flow')?.line).toBeUndefined();
  });

  it('that are not decided say how sure, and which measurement would decide', () => {
    const draw = check('brine-draw');
    expect(draw?.verdict).toBe('not-decided');
    expect(draw?.sure).toMatch(/^Within the limits: \d+\u00a0%\.$/);
    expect(draw?.decide).toContain('would decide it');
  });

  it('that are only looked at need one tap and no figure', () => {
    expect(check('no-leaks')).toMatchObject({ isSeen: true, verdict: 'pass', word: 'Pass' });
    expect(check('no-leaks')?.ask.quantity).toBeUndefined();
    expect(check('no-leaks')?.must).toBeUndefined();
  });

  it('open their limits and predictions to where they come from', () => {
    expect(check('outlet-hardness')?.limits[0]?.derivation?.source).toContain('ommon practice');
    expect(check('backwash-flow')?.predicted?.derivation?.inputs.length).toBeGreaterThan(0);
  });
});

describe('the whole proof', () => {
  it('counts what passes and parts now from tomorrow', () => {
    const view = withProofs([{ check: 'no-leaks', state: 'seen' }]);
    expect(view.title).toBe('1 of 16 checks pass');
    expect(view.tomorrow.map(({ id }) => id)).toContain('regenerated-on-time');
    expect(view.now.map(({ id }) => id)).not.toContain('regenerated-on-time');
  });

  it('speaks Spanish and metric', () => {
    const view = proveView(madeOfDemo('laundry-fast', spanish));
    expect(view.title).toBe('0 de 16 comprobaciones pasan');
    const draw = view.now.find(({ id }) => id === 'drain-in-service');
    expect(draw?.must).toBe('Debe ser a lo más 0.114\u00a0L/min.');
    expect(draw?.ask.quantity?.units).toEqual(['L/min', 'gpm']);
  });

  it('of a unit of which nothing is known still has its checks, without made-up limits', () => {
    const view = proveView(madeOf(bareVisit));
    expect(view.now.length).toBeGreaterThan(5);
    expect(view.now.find(({ id }) => id === 'brine-draw')).toMatchObject({
      verdict: 'open',
      must: 'No limit is known.',
      limits: [],
    });
  });
});
