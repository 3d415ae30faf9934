import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromBase64, toBase64 } from './base64.ts';

test('bytes come back as they went, also more of them than one call takes', () => {
  const property = fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
    expect([...fromBase64(toBase64(bytes))]).toEqual([...bytes]);
  });
  fc.assert(property, { numRuns: 100, seed: 8 });
  const long = Uint8Array.from({ length: 100_001 }, (_, at) => at % 251);
  expect(fromBase64(toBase64(long))).toEqual(long);
});
