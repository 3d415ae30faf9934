import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readDefinitions } from '@brinewright/equipment/load-files';
import type { Entry, Json } from '@brinewright/journal';
import { openFiles } from '../src/files/file-store.ts';
import type { AppFiles } from '../src/http/app-files.ts';
import { buildServer, type Listener } from '../src/http/build-server.ts';
import type { House, LanEntrance } from '../src/http/house.ts';
import { usualTimes } from '../src/http/limits.ts';
import { openSqlite } from '../src/store/index.ts';
import { type BaseDefinitions, baseOf } from '../src/workshop/definitions.ts';
import { type Kept, openHouse } from '../src/workshop/open-house.ts';
import type { Workshop } from '../src/workshop/workshop.ts';

/* A workshop in a folder of its own, with a clock that stands still unless it is moved. */

export type Trial = {
  readonly house: House;
  readonly own: Kept;
  readonly clock: { now: Date };
  readonly listen: (side: Listener['side'], more?: Partial<Listener>) => ReturnType<typeof buildServer>;
  /** The house as a server that is started anew finds it. */
  readonly reopen: () => Promise<House>;
  readonly close: () => Promise<void>;
};

export type TrialOptions = {
  readonly demo?: boolean;
  readonly lan?: LanEntrance;
  /** Wraps the store, so that it can be away. */
  readonly around?: (kept: Kept) => Kept;
  /** The built app, made up. */
  readonly app?: AppFiles;
};

let shipped: BaseDefinitions | undefined;

const base = (): BaseDefinitions => {
  if (shipped !== undefined) return shipped;
  const read = baseOf(readDefinitions([]));
  if (!read.ok) throw new Error('the shipped definitions have errors');
  shipped = read.base;
  return shipped;
};

export const openTrial = async ({
  demo = false,
  lan,
  app,
  around = (kept) => kept,
}: TrialOptions = {}): Promise<Trial> => {
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-trial-'));
  const clock = { now: new Date('2026-11-25T15:00:00.000Z') };
  const keptIn = async (name: string): Promise<Kept> => ({
    store: await openSqlite(join(folder, `${name}.sqlite`), { now: () => clock.now.toISOString() }),
    files: await openFiles(join(folder, `${name}-files`)),
  });
  const own = around(await keptIn('own'));
  const other = demo ? await keptIn('demo') : undefined;
  const parts = {
    own,
    demo: other,
    base: base(),
    lan: () => lan,
    app,
    dataPlace: join(folder, 'own.sqlite'),
    usualLanguage: 'en',
    demoName: 'Demo company',
    now: () => clock.now,
  } as const;
  const house = await openHouse(parts);
  const servers: { close(): Promise<unknown> }[] = [];
  return {
    house,
    own,
    clock,
    listen: (side, more = {}) => {
      const server = buildServer(house, { side, times: usualTimes, logger: false, ...more });
      servers.push(server);
      return server;
    },
    reopen: () => openHouse({ ...parts, demo: undefined }),
    close: async () => {
      for (const server of servers) await server.close();
      await own.store.close();
      await other?.store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
};

export const demoText = (name: string): string =>
  readFileSync(new URL(`../../../demo/${name}.yaml`, import.meta.url), 'utf8');

/** An entry as a device far away would write it, who has seen what the workshop itself wrote so far. */
export const fromAfar = async (
  workshop: Workshop,
  stream: string,
  device: string,
  seq: number,
  what: {
    readonly kind: string;
    readonly payload: Json;
    readonly about: Entry['about'];
    readonly author: string;
  },
): Promise<Entry> => {
  const vectors = await workshop.store.vectors(workshop.company, [stream]);
  const seen = Object.fromEntries([...(vectors.get(stream) ?? [])].filter(([other]) => other !== device));
  return {
    ...what,
    id: crypto.randomUUID(),
    company: workshop.company,
    stream,
    device,
    seq,
    lamport: 5_000 + seq,
    seen,
    wall: '2026-11-25T09:00:00-05:00',
    zone: 'America/New_York',
    app: 'test',
  };
};
