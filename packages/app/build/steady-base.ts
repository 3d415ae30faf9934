import type { Plugin } from 'vite';

/**
 * The app lies under an address known only to the server. The built page has `<base href="./">`, which the server and
 * the service worker put in full, so that a deep address finds its files; while developing it lies at the root.
 */
export const steadyBase = (): Plugin => ({
  name: 'steady-base',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace('<base href="./"', '<base href="/"'),
});
