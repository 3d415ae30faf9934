/*
 * `npm test`: the groups in order, stopping at the first red one, ending with one plain line of counts.
 * Group 2 is counted test by test, every other check as one.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
const bin = (name: string): string => join(root, 'node_modules', '.bin', name);

type Counts = { passed: number; failed: number; skipped: number };
const counts: Counts = { passed: 0, failed: 0, skipped: 0 };

const run = (
  command: string,
  args: readonly string[],
  options: { quiet?: boolean } = {},
): { ok: boolean; output: string } => {
  const result = spawnSync(command, args, {
    cwd: root,
    encoding: 'utf8',
    stdio: options.quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, TZ: 'UTC' },
    maxBuffer: 64 * 1024 * 1024,
  });
  return { ok: result.status === 0, output: `${result.stdout ?? ''}${result.stderr ?? ''}` };
};

const finish = (): never => {
  console.log(`${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`);
  process.exit(counts.failed === 0 ? 0 : 1);
};

const check = (title: string, ok: boolean, output = ''): void => {
  console.log(`${ok ? 'ok' : 'FAILED'}  ${title}`);
  if (ok) {
    counts.passed += 1;
    return;
  }
  console.log(output);
  counts.failed += 1;
  finish();
};

const command = (title: string, name: string, args: readonly string[]): void => {
  const { ok, output } = run(name, args, { quiet: true });
  check(title, ok, output);
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
  counts.passed += Number(read.numPassedTests);
  counts.failed += Number(read.numFailedTests) + (ok || Number(read.numFailedTests) > 0 ? 0 : 1);
  counts.skipped += Number(read.numPendingTests) + Number(read.numTodoTests);
  if (!ok) finish();
};

const startCommand = (): void => {
  const { ok, output } = run('npm', ['start', '--silent'], { quiet: true });
  check(
    'the start command prints the assessment of a demo visit',
    ok && output.split('\n').length > 20,
    output,
  );
};

const checkCommand = (): void => {
  const { output } = run('npm', ['run', '-s', 'brinewright', '--', 'check', '--json'], { quiet: true });
  const report = JSON.parse(output);
  const enough = report.failed === 0 && report.passed >= 120 && report.sources >= 16;
  check(`published values: ${report.passed} from ${report.sources} sources`, enough, output.slice(0, 4000));
};

console.log('1 format, lint, types, import directions');
command('format and lint', bin('biome'), ['check', '--error-on-warnings', '.']);
command('types', bin('tsc'), ['-b']);
command('import directions', bin('node'), ['scripts/import-directions.ts']);
console.log('2 unit, property, published checks, transcripts');
tests();
checkCommand();
console.log('5 the start command');
startCommand();
command('bench does not rot', bin('node'), ['bench/src/main.ts', '--smoke']);
finish();
