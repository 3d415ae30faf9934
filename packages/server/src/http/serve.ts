import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readDefinitions } from '@brinewright/equipment/load-files';
import { formatMessage, type Issue, type Language, message } from '@brinewright/words';
import { openFiles } from '../files/file-store.ts';
import { openPostgres, openSqlite, type Place, type SqlStore } from '../store/index.ts';
import { ownAddresses, reachedBy } from '../tls/addresses.ts';
import { fingerprintOf, ownCertificate } from '../tls/own-authority.ts';
import type { DataPlace } from '../workshop/data-place.ts';
import { baseOf } from '../workshop/definitions.ts';
import { type Kept, openHouse } from '../workshop/open-house.ts';
import { readAppFiles } from './app-files.ts';
import { buildServer, type Listener } from './build-server.ts';
import { endServer } from './end-server.ts';
import type { House, LanEntrance } from './house.ts';
import { type Times, usualTimes } from './limits.ts';
import { listenOn, noFallback } from './listen-on.ts';
import { loggerTo, usualLevel } from './logger.ts';

export type LanOptions = {
  readonly host: string;
  readonly port: number;
  /** Files in PEM; without both a certificate is made here. */
  readonly certificate?: string | undefined;
  readonly key?: string | undefined;
  /** TLS is done by a proxy on this machine in front of the server. */
  readonly behindProxy?: boolean | undefined;
};

export type ServeOptions = {
  readonly data: DataPlace;
  readonly demo: boolean;
  readonly lan?: LanOptions | undefined;
  readonly port: number;
  /** Own definitions, files or folders. */
  readonly equipment: readonly string[];
  readonly languageDefault: Language;
  /** 'silent', or from which weight on things are logged to standard error; BRINEWRIGHT_LOG unless said. */
  readonly logLevel?: string;
  readonly times?: Partial<Times>;
  readonly now?: () => Date;
};

export type Serving = {
  /** The owner's first page, on this computer. */
  readonly url: string;
  /** Where devices in the network reach it. */
  readonly lanUrls: readonly string[];
  /** SHA-256 of the certificate to compare. */
  readonly fingerprint: string | undefined;
  /** The first code that lets a device in. */
  readonly code: string | undefined;
  /** What to tell the owner beside that: a port that was in use. */
  readonly notes: readonly string[];
  readonly hasBegun: boolean;
  close(): Promise<void>;
};

/** Definitions given on the command line that have errors; the server does not start with them. */
export class FaultyDefinitions extends Error {
  readonly issues: readonly Issue[];
  readonly texts: ReadonlyMap<string, string>;

  constructor(issues: readonly Issue[], texts: ReadonlyMap<string, string>) {
    super('definitions have errors');
    this.issues = issues;
    this.texts = texts;
  }
}

/**
 * Starts the workshop server and resolves once it can be used.
 *
 * @throws StoreFault where the record cannot be opened, FaultyDefinitions, and what listening or reading certificates
 * may throw; nothing is left open then.
 */
export const serve = async (options: ServeOptions): Promise<Serving> => {
  const ending: (() => Promise<void>)[] = [];
  const end = async (): Promise<void> => {
    for (const one of ending.splice(0).toReversed()) await one();
  };
  try {
    return await started(options, ending, end);
  } catch (error) {
    await end();
    throw error;
  }
};

const started = async (
  options: ServeOptions,
  ending: (() => Promise<void>)[],
  close: () => Promise<void>,
): Promise<Serving> => {
  const times = { ...usualTimes, ...options.times };
  const logger = loggerTo(options.logLevel ?? usualLevel(process.env));
  let entrance: LanEntrance | undefined;
  const house = await houseFor(options, ending, () => entrance);
  const notes: string[] = [];
  const start = async (listener: Listener, host: string, port: number, mayMove: boolean) => {
    const server = buildServer(house, listener);
    ending.push(() => endServer(server, times.deadline));
    const got = await listenOn(server, host, port, mayMove);
    if (got !== port && port !== 0) notes.push(portNote(options.languageDefault, port, got));
    return { server, port: got };
  };
  const { lan } = options;
  if (lan !== undefined) {
    const tls = lan.behindProxy === true ? undefined : await certificateFor(options, lan);
    const { server, port } = await start(
      {
        side: 'lan',
        times,
        logger,
        behindProxy: lan.behindProxy === true,
        ...(tls === undefined ? {} : { tls }),
      },
      lan.host,
      lan.port,
      lan.behindProxy !== true,
    );
    if (tls?.authority !== undefined) ending.push(renewing(server.server, options, lan));
    const scheme = tls === undefined ? 'http' : 'https';
    entrance = {
      urls: reachedBy(lan.host).map((host) => `${scheme}://${inUrl(host)}:${port}`),
      fingerprint: tls?.fingerprint,
      authority: tls?.authority,
    };
    if (house.own() !== undefined) house.code.draw();
  }
  const { port } = await start({ side: 'loopback', times, logger }, '127.0.0.1', options.port, true);
  return {
    url: `http://127.0.0.1:${port}`,
    lanUrls: entrance?.urls ?? [],
    fingerprint: entrance?.fingerprint,
    code: house.code.current()?.code,
    notes,
    hasBegun: house.own() !== undefined,
    close,
  };
};

const inUrl = (host: string): string => (host.includes(':') ? `[${host}]` : host);

const portNote = (language: Language, port: number, other: number): string =>
  formatMessage(message('server.port-taken', { port: String(port), other: String(other) }), {
    language,
    system: 'us',
  });

const houseFor = async (
  { data, demo, equipment, languageDefault, now = () => new Date() }: ServeOptions,
  ending: (() => Promise<void>)[],
  lan: () => LanEntrance | undefined,
): Promise<House> => {
  const definitions = readDefinitions(equipment);
  const read = baseOf(definitions);
  if (!read.ok)
    throw new FaultyDefinitions(read.issues, new Map(read.files.map(({ file, text }) => [file, text])));
  const store = await openRecord(data.record);
  ending.push(() => store.close());
  const own = { store, files: await openFiles(data.record.files) };
  return openHouse({
    own,
    demo: demo ? await demoPlace(ending) : undefined,
    base: read.base,
    lan,
    dataPlace: store.where,
    app: await readAppFiles(),
    usualLanguage: languageDefault,
    demoName: formatMessage(message('server.demo.company'), { language: languageDefault, system: 'us' }),
    now,
  });
};

const openRecord = (place: Place): Promise<SqlStore> =>
  place.kind === 'sqlite' ? openSqlite(place.path) : openPostgres(place.url);

/** The demo has a record of its own, which goes when the server ends. */
const demoPlace = async (ending: (() => Promise<void>)[]): Promise<Kept> => {
  const folder = await mkdtemp(join(tmpdir(), 'brinewright-demo-'));
  ending.push(() => rm(folder, { recursive: true, force: true }));
  const store = await openSqlite(join(folder, 'demo.sqlite'));
  ending.push(() => store.close());
  return { store, files: await openFiles(join(folder, 'files')) };
};

type Certificate = {
  readonly key: string;
  readonly cert: string;
  readonly fingerprint: string;
  readonly authority?: string;
};

const certificateFor = async (
  { data, now = () => new Date() }: ServeOptions,
  { certificate, key, host }: LanOptions,
): Promise<Certificate> => {
  if (certificate === undefined || key === undefined)
    return ownCertificate(data.certificates, ownAddresses(host), now());
  const cert = await readFile(certificate, 'utf8');
  return { cert, key: await readFile(key, 'utf8'), fingerprint: fingerprintOf(cert) };
};

const day = 24 * 60 * 60_000;

/** A server that runs for a year renews its certificate on the way; addresses that are new get in too. */
const renewing = (server: object, options: ServeOptions, lan: LanOptions): (() => Promise<void>) => {
  const timer = setInterval(() => {
    certificateFor(options, lan).then(({ key, cert }) => {
      if (canRenew(server)) server.setSecureContext({ key, cert });
    }, noFallback);
  }, day).unref();
  return async () => clearInterval(timer);
};

type Renewable = {
  readonly setSecureContext: (with_: { readonly key: string; readonly cert: string }) => void;
};

const canRenew = (server: object): server is Renewable => 'setSecureContext' in server;
