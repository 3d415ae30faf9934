import { readFileSync, writeFileSync } from 'node:fs';
import { enableCompileCache } from 'node:module';
import { endQuietly } from './closed-pipe.ts';
import { realPath } from './real-path.ts';
import { stopAsked } from './stop-asked.ts';

/* A third of the start goes into compiling the same files again; so the program is loaded after this. */
enableCompileCache();
const { run } = await import('./run.ts');
const { outputLost } = await import('./output-lost.ts');

const argv = process.argv.slice(2);
endQuietly(process.stdout, (why) => void process.stderr.write(outputLost(argv, why)));
endQuietly(process.stderr, () => undefined);
process.exitCode = await run(argv, {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  cwd: process.env.INIT_CWD ?? process.cwd(),
  env: process.env,
  readText: (path) => readFileSync(path, 'utf8'),
  readBase64: (path) => readFileSync(path, 'base64'),
  realPath,
  writeText: (path, text) => writeFileSync(path, text),
  now: () => new Date().toISOString(),
  stopAsked,
});
