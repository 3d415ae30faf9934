import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { test } from 'node:test';
import { gzipSync } from 'node:zlib';

const dist = join(import.meta.dirname, '../../packages/app/dist');
const limit = 180_000;

test('the first screen is within 180 kB', async () => {
  const read: unknown = JSON.parse(await readFile(join(dist, 'budget.json'), 'utf8'));
  const start = typeof read === 'object' && read !== null && 'start' in read ? read.start : [];
  assert.ok(Array.isArray(start) && start.length > 0, 'budget.json names the chunks');
  const sizes = await Promise.all(
    start.map(
      async (name) =>
        [String(name), gzipSync(await readFile(join(dist, String(name))), { level: 9 }).length] as const,
    ),
  );
  const sum = sizes.reduce((total, [, size]) => total + size, 0);
  for (const [name, size] of sizes) console.log(`${String(size).padStart(7)}  ${name}`);
  console.log(`${String(sum).padStart(7)}  of ${limit}`);
  assert.ok(sum <= limit);
});
