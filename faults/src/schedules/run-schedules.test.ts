import { expect, test } from 'vitest';
import { memoryGround } from './memory-ground.ts';
import { pinnedSeeds } from './pinned-seeds.ts';
import { runSchedules } from './run-schedules.ts';

test('thirty schedules of trouble, and those that failed once, end with the same on every device and the server', async () => {
  const result = await runSchedules({ count: 30, seed: 20261125, server: memoryGround });
  expect(result.failures.map(({ replay, faults }) => [replay, ...faults])).toEqual([]);
  expect(result.schedules).toBe(30 + pinnedSeeds.length);
  expect(result.entries).toBeGreaterThan(500);
  expect(result.reached.size).toBeGreaterThan(25);
}, 120_000);
