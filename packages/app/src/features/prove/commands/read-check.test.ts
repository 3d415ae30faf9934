import { expect, it } from 'vitest';
import { english, madeOfDemo } from '../../../engine/testing/made-of-visit.ts';
import { testStream } from '../../../engine/testing/written-entries.ts';
import { proveView } from '../../../engine/views/prove-view.ts';
import { correctCheck, readCheck } from './read-check.ts';

const at = '2026-11-25T10:00:00Z';
const about = { stream: testStream, visit: 'laundry-fast', conditioner: 's1' };
const check = (id: string, more: Parameters<typeof madeOfDemo>[2]) => {
  const { now, tomorrow } = proveView(madeOfDemo('laundry-fast', english, more));
  return [...now, ...tomorrow].find((one) => one.id === id);
};

it('a check read gets its verdict, its line and its figure', () => {
  expect(
    check('outlet-hardness', readCheck(about, 'outlet-hardness', [{ value: '0.2 gpg' }], at)),
  ).toMatchObject({
    verdict: 'pass',
    word: 'Pass',
    reading: { text: '0.2\u00a0gpg', spread: '±\u00a00.3' },
  });
});

it('a check that is only looked at goes by the last word', () => {
  const seen = readCheck(about, 'no-leaks', [{ state: 'not-seen' }, { state: 'seen' }], at);
  expect(check('no-leaks', seen)?.verdict).toBe('pass');
  expect(check('no-leaks', seen.slice(0, 1))?.verdict).toBe('fail');
});

it('a reading corrected is judged anew', () => {
  const read = readCheck(about, 'air-gap', [{ value: '1 in' }], at);
  const before = check('air-gap', read);
  expect(before?.verdict).toBe('fail');
  const entry = before?.ask.taken[0]?.entry ?? '';
  const mended = [...read, ...correctCheck(about, entry, 'air-gap', { value: '2 in' }, at)];
  expect(check('air-gap', mended)?.verdict).toBe('pass');
});
