import { resolve } from 'node:path';
import type { LanOptions } from '@brinewright/server';
import { type Message, message } from '@brinewright/words';
import type { Call } from '../call.ts';
import { type OptionName, optionValue } from '../command-line/options.ts';

/** Where the server is asked to listen: on this computer, and perhaps in the network. */
export type Listeners = { readonly port: number; readonly lan: LanOptions | undefined };

/** The network has the port above it. */
const usualPort = 4870;
const highestPort = 65_534;

const forLanOnly: readonly OptionName[] = ['host', 'certificate', 'key', 'behind-proxy'];

/** Read from the options, or what is wrong with them. */
export const listenersOf = (call: Call): Listeners | Message => {
  const { given } = call;
  const written = optionValue(given, 'port') ?? String(usualPort);
  const port = /^\d{1,5}$/u.test(written) ? Number(written) : Number.NaN;
  if (!(port <= highestPort)) return message('cli.serve.port', { value: written });
  if (given.flags.has('lan')) return lanOf(call, port);
  const stray = forLanOnly.find((name) => given.flags.has(name));
  return stray === undefined
    ? { port, lan: undefined }
    : message('cli.serve.with-lan', { option: `--${stray}` });
};

const lanOf = ({ io, given }: Call, port: number): Listeners | Message => {
  const behindProxy = given.flags.has('behind-proxy');
  const [certificate, key] = [optionValue(given, 'certificate'), optionValue(given, 'key')];
  if ((certificate === undefined) !== (key === undefined)) return message('cli.serve.both-files');
  if (behindProxy && certificate !== undefined) return message('cli.serve.proxy-or-files');
  const files =
    certificate === undefined || key === undefined
      ? {}
      : { certificate: resolve(io.cwd, certificate), key: resolve(io.cwd, key) };
  return {
    port,
    lan: {
      host: optionValue(given, 'host') ?? (behindProxy ? '127.0.0.1' : '0.0.0.0'),
      port: port === 0 ? 0 : port + 1,
      behindProxy,
      ...files,
    },
  };
};
