import { readFile } from 'node:fs/promises';
import { request as ask, createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { extname, join, normalize } from 'node:path';

/*
 * Serves the built app the way the workshop's server does: the page for every place under the app, with its base in
 * full, and a session. Everything else of the API does not answer, which is what a basement looks like.
 */

const dist = join(import.meta.dirname, '../../packages/app/dist');

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.json': 'application/json',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

/** As strict as a server may be: nothing inline, nothing from elsewhere. */
const policy =
  "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; worker-src 'self'; object-src 'none'; base-uri 'self'";

export const session = {
  company: '00000000-0000-7000-8000-00000000c0de',
  author: 'Ines Marlow (invented)',
  isOwner: true,
};

export type AppServer = {
  readonly url: string;
  /** Answers nothing from now on, or again. */
  readonly cut: (isCut: boolean) => void;
  readonly close: () => Promise<void>;
};

export type AppServerOptions = {
  readonly prefix: '/own' | '/demo';
  readonly company: string;
  /** The workshop's server behind it; without one nothing of the API answers. */
  readonly behind?: string | undefined;
};

const alone: AppServerOptions = { prefix: '/own', company: session.company };

export const serveApp = async (options: AppServerOptions = alone): Promise<AppServer> => {
  let isCut = false;
  const base = `${options.prefix}/app/`;
  const server = createServer((request, response) => {
    if (isCut) request.socket.destroy();
    else void answer(request, response, options, base);
  });
  await new Promise<void>((ready) => {
    server.listen(0, '127.0.0.1', ready);
  });
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return {
    url: `http://127.0.0.1:${port}${base}`,
    cut: (cut) => {
      isCut = cut;
    },
    close: () =>
      new Promise((closed) => {
        server.closeAllConnections();
        server.close(() => closed());
      }),
  };
};

const answer = async (
  request: IncomingMessage,
  response: ServerResponse,
  { prefix, company, behind }: AppServerOptions,
  base: string,
): Promise<void> => {
  const { pathname } = new URL(request.url ?? '/', 'http://here');
  if (pathname === `${prefix}/api/session`)
    return send(response, 200, '.json', JSON.stringify({ ...session, company }));
  if (pathname.startsWith(`${prefix}/api/`) && behind !== undefined) return passOn(request, response, behind);
  if (!pathname.startsWith(base)) return send(response, 404, '.json', '{}');
  const name = normalize(decodeURIComponent(pathname.slice(base.length)));
  if (name.startsWith('..')) return send(response, 404, '.json', '{}');
  if (extname(name) === '') return sendPage(response, base);
  try {
    return send(response, 200, extname(name), await readFile(join(dist, name)));
  } catch {
    return send(response, 404, '.json', '{}');
  }
};

/** To the workshop's server as if it had been asked itself. */
const passOn = (request: IncomingMessage, response: ServerResponse, behind: string): void => {
  const { host, port } = new URL(behind);
  const { origin: _, 'sec-fetch-site': __, ...headers } = request.headers;
  const onward = ask(
    { host: '127.0.0.1', port, method: request.method, path: request.url, headers: { ...headers, host } },
    (answered) => {
      response.writeHead(answered.statusCode ?? 502, answered.headers);
      answered.pipe(response);
    },
  );
  onward.on('error', () => response.destroy());
  response.on('close', () => onward.destroy());
  request.pipe(onward);
};

const sendPage = async (response: ServerResponse, base: string): Promise<void> => {
  const html = await readFile(join(dist, 'index.html'), 'utf8');
  send(response, 200, '.html', html.replace(/<base href="[^"]*"/u, `<base href="${base}"`));
};

const send = (response: ServerResponse, status: number, extension: string, body: string | Buffer): void => {
  response.writeHead(status, {
    'content-type': types[extension] ?? 'application/octet-stream',
    'content-security-policy': policy,
    'cache-control': 'no-cache',
  });
  response.end(body);
};
