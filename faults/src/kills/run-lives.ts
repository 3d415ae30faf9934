import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { checkHistory, type Violation } from '../history/check-history.ts';
import type { Happening } from '../history/event.ts';
import { type History, openHistory, readHistory } from '../history/history-file.ts';
import { type Random, randomFrom } from '../random.ts';
import { Client, later, type Way } from './client.ts';
import type { Ground } from './ground.ts';
import { wayTo } from './http-way.ts';
import type { ServerProcess } from './server-process.ts';
import { uuidFrom } from './uuid.ts';

/** What came of one store that was killed again and again. */
export type LivesResult = {
  readonly kills: number;
  readonly ofDatabase: number;
  readonly acknowledged: number;
  readonly violations: readonly Violation[];
  /** Answers that no server should give. */
  readonly oddities: readonly string[];
  /** Why the store did not open again; the run ended there. */
  readonly notReopened: string | undefined;
  /** From the start of what was killed to the first answer, in milliseconds. */
  readonly reopened: readonly number[];
  /** Kept where something is wrong. */
  readonly historyFile: string | undefined;
};

const clientCount = 4;
const answersWithin = 30_000;

/** Kills what serves a store, `kills` times, at moments drawn from the seed, and judges what the clients saw. */
export const runLives = async (ground: Ground, kills: number, seed: number): Promise<LivesResult> => {
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-history-'));
  const history = openHistory(join(folder, `${ground.store}-${seed}.jsonl`), () => performance.now());
  const run = new Lives(ground, randomFrom(seed), history);
  const notReopened = await run.live(kills).then(
    () => undefined,
    (error: unknown) => (error instanceof Error ? error.message : String(error)),
  );
  await run.end();
  history.close();
  const violations = checkHistory(readHistory(history.file));
  const isGood = violations.length === 0 && run.oddities.length === 0 && notReopened === undefined;
  if (isGood) rmSync(folder, { recursive: true });
  const { kills: done, ofDatabase, acknowledged, reopened, oddities } = run;
  return {
    kills: done,
    ofDatabase,
    acknowledged,
    violations,
    oddities,
    notReopened,
    reopened,
    historyFile: isGood ? undefined : history.file,
  };
};

class Lives {
  readonly #ground: Ground;
  readonly #random: Random;
  readonly #record: (event: Happening) => void;
  #server: ServerProcess | undefined;
  #clients: readonly Client[] = [];
  #readings = 0;
  kills = 0;
  ofDatabase = 0;
  acknowledged = 0;
  readonly reopened: number[] = [];

  constructor(ground: Ground, random: Random, history: History) {
    this.#ground = ground;
    this.#random = random;
    this.#record = (event) => {
      if (event.kind === 'acknowledged') this.acknowledged += 1;
      history.record(event);
    };
  }

  get oddities(): readonly string[] {
    return this.#clients.flatMap(({ oddities }) => oddities);
  }

  async live(kills: number): Promise<void> {
    let way = await this.#openServer();
    await this.#firstAnswer(way);
    await this.#readBack(way);
    while (this.kills < kills) {
      const { database } = this.#ground;
      const kill = database !== undefined && this.kills % 2 === 1 ? database : undefined;
      await this.#workUntilKilled(way, kill);
      const began = performance.now();
      if (kill === undefined) way = await this.#openServer();
      else await kill.start();
      await this.#firstAnswer(way);
      this.reopened.push(performance.now() - began);
      await this.#readBack(way);
    }
  }

  async end(): Promise<void> {
    await this.#server?.end();
    await this.#ground.close();
  }

  async #workUntilKilled(way: Way, database: Ground['database']): Promise<void> {
    let isStopped = false;
    const work = Promise.all(this.#clients.map((client) => client.work(way, () => isStopped)));
    await later(this.#random.between(5, 300));
    this.#record({ kind: 'killed', what: database === undefined ? 'server' : 'database' });
    await (database === undefined ? this.#server?.kill() : database.kill());
    isStopped = true;
    await work;
    this.kills += 1;
    if (database !== undefined) this.ofDatabase += 1;
  }

  /** One opening in eight is killed on its way, and then tried again. */
  async #openServer(): Promise<Way> {
    if (this.kills > 0 && this.#random.between(1, 8) === 1) await this.#killWhileOpening();
    this.#server = this.#ground.spawn();
    const address = await this.#server.ready();
    const way = wayTo(address);
    if (this.#clients.length === 0) this.#clients = this.#newClients(await this.#ground.companyAt(address));
    return way;
  }

  async #killWhileOpening(): Promise<void> {
    const server = this.#ground.spawn();
    await later(this.#random.between(100, 900));
    this.#record({ kind: 'killed', what: 'server' });
    await server.kill();
    this.kills += 1;
  }

  #newClients(company: string): readonly Client[] {
    const streams = [uuidFrom(this.#random), uuidFrom(this.#random), uuidFrom(this.#random)] as const;
    return Array.from(
      { length: clientCount },
      (_, place) =>
        new Client({
          name: `client-${place + 1}`,
          company,
          streams,
          random: randomFrom(this.#random.between(1, 2 ** 31)),
          record: this.#record,
        }),
    );
  }

  async #firstAnswer(way: Way): Promise<void> {
    const until = performance.now() + answersWithin;
    while (performance.now() < until) {
      const reply = await way.pull({ follow: { all: 0 }, most: 1 });
      if (reply.state === 'answered') {
        const { epoch, last } = reply.value;
        this.#record({ kind: 'opened', epoch, last });
        return;
      }
      await later(20);
    }
    throw new Error(`no answer within ${answersWithin} ms: ${this.#server?.messages ?? ''}`);
  }

  async #readBack(way: Way): Promise<void> {
    this.#readings += 1;
    await this.#clients[0]?.readAll(way, `reading-${this.#readings}`);
  }
}
