import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { request as httpsRequest } from 'node:https';
import { connect, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { aHand, anEntry } from '@brinewright/journal/testing';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { dataPlace } from '../workshop/data-place.ts';
import { FaultyDefinitions, type ServeOptions, type Serving, serve } from './serve.ts';

let folder = '';
const running: Serving[] = [];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'brinewright-serve-'));
});
afterEach(async () => {
  for (const one of running.splice(0)) await one.close();
  rmSync(folder, { recursive: true, force: true });
});

const start = async (more: Partial<ServeOptions> = {}): Promise<Serving> => {
  const serving = await serve({
    data: dataPlace({}, { data: join(folder, 'own.sqlite') }),
    demo: false,
    port: 0,
    equipment: [],
    languageDefault: 'en',
    logLevel: 'silent',
    ...more,
  });
  running.push(serving);
  return serving;
};

const begin = async ({ url }: Serving): Promise<void> => {
  const body = new URLSearchParams({ author: 'Dana Whitlock', name: 'Whitlock Water' });
  const { status } = await fetch(`${url}/own/begin`, { method: 'POST', body, redirect: 'manual' });
  expect(status).toBe(303);
};

const demosLeft = (): number =>
  readdirSync(tmpdir()).filter((name) => name.startsWith('brinewright-demo-')).length;

describe('starting and ending', () => {
  test('the workshop is there after the server was ended and started anew', async () => {
    const first = await start();
    expect(first.hasBegun).toBe(false);
    await begin(first);
    await first.close();
    const again = await start();
    expect(again.hasBegun).toBe(true);
    expect(await (await fetch(`${again.url}/own/`)).text()).toContain('Whitlock Water');
  });

  test('the demo lies in a folder of its own, which is gone afterwards', async () => {
    const before = demosLeft();
    const serving = await start({ demo: true });
    expect(demosLeft()).toBe(before + 1);
    expect(await (await fetch(`${serving.url}/demo/api/visits`)).json()).toHaveLength(6);
    await serving.close();
    expect(demosLeft()).toBe(before);
  });

  test('a port in use is left for the next free one, which is said', async () => {
    const taken = createServer();
    await new Promise<void>((resolve) => taken.listen(0, '127.0.0.1', resolve));
    const address = taken.address();
    const port = typeof address === 'object' && address !== null ? address.port : 0;
    const serving = await start({ port });
    expect(new URL(serving.url).port).not.toBe(String(port));
    expect(serving.notes.join()).toContain(`Port ${port} is in use`);
    expect((await fetch(`${serving.url}/health`)).status).toBe(200);
    await new Promise((resolve) => taken.close(resolve));
  });

  test('a second server on the same record does not start, and leaves the first alone', async () => {
    const first = await start();
    await expect(start()).rejects.toMatchObject({ name: 'StoreFault', code: 'locked' });
    expect((await fetch(`${first.url}/ready`)).status).toBe(200);
  });

  test('definitions with errors stop the start, with their issues and the text they point into', async () => {
    const file = join(folder, 'bad.yaml');
    writeFileSync(file, 'family: bad\nnonsense: 1\n');
    const failed = await start({ equipment: [file] }).catch((error: unknown) => error);
    if (!(failed instanceof FaultyDefinitions)) throw new Error('it started');
    expect(failed.issues.length).toBeGreaterThan(0);
    expect([...failed.texts.values()]).toContain('family: bad\nnonsense: 1\n');
    expect((await start()).url).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/u);
  });
});

describe('over the network', () => {
  const lan = { host: '127.0.0.2', port: 0 };

  /** Node's own fetch takes no certificate of ours, so the request is made by hand. */
  const overTls = (
    url: string,
    ca: string,
    send: { readonly method?: string; readonly key?: string } = {},
    body = '',
  ) =>
    new Promise<{ readonly status: number; readonly text: string }>((resolve, reject) => {
      const { key, method = 'GET' } = send;
      const headers = {
        'content-type': 'application/json',
        ...(key === undefined ? {} : { authorization: `Bearer ${key}` }),
      };
      const asked = httpsRequest(url, { ca, method, headers }, (answer) => {
        const parts: Buffer[] = [];
        answer.on('data', (part: Buffer) => parts.push(part));
        answer.on('end', () =>
          resolve({ status: answer.statusCode ?? 0, text: Buffer.concat(parts).toString('utf8') }),
        );
      });
      asked.on('error', reject);
      asked.end(body);
    });

  test('a device that trusts the certificate joins with the code and syncs; the certificate stays over a restart', async () => {
    const first = await start({ lan });
    await begin(first);
    await first.close();
    const serving = await start({ lan });
    expect(serving.fingerprint).toBe(first.fingerprint);
    expect(serving.fingerprint).toMatch(/^(?:[0-9A-F]{2}:){31}[0-9A-F]{2}$/u);
    const [at = ''] = serving.lanUrls;
    const ca = await (await fetch(`${serving.url}/ca.crt`)).text();
    await expect(overTls(`${at}/health`, 'nobody')).rejects.toThrow();
    const joined = await overTls(
      `${at}/pair`,
      ca,
      { method: 'POST' },
      JSON.stringify({ code: serving.code, name: 'Ines, phone' }),
    );
    expect(joined.status).toBe(201);
    const { key } = JSON.parse(joined.text);
    expect((await overTls(`${at}/own/api/visits`, ca, { key })).text).toBe('[]');
    expect((await overTls(`${at}/own/api/visits`, ca)).status).toBe(401);
  });

  test('behind a proxy it speaks plain HTTP and takes the address of the device from it', async () => {
    const serving = await start({ lan: { host: '127.0.0.1', port: 0, behindProxy: true } });
    const [at = ''] = serving.lanUrls;
    expect(at).toMatch(/^http:/u);
    expect(serving.fingerprint).toBeUndefined();
    expect((await fetch(`${at}/own/api/visits`)).status).toBe(401);
  });

  test('certificate files of one’s own are used, and none is made', async () => {
    const other = await start({ lan });
    await other.close();
    const certificate = join(folder, 'own.sqlite-certificates', 'leaf.crt');
    const key = join(folder, 'own.sqlite-certificates', 'leaf.key');
    const data = dataPlace({}, { data: join(folder, 'second.sqlite') });
    const serving = await start({ data, lan: { ...lan, certificate, key } });
    expect(serving.fingerprint).not.toBe(other.fingerprint);
    expect(existsSync(data.certificates)).toBe(false);
  });
});

describe('on real sockets', () => {
  const quick = { request: 400, headers: 300, check: 50, deadline: 300, heartBeat: 40, idle: 2_000 };

  test('news of the log come as they happen, with signs of life between, and end when the server ends', async () => {
    const serving = await start({ times: quick });
    await begin(serving);
    const answer = await fetch(`${serving.url}/own/api/sync/events`);
    expect(answer.headers.get('content-type')).toBe('text/event-stream');
    expect(answer.headers.get('content-security-policy')).toContain("default-src 'none'");
    let text = '';
    const reading = (async () => {
      for await (const part of answer.body ?? []) text += Buffer.from(part).toString('utf8');
    })();
    const { epoch, company } = await stateOf(serving);
    const entry = anEntry(aHand({ company }), 1).entry;
    await push(serving, [{ entry }]);
    await expect.poll(() => text).toContain(`data: ${JSON.stringify({ epoch, position: 2 })}`);
    await expect.poll(() => text).toContain(': \n\n');
    expect(text).toMatch(/^(?:data: \{"epoch":"[^"]+","position":\d+\}\n\n|: \n\n)+$/u);
    await serving.close();
    await reading;
  });

  test('a request in flight when the server is ended is answered; what outlasts the deadline is cut off', async () => {
    const serving = await start({ times: { ...quick, request: 5_000, deadline: 1_500 } });
    await begin(serving);
    const { company } = await stateOf(serving);
    const { port } = new URL(serving.url);
    const body = JSON.stringify({ entries: [{ entry: anEntry(aHand({ company }), 1).entry }] });
    const slow = rawRequest(Number(port), head(port, body.length));
    const never = rawRequest(Number(port), head(port, body.length));
    await expect.poll(() => slow.isOpen() && never.isOpen()).toBe(true);
    slow.send(body.slice(0, 10));
    never.send(body.slice(0, 10));
    await pause(100);
    const closing = serving.close();
    await pause(100);
    await expect(fetch(`${serving.url}/health`)).rejects.toThrow();
    slow.send(body.slice(10));
    expect(await slow.answer).toContain('200 OK');
    expect(await slow.answer).toContain('"state":"kept"');
    await closing;
    expect(await never.answer).toBe('');
  });

  test('who sends too slowly is cut off with 408', async () => {
    const serving = await start({ times: quick });
    const { port } = new URL(serving.url);
    const headers = rawRequest(Number(port), 'GET /health HTTP/1.1\r\nhost: localhost\r\nx-slow: ');
    expect(await headers.answer).toContain('408');
    const body = rawRequest(Number(port), head(port, 1_000));
    expect(await body.answer).toContain('408');
    expect((await fetch(`${serving.url}/health`)).status).toBe(200);
  });

  test('what is no HTTP gets 400 in JSON', async () => {
    const serving = await start();
    const { port } = new URL(serving.url);
    const answer = await rawRequest(Number(port), 'hello\r\n\r\n').answer;
    expect(answer).toMatch(/^HTTP\/1\.1 400 /u);
    expect(answer).toContain('application/problem+json');
  });
});

const pause = (time: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, time));

const head = (port: string, length: number): string =>
  `POST /own/api/sync/push HTTP/1.1\r\nhost: 127.0.0.1:${port}\r\ncontent-type: application/json\r\n` +
  `content-length: ${length}\r\nconnection: close\r\n\r\n`;

const rawRequest = (port: number, first: string) => {
  const socket = connect(port, '127.0.0.1');
  let text = '';
  socket.on('data', (part) => {
    text += part.toString('utf8');
  });
  socket.write(first);
  return {
    send: (more: string) => void socket.write(more),
    isOpen: () => socket.readyState === 'open',
    answer: new Promise<string>((resolve) => {
      socket.on('error', () => undefined);
      socket.on('close', () => resolve(text));
    }),
  };
};

const push = async ({ url }: Serving, entries: readonly object[]): Promise<void> => {
  const answer = await fetch(`${url}/own/api/sync/push`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ entries }),
  });
  expect(answer.status).toBe(200);
  expect(JSON.stringify(await answer.json())).toContain('"state":"kept"');
};

const stateOf = async ({ url }: Serving): Promise<{ readonly epoch: string; readonly company: string }> => {
  const exported = await (await fetch(`${url}/own/api/export.json`)).json();
  const { company } = z.object({ company: z.string() }).parse(exported);
  const pulled = await fetch(`${url}/own/api/sync/pull`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ follow: { all: 0 } }),
  });
  const { epoch } = z.object({ epoch: z.string() }).parse(await pulled.json());
  return { epoch, company };
};
