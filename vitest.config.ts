import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: [
      'packages/*/{src,test}/**/*.test.ts',
      'checks/{src,test}/**/*.test.ts',
      'faults/src/**/*.test.ts',
      'scripts/**/*.test.ts',
    ],
    env: { TZ: 'UTC' },
    testTimeout: 20_000,
  },
});
