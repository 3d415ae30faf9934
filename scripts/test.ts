/*
 * `npm test`: the groups in order, stopping at the first red one, ending with one plain line of counts.
 * Group 2 is counted test by test, every other check as one.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bin, check, command, count, finish, run, skip } from './counts.ts';
import { startTrials } from './start-trial.ts';
import { ensureSystemPackages, installCommand, systemPackages } from './system-packages.ts';

/** Says what is missing; what needs it is skipped further down. */
const packages = (): ReadonlySet<string> => {
  const missing = new Set(ensureSystemPackages());
  for (const { name } of systemPackages)
    if (missing.has(name)) skip(`${name} is installed`, installCommand([name]));
    else check(`${name} is installed`, true);
  return missing;
};

const tests = (): void => {
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-test-'));
  const report = join(folder, 'report.json');
  const { ok } = run(bin('vitest'), [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ]);
  const read = JSON.parse(readFileSync(report, 'utf8'));
  rmSync(folder, { recursive: true });
  const failed = Number(read.numFailedTests);
  count({
    passed: Number(read.numPassedTests),
    failed: failed + (ok || failed > 0 ? 0 : 1),
    skipped: Number(read.numPendingTests) + Number(read.numTodoTests),
  });
  if (!ok) finish();
};

const publishedValues = (): void => {
  const { output } = run('npm', ['run', '-s', 'brinewright', '--', 'check', '--json'], 'quiet');
  const report = JSON.parse(output);
  const enough = report.failed === 0 && report.passed >= 120 && report.sources >= 16;
  check(`published values: ${report.passed} from ${report.sources} sources`, enough, output.slice(0, 4000));
};

const faults = (missing: ReadonlySet<string>): void => {
  const few = ['faults/src/main.ts', '--kills', '10', '--schedules', '50', '--stores'];
  command('faults, a small share: SQLite', bin('node'), [...few, 'sqlite']);
  if (missing.has('postgresql')) skip('faults on PostgreSQL', installCommand(['postgresql']));
  else command('faults, a small share: PostgreSQL', bin('node'), [...few, 'postgres']);
  if (missing.has('strace')) skip('a sync to disk before every answer', installCommand(['strace']));
  else command('a sync to disk before every answer', bin('node'), ['faults/src/main.ts', '--trace']);
};

const inBrowser = (missing: ReadonlySet<string>): void => {
  command('the field app is built', 'npm', ['run', 'build']);
  if (missing.has('chromium')) {
    skip('browser tests', installCommand(['chromium']));
    return;
  }
  const { ok, output } = run('npm', ['run', '-s', 'e2e'], 'quiet');
  count({
    passed: numberIn(output, 'pass'),
    failed: numberIn(output, 'fail') + (ok || numberIn(output, 'fail') > 0 ? 0 : 1),
    skipped: numberIn(output, 'skipped'),
  });
  console.log(
    output
      .split('\n')
      .filter((line) => /^[✔✖ℹ]/u.test(line))
      .join('\n'),
  );
  if (ok) return;
  console.log(output);
  finish();
};

/** A closing line of the browser tests: 'ℹ pass 14'. */
const numberIn = (output: string, what: string): number =>
  Number(new RegExp(`^(?:ℹ|#) ${what} (\\d+)$`, 'mu').exec(output)?.[1] ?? 0);

const demoAssessment = (): void => {
  const { ok, output } = run('npm', ['start', '--silent', '--', '--once'], 'quiet');
  check(
    'npm start -- --once prints the assessment of a demo visit',
    ok && output.split('\n').length > 20,
    output,
  );
};

console.log('1 system packages, format, lint, types, import directions');
const missing = packages();
command('format and lint', bin('biome'), ['check', '--error-on-warnings', '.']);
command('types', bin('tsc'), ['-b']);
command('import directions', bin('node'), ['scripts/import-directions.ts']);
console.log('2 unit, property, stores and sync, published checks, transcripts');
tests();
publishedValues();
console.log('3 faults');
faults(missing);
console.log('4 browser tests on the built app');
inBrowser(missing);
console.log('5 the start command');
for (const { title, ok, output } of await startTrials()) check(title, ok, output);
demoAssessment();
command('bench does not rot', bin('node'), ['bench/src/main.ts', '--smoke']);
finish();
