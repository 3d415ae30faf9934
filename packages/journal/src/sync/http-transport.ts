import type { z } from 'zod';
import { offerReply, pullReply, pushReply } from './messages.ts';
import type { Reply, Transport } from './transport.ts';

/** As much of `fetch` as is used here, so that a browser's, Node's or a trial's will do. */
export type Fetch = (address: string, request: HttpRequest) => Promise<HttpAnswer>;

export type HttpRequest = {
  readonly method: 'GET' | 'POST' | 'PUT';
  readonly headers: Record<string, string>;
  readonly body?: string | Uint8Array<ArrayBuffer>;
};

export type HttpAnswer = {
  readonly ok: boolean;
  readonly status: number;
  json(): Promise<unknown>;
  arrayBuffer(): Promise<ArrayBuffer>;
};

export type HttpTransportOptions = {
  /** Address of the workshop's API, such as https://workshop.local:4443/own/api. */
  readonly api: string;
  /** Gives up by itself after a while, such as `(address, request) => fetch(address, { ...request, signal })`. */
  readonly fetch: Fetch;
  /** The device's key, where it is not a cookie of the browser. */
  readonly key?: string;
};

/** The way to the server over HTTP. Anything but a proper answer is no answer: the device keeps all and tries again. */
export const httpTransport = (options: HttpTransportOptions): Transport => {
  const ask = asking(options);
  const post = async <T>(path: string, body: unknown, schema: z.ZodType<T>): Promise<Reply<T>> => {
    const reply = await ask('POST', path, 'application/json', JSON.stringify(body));
    if (reply.state !== 'answered') return reply;
    const read = schema.safeParse(await orNothing(() => reply.value.json()));
    return reply.value.ok && read.success ? { state: 'answered', value: read.data } : noAnswer;
  };
  return {
    push: (request) => post('/sync/push', request, pushReply),
    pull: (request) => post('/sync/pull', request, pullReply),
    offer: (request) => post('/sync/offer', request, offerReply),
    sendFile: async (hash, bytes) => {
      const reply = await ask('PUT', `/files/${hash}`, 'application/octet-stream', new Uint8Array(bytes));
      if (reply.state !== 'answered') return reply;
      if (reply.value.ok) return { state: 'answered', value: 'durable' };
      return refusing.includes(reply.value.status) ? { state: 'answered', value: 'refused' } : noAnswer;
    },
    fetchFile: async (hash) => {
      const reply = await ask('GET', `/files/${hash}`);
      if (reply.state !== 'answered') return reply;
      if (reply.value.status === 404) return { state: 'answered', value: undefined };
      const bytes = reply.value.ok ? await orNothing(() => reply.value.arrayBuffer()) : undefined;
      return bytes === undefined ? noAnswer : { state: 'answered', value: new Uint8Array(bytes) };
    },
  };
};

const noAnswer = { state: 'no-answer' } as const;

/** The file itself is wrong or too large; sending it again would not help. */
const refusing = [400, 413, 422];
const turnedAway = [401, 403];

const asking =
  ({ api, key, fetch }: HttpTransportOptions) =>
  async (
    method: HttpRequest['method'],
    path: string,
    type?: string,
    body?: string | Uint8Array<ArrayBuffer>,
  ): Promise<Reply<HttpAnswer>> => {
    const headers = {
      accept: 'application/json',
      ...(type === undefined ? {} : { 'content-type': type }),
      ...(key === undefined ? {} : { authorization: `Bearer ${key}` }),
    };
    const request = { method, headers, ...(body === undefined ? {} : { body }) };
    const value = await orNothing(() => fetch(`${api}${path}`, request));
    if (value === undefined) return noAnswer;
    return turnedAway.includes(value.status) ? { state: 'not-allowed' } : { state: 'answered', value };
  };

/** Nothing where the network failed on the way. */
const orNothing = async <T>(work: () => Promise<T>): Promise<T | undefined> => {
  try {
    return await work();
  } catch {
    return undefined;
  }
};
