/*
 * `npm run bench`: assessing each demo visit at quick effort, told as a ratio to a fixed yardstick loop in the same
 * run; then pushes to the stores, beside a bare insert of the same rows. `--smoke` is one short round, so that this does not rot; nothing but this program's verdict looks at a time.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { basename, join } from 'node:path';
import { loadEquipment } from '@brinewright/equipment/load-files';
import { assess, parseVisit, type Visit } from '@brinewright/service';
import { type Effort, measure, type Times } from './measure.ts';
import { benchPushes } from './pushes.bench.ts';
import { yardstick, yardstickInput } from './yardstick.ts';

/**
 * The budget is 10 ms for `assess` at quick on the machine it was set on, where the yardstick's least time was
 * `yardstickThere` ms: that many yardsticks are allowed anywhere.
 */
const budgetThere = 10;
const yardstickThere = 1.4;
const budget = budgetThere / yardstickThere;

const now = '2026-11-25T15:00:00.000Z';
const demo = join(import.meta.dirname, '../../demo');

const smoke = process.argv.includes('--smoke');
const effort: Effort = smoke ? { warmUp: 1, runs: 3 } : { warmUp: 40, runs: 200 };

const equipment = (() => {
  const loaded = loadEquipment();
  if (!loaded.ok) throw new Error('the shipped definitions have errors');
  return loaded.value.equipment;
})();

const visits = (): readonly (readonly [string, Visit])[] =>
  readdirSync(demo)
    .filter((name) => name.endsWith('.yaml'))
    .toSorted()
    .map((name) => {
      const parsed = parseVisit(name, readFileSync(join(demo, name), 'utf8'));
      if (!parsed.ok) throw new Error(`${name} cannot be read`);
      return [basename(name, '.yaml'), parsed.value];
    });

const ms = (value: number): string => value.toFixed(2).padStart(7);

const line = (name: string, { min, mean, spread, runs }: Times, unit: number): string =>
  `${name.padEnd(16)} ${ms(min)} ${ms(mean)} ± ${ms(spread).trim().padEnd(6)} ${(min / unit).toFixed(2).padStart(7)}   ${runs}`;

const input = yardstickInput();
const measured = measure(() => yardstick(input), effort);
let { used } = measured;
const unit = measured.times.min;

console.log(`${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}${smoke ? ', smoke' : ''}`);
console.log(
  `${''.padEnd(16)} ${'min'.padStart(7)} ${'mean'.padStart(7)} ± spread ${'ratio'.padStart(6)}   runs   (ms; ratio of least times to the yardstick)`,
);
console.log(line('yardstick', measured.times, unit));

const over: string[] = [];
for (const [name, visit] of visits()) {
  const one = measure(
    () => Object.keys(assess(visit, equipment, { now, effort: 'quick' }).figures).length,
    effort,
  );
  used += one.used;
  console.log(line(name, one.times, unit));
  if (one.times.min / unit > budget) over.push(name);
}

console.log(
  `budget ${budget.toFixed(2)} yardsticks (${budgetThere} ms where it was set): ${over.length === 0 ? 'held' : `passed by ${over.join(', ')}`}`,
);
console.log(`checksum ${used.toExponential(6)}`);
over.push(...(await benchPushes(smoke)));
if (over.length > 0 && !smoke) process.exitCode = 1;
