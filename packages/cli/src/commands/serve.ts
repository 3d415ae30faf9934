import type { Serving } from '@brinewright/server';
import { type Message, message } from '@brinewright/words';
import { type Call, complain, misused, printJson } from '../call.ts';
import { exit } from '../exit.ts';
import { placeOf } from './data-place.ts';
import { type Listeners, listenersOf } from './listeners.ts';
import { isSystemError, readFile, tellIssues } from './reading.ts';
import { withStore } from './with-store.ts';

/** The workshop server, until somebody asks it to stop. */
export const serveCommand = (call: Call): Promise<number> | number =>
  keepServing(call, call.given.flags.has('demo'));

export const keepServing = (call: Call, demo: boolean): Promise<number> | number => {
  const listeners = listenersOf(call);
  if ('key' in listeners) return misused(call, listeners);
  return areThere(call, listeners)
    ? withStore(call, () => servedUntilAsked(call, listeners, demo))
    : exit.faulty;
};

/** The certificate files are looked at first, so that a missing one is told as such. */
const areThere = (call: Call, { lan }: Listeners): boolean =>
  [lan?.certificate, lan?.key].every((file) => file === undefined || readFile(call, file) !== undefined);

const servedUntilAsked = async (call: Call, listeners: Listeners, demo: boolean): Promise<number> => {
  const stopAsked = call.io.stopAsked();
  const serving = await opened(call, listeners, demo);
  if (serving === undefined) return exit.faulty;
  tellServing(call, serving);
  await stopAsked;
  await serving.close();
  return exit.fine;
};

const opened = async (call: Call, { port, lan }: Listeners, demo: boolean): Promise<Serving | undefined> => {
  const { FaultyDefinitions, serve } = await import('@brinewright/server');
  try {
    return await serve({
      data: await placeOf(call),
      demo,
      lan,
      port,
      equipment: call.equipment,
      languageDefault: call.speech.reader.language,
      logLevel: logLevelOf(call),
    });
  } catch (error) {
    const why =
      error instanceof FaultyDefinitions ? undefined : notStarted(error, listeningOn(lan?.host, port));
    if (error instanceof FaultyDefinitions) tellIssues(call, error.issues, error.texts, true);
    else if (why === undefined) throw error;
    else complain(call, ...why);
    return undefined;
  }
};

const levels = ['silent', 'error', 'warn', 'info', 'debug'];

/** On a terminal only what went wrong; BRINEWRIGHT_LOG=info for every request. */
const logLevelOf = ({ io }: Call): string =>
  levels.find((level) => level === io.env.BRINEWRIGHT_LOG) ?? 'warn';

const listeningOn = (host: string | undefined, port: number): string =>
  host === undefined ? `127.0.0.1:${port}` : `127.0.0.1:${port}, ${host}:${port + 1}`;

/** Addresses that cannot be had, and certificates that are none. */
const notStarted = (error: unknown, where: string): readonly Message[] | undefined => {
  if (!isSystemError(error)) return undefined;
  const { code: why, message: said } = error;
  if (/^(?:EADDR\w+|ENOTFOUND|EAI_\w+)$/u.test(why) || (why === 'EACCES' && said.includes('listen')))
    return [message('cli.serve.cannot-listen', { where, why }), message('cli.serve.cannot-listen.mend')];
  return /^ERR_(?:OSSL|TLS|CRYPTO|SSL)/u.test(why)
    ? [message('cli.serve.certificate', { why: said }), message('cli.serve.certificate.mend')]
    : undefined;
};

/** The address on standard output for who waits for it; all else beside it. */
const tellServing = (call: Call, serving: Serving): void => {
  const { url, lanUrls, fingerprint, code, notes, hasBegun } = serving;
  if (call.json) printJson(call, { url, lanUrls, fingerprint, code, notes, hasBegun });
  else {
    for (const note of notes) call.io.err(`${note}\n`);
    if (lanUrls.length > 0) complain(call, message('cli.serve.network', { urls: lanUrls.join(', ') }));
    if (fingerprint !== undefined) complain(call, message('cli.serve.fingerprint', { fingerprint }));
    if (code !== undefined) complain(call, message('cli.serve.code', { code }));
    if (lanUrls.length > 0 && !hasBegun) complain(call, message('cli.serve.begin-first', { url }));
    call.io.out(`Ready: ${url}\n`);
  }
};
