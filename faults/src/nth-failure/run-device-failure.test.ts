import { expect, test } from 'vitest';
import { runDeviceFailure } from './run-device-failure.ts';

test('whichever call to a device’s storage fails, its state is one before or after, and the work can be finished (J2, S3)', async () => {
  const { calls, faults } = await runDeviceFailure(1);
  expect(faults.slice(0, 5)).toEqual([]);
  expect(calls).toBeGreaterThan(200);
}, 60_000);
