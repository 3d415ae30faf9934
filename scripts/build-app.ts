import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { bin, root } from './counts.ts';

/*
 * Before the workshop starts: builds the field app where it is not built or older than what it is made of. Says so on
 * standard error, since the start command prints one line only.
 */

const app = join(root, 'packages', 'app');
const built = join(app, 'dist', 'budget.json');

const newestBelow = (folder: string): number =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !/\.test\.tsx?$/u.test(entry.name))
    .reduce((newest, entry) => Math.max(newest, statSync(join(entry.parentPath, entry.name)).mtimeMs), 0);

/** Everything that is bundled: the packages of the engine, the app itself, and the definitions that come with it. */
const sources = (): readonly string[] => [
  ...['units', 'words', 'physics', 'equipment', 'service', 'papers', 'journal', 'app'].map((name) =>
    join(root, 'packages', name, 'src'),
  ),
  join(root, 'packages', 'equipment', 'definitions'),
  join(app, 'build'),
  join(app, 'public'),
];

const isBuilt = (): boolean =>
  existsSync(built) && statSync(built).mtimeMs > Math.max(...sources().map(newestBelow));

const build = (): void => {
  console.error('Building the field app, some seconds.');
  const { status, stderr } = spawnSync(bin('vite'), ['build', '--logLevel', 'error'], {
    cwd: app,
    stdio: ['ignore', 'ignore', 'pipe'],
    encoding: 'utf8',
  });
  if (status === 0) return;
  console.error(stderr);
  console.error('The field app was not built; the pages of the workshop serve without it.');
};

if (existsSync(bin('vite')) && !isBuilt()) build();
