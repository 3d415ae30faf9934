/*
 * Assesses very many arbitrary visits, from sane to absurd, with the shipped definitions: none may throw, and of each
 * everything must hold that the property tests hold a few against. Prints counts and the seed of every failure.
 */
import { parseArgs } from 'node:util';
import { loadEquipment } from '@brinewright/equipment/load-files';
import { type Assessment, assess, type Effort, type Visit } from '@brinewright/service';
import fc from 'fast-check';
import { arbitraryVisit } from '../packages/service/src/testing/arbitrary-visit.ts';
import { faultsOf } from '../packages/service/src/testing/faults-of.ts';
import { visitSchema } from '../packages/service/src/visit/schema.ts';

const usage = 'usage: study-assess [--count 10000] [--effort quick|full] [--seed 20261125]';

const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '10000' },
    effort: { type: 'string', default: 'quick' },
    seed: { type: 'string', default: '20261125' },
  },
});
const count = Number(values.count);
const firstSeed = Number(values.seed);
const effort: Effort | undefined =
  values.effort === 'quick' || values.effort === 'full' ? values.effort : undefined;
if (!Number.isInteger(count) || count < 1 || !Number.isInteger(firstSeed) || effort === undefined) {
  console.error(usage);
  process.exit(2);
}

const loaded = loadEquipment();
if (!loaded.ok) {
  console.error(JSON.stringify(loaded.issues));
  process.exit(1);
}
const { equipment } = loaded.value;
const visits = arbitraryVisit(equipment);

const assessed = (visit: Visit): Assessment | string => {
  try {
    return assess(visit, equipment, { now: '2026-11-25T10:00:00Z', effort });
  } catch (error) {
    return error instanceof Error ? (error.stack ?? error.message) : String(error);
  }
};

const states = new Map<string, number>();
const failures: { readonly seed: number; readonly faults: readonly string[] }[] = [];

const tally = ({ stages }: Assessment): void => {
  for (const [name, { state }] of Object.entries(stages)) {
    const key = `${name} ${state}`;
    states.set(key, (states.get(key) ?? 0) + 1);
  }
};

const started = performance.now();
for (let seed = firstSeed; seed < firstSeed + count; seed += 1) {
  const [document] = fc.sample(visits, { numRuns: 1, seed });
  const read = visitSchema.safeParse(document);
  const result = read.success ? assessed(read.data) : 'the schema does not take it';
  const faults = typeof result === 'string' ? [result] : faultsOf(result);
  if (typeof result !== 'string') tally(result);
  if (faults.length === 0) continue;
  failures.push({ seed, faults });
  console.log(`seed ${seed}: ${faults.slice(0, 5).join('\n  ')}`);
}

for (const [key, times] of [...states].toSorted()) console.log(`${key.padEnd(24)} ${times}`);
const seconds = (performance.now() - started) / 1000;
console.log(
  `${count} visits at ${effort} from seed ${firstSeed} in ${seconds.toFixed(0)} s: ${failures.length} failed`,
);
process.exitCode = failures.length === 0 ? 0 : 1;
