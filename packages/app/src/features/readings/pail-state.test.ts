import { expect, it } from 'vitest';
import { caught, cleared, freshPail, isRunning, runsOf, started, stopped, withoutRun } from './pail-state.ts';

const pail = freshPail('1 gal', 'gal');

it('one tap starts, one stops, and the run is what passed between them', () => {
  const running = started(pail, 1000);
  expect(isRunning(running)).toBe(true);
  expect(runsOf(running)).toEqual([]);
  expect(runsOf(stopped(running, 76_000))).toEqual([{ volume: '1 gal', milliseconds: 75_000 }]);
});

it('starting again puts the last run by, with the volume it was caught in', () => {
  const once = stopped(started(pail, 1000), 61_000);
  const again = started({ ...once, volume: '1 gal' }, 90_000);
  const twice = stopped({ ...again, volume: '5 gal' }, 100_000);
  expect(runsOf(twice)).toEqual([
    { volume: '1 gal', milliseconds: 60_000 },
    { volume: '5 gal', milliseconds: 10_000 },
  ]);
});

it('a run is left out, whether it was put by or still stands on the watch', () => {
  const twice = stopped(started(stopped(started(pail, 1000), 61_000), 90_000), 100_000);
  expect(runsOf(withoutRun(twice, 0))).toEqual([{ volume: '1 gal', milliseconds: 10_000 }]);
  expect(runsOf(withoutRun(twice, 1))).toEqual([{ volume: '1 gal', milliseconds: 60_000 }]);
});

it('a second tap on stop changes nothing, and a cleared watch has timed nothing', () => {
  const done = stopped(started(pail, 1000), 61_000);
  expect(stopped(done, 99_000)).toEqual(done);
  expect(runsOf(cleared(done))).toEqual([]);
});

it('a volume of one’s own is read with its unit, a comma as a point', () => {
  expect(caught({ ...pail, volume: '', own: '2,5', ownUnit: 'L' })).toBe('2.5 L');
});
