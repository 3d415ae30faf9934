import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { backup, openSqlite, restore, verifyBackup } from '@brinewright/server/store';
import { randomFrom } from '../random.ts';
import { fillRecord, lastOf, type SmallRecord } from './small-record.ts';
import { type CallKind, countCalls, type Ended, type Injection, runWith } from './traced-command.ts';

export type BrokenDiskResult = {
  readonly command: 'backup' | 'restore';
  readonly how: Injection['how'];
  /** Calls the command makes, and how many of them were tried one by one. */
  readonly calls: number;
  readonly tried: number;
  readonly faults: readonly string[];
};

const now = '2026-11-25T15:00:00.000Z';

/** `backup` and `restore` with one call to the disk failing, or the program killed at it, for one call after another. */
export const runBrokenDisk = async (
  seed: number,
  isThorough: boolean,
  say: (text: string) => void,
): Promise<readonly BrokenDiskResult[]> => {
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-broken-'));
  try {
    const filled = await fillRecord(join(folder, 'filled'), seed);
    const results: BrokenDiskResult[] = [];
    for (const command of ['backup', 'restore'] as const)
      for (const how of ['fails', 'kills'] as const) {
        const trial = new Trial(command, filled, join(folder, 'trial'));
        results.push(await trial.run(how, isThorough ? 1 : usualStep, seed));
        say(`broken disk: ${command}, each call ${how}: done`);
      }
    return results;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

/** Of reads and writes, of which there are hundreds alike, every tenth is tried; of all other calls every one. */
const usualStep = 10;

class Trial {
  readonly #command: BrokenDiskResult['command'];
  readonly #filled: SmallRecord;
  readonly #folder: string;
  readonly #faults: string[] = [];

  constructor(command: BrokenDiskResult['command'], filled: SmallRecord, folder: string) {
    this.#command = command;
    this.#filled = filled;
    this.#folder = folder;
  }

  async run(how: Injection['how'], step: number, seed: number): Promise<BrokenDiskResult> {
    this.#fresh();
    const counts = countCalls(this.#args, `${this.#folder}.trace`);
    const first = randomFrom(seed).between(1, step);
    let tried = 0;
    for (const [kind, count] of counts)
      for (const n of callsToTry(kind, count, step, first)) {
        this.#fresh();
        await this.#judge({ kind, n, how }, runWith({ kind, n, how }, this.#args));
        tried += 1;
      }
    const calls = [...counts.values()].reduce((sum, count) => sum + count, 0);
    return { command: this.#command, how, calls, tried, faults: this.#faults };
  }

  /** The record as it was filled, beside the backup made before its last entries came. */
  #fresh(): void {
    rmSync(this.#folder, { recursive: true, force: true });
    mkdirSync(this.#folder);
    cpSync(this.#filled.folder, this.#folder, { recursive: true });
  }

  get #data(): string {
    return join(this.#folder, 'workshop.sqlite');
  }

  get #made(): string {
    return join(this.#folder, 'new-backup.sqlite');
  }

  get #old(): string {
    return join(this.#folder, 'old-backup.sqlite');
  }

  get #args(): readonly string[] {
    return [this.#command, this.#command === 'backup' ? this.#made : this.#old, '--data', this.#data];
  }

  async #judge({ kind, n, how }: Injection, ended: Ended): Promise<void> {
    const complain = (what: string): void =>
      void this.#faults.push(`${this.#command}, ${kind} ${n} ${how}: ${what}`);
    if (how === 'fails' && !isClear(ended))
      complain(`ended with ${ended.code}: ${ended.messages.slice(0, 300)}`);
    try {
      if (this.#command === 'backup') await this.#judgeBackup(ended, complain);
      else await this.#judgeRestore(ended, complain);
    } catch (error) {
      complain(`afterwards: ${error instanceof Error ? error.message : String(error)}`);
    }
  }

  async #judgeBackup({ code }: Ended, complain: (what: string) => void): Promise<void> {
    const isThere = existsSync(this.#made);
    if (code === 0 && !isThere) complain('called done and not there');
    if (isThere && verifyBackup(this.#made).faults.length > 0) complain('half a backup under its name');
    if ((await lastOf(this.#data)) !== this.#filled.last) complain('the record changed');
    rmSync(this.#made, { force: true });
    const place = { kind: 'sqlite', path: this.#data, files: `${this.#data}-files` } as const;
    const { entries, files } = await backup({ place, to: this.#made, now });
    if (entries !== this.#filled.last || files !== 1) complain(`again: ${entries} entries, ${files} files`);
  }

  async #judgeRestore({ code }: Ended, complain: (what: string) => void): Promise<void> {
    const last = await lastOf(this.#data);
    const { last: before, lastInBackup } = this.#filled;
    if (code === 0 ? last !== lastInBackup : last !== before && last !== lastInBackup)
      complain(`the record holds ${last} entries`);
    const place = { kind: 'sqlite', path: this.#data, files: `${this.#data}-files` } as const;
    await restore({ from: this.#old, place, now, asideFolder: this.#folder });
    if ((await lastOf(this.#data)) !== lastInBackup) complain('again: the record is not that of the backup');
    await (await openSqlite(this.#data)).close();
  }
}

const callsToTry = (kind: CallKind, count: number, step: number, first: number): readonly number[] => {
  const isMany = kind === 'pread64' || kind === 'pwrite64';
  const all = Array.from({ length: count }, (_, place) => place + 1);
  return isMany ? all.filter((n) => n % step === first % step) : all;
};

/** Done all the same, or one of our sentences and 1; never a stack, never "our mistake". */
const isClear = ({ code, messages }: Ended): boolean =>
  code === 0 || (code === 1 && messages.trim() !== '' && !/^\s+at /mu.test(messages));
