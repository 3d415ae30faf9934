import { readFileSync, writeFileSync } from 'node:fs';
import { enableCompileCache } from 'node:module';
import { endQuietly } from './closed-pipe.ts';

/* A third of the start goes into compiling the same files again; so the program is loaded after this. */
enableCompileCache();
const { run } = await import('./run.ts');

endQuietly(process.stdout);
endQuietly(process.stderr);
process.exitCode = await run(process.argv.slice(2), {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  cwd: process.env.INIT_CWD ?? process.cwd(),
  env: process.env,
  readText: (path) => readFileSync(path, 'utf8'),
  readBase64: (path) => readFileSync(path, 'base64'),
  writeText: (path, text) => writeFileSync(path, text),
  now: () => new Date().toISOString(),
});
