import { drawingCss, tokenCss } from '@brinewright/papers';
import type { Plugin } from 'vite';

const name = 'virtual:look.css';

/** Colours, weights and the classes of drawings, from the one place that papers take them from. */
export const look = (): Plugin => ({
  name: 'look',
  resolveId: (id) => (id === name ? name : undefined),
  load: (id) => (id === name ? `${tokenCss}\n${drawingCss}` : undefined),
});
