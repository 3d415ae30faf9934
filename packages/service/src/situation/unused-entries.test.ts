import { describe, expect, it } from 'vitest';
import { laundry, situationFor } from '../testing/laundry.ts';
import type { VisitDocument } from '../visit/schema.ts';

const issuesOf = (change: Partial<VisitDocument>, unit: Parameters<typeof laundry>[1] = {}) =>
  situationFor(laundry(change, unit)).issues;

const placesOf = (code: string, change: Partial<VisitDocument>) =>
  issuesOf(change)
    .filter((issue) => issue.code === code && issue.severity === 'warning' && issue.mend !== undefined)
    .map(({ at }) => at);

it('the second of two units with one id is said, and the first is used', () => {
  const [softener] = laundry().conditioners;
  if (softener === undefined) throw new Error('no softener');
  const conditioners = [softener, { ...softener, name: 'The other' }];
  expect(placesOf('unit-twice', { conditioners })).toEqual([['conditioners', 1, 'id']]);
  const stage = situationFor(laundry({ conditioners }));
  if (stage.state === 'blocked') throw new Error('blocked');
  expect(stage.value.subject.name).toBeUndefined();
});

it('every dose before the last is said not to be used; faults may be several', () => {
  const dose = (value: string) => ({ what: 'dose' as const, value });
  const fault = (value: string) => ({ what: 'fault' as const, value });
  const decided = [dose('6 lb/ft3'), fault('leak-raw-to-drain'), dose('8 lb/ft3')];
  expect(placesOf('dose-twice', { decided })).toEqual([['decided', 0]]);
  expect(issuesOf({ decided }).find(({ code }) => code === 'dose-twice')?.message.values).toEqual({
    written: '6 lb/ft3',
    used: '8 lb/ft3',
  });
  expect(placesOf('dose-twice', { decided: decided.slice(1) })).toEqual([]);
});

describe('a proof', () => {
  const of = (proof: NonNullable<VisitDocument['proofs']>[number]) =>
    issuesOf({ proofs: [proof] }).map(({ code, at, mend }) => ({ code, at, mend: mend?.values?.near }));

  it('of a check that nobody knows gets the one that was meant', () => {
    expect(of({ check: 'backwash-flo', value: '4 gpm' })).toEqual([
      { code: 'unknown-check', at: ['proofs', 0, 'check'], mend: 'backwash-flow' },
    ]);
  });

  it('of a filter says nothing of a softener', () => {
    expect(of({ check: 'pressure-loss', value: '2 psi' })).toMatchObject([{ code: 'unknown-check' }]);
  });

  it.each([
    ['a state where a value is asked', { check: 'backwash-flow', state: 'seen' as const }, 'state'],
    ['a value where a state is asked', { check: 'no-leaks', value: '0 gpm' }, 'value'],
    ['both', { check: 'no-leaks', state: 'seen' as const, value: '0 gpm' }, 'value'],
  ])('with %s is said at it', (_title, proof, field) => {
    expect(of(proof)).toMatchObject([{ code: 'proof-not-read', at: ['proofs', 0, field] }]);
  });

  it('with neither is said, and one that is read is not', () => {
    expect(of({ check: 'backwash-flow' })).toMatchObject([{ code: 'proof-not-read', at: ['proofs', 0] }]);
    expect(of({ check: 'backwash-flow', value: '4.6 gpm' })).toEqual([]);
    expect(of({ check: 'no-leaks', state: 'not-seen' })).toEqual([]);
  });
});

it.each(['25:99', '24:00', '12:60'])('a start at %s is said to be no time of day', (at) => {
  const settings = { found: { at: '02:00' }, set: { at } };
  expect(placesOf('no-time-of-day', { settings })).toEqual([['settings', 'set', 'at']]);
});

it('a start within the day is no mistake', () => {
  expect(placesOf('no-time-of-day', { settings: { found: { at: '00:00' }, set: { at: '23:59' } } })).toEqual(
    [],
  );
});
