import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';

/** The program as users start it: its own entry file, in a process of its own. */
const program = join(import.meta.dirname, '../../../packages/cli/src/main.ts');

const readyWithin = 30_000;

/** The command that serves a data file; `under` another program, such as a tracer. */
export const serving = (data: string, under: readonly string[] = []): readonly string[] => [
  ...under,
  process.execPath,
  program,
  'serve',
  '--data',
  data,
  '--port',
  '0',
];

export class ServerProcess {
  readonly #child: ChildProcess;
  readonly #exited: Promise<unknown>;
  #out = '';
  #err = '';

  private constructor(child: ChildProcess) {
    this.#child = child;
    this.#exited = once(child, 'exit');
    child.stdout?.on('data', (more: Buffer) => {
      this.#out += more.toString();
    });
    child.stderr?.on('data', (more: Buffer) => {
      this.#err = (this.#err + more.toString()).slice(-20_000);
    });
  }

  /** Started, and perhaps not ready yet. */
  static spawn([command, ...args]: readonly string[], env: NodeJS.ProcessEnv = {}): ServerProcess {
    if (command === undefined) throw new RangeError('nothing to start');
    return new ServerProcess(
      spawn(command, args, {
        stdio: ['ignore', 'pipe', 'pipe'],
        env: { ...process.env, DATABASE_URL: undefined, ...env },
      }),
    );
  }

  /** Waits for the line that says so; gives the address in it. */
  async ready(): Promise<string> {
    const until = Date.now() + readyWithin;
    while (Date.now() < until) {
      const [, address] = /^Ready: (\S+)$/mu.exec(this.#out) ?? [];
      if (address !== undefined) return address;
      if (this.hasEnded) break;
      await Promise.race([this.#exited, new Promise((resolve) => void setTimeout(resolve, 5))]);
    }
    throw new Error(`the server did not open: ${this.#out}${this.#err}`);
  }

  get hasEnded(): boolean {
    return this.#child.exitCode !== null || this.#child.signalCode !== null;
  }

  /** What it said beside its data. */
  get messages(): string {
    return this.#err;
  }

  /** Without a chance to do anything more. */
  async kill(): Promise<void> {
    this.#child.kill('SIGKILL');
    await this.#exited;
  }

  /** As Ctrl-C does; gives the exit code. */
  async end(): Promise<number | null> {
    this.#child.kill('SIGINT');
    await this.#exited;
    return this.#child.exitCode;
  }
}
