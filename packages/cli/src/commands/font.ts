import { createRequire } from 'node:module';
import { fontFile } from '@brinewright/papers';
import type { Io } from '../io.ts';

/** The typeface of our papers as an address that needs no network; nothing where it is not installed. */
export const fontUri = (io: Io): string | undefined => {
  try {
    const path = createRequire(import.meta.url).resolve(fontFile);
    return `data:font/woff2;base64,${io.readBase64(path)}`;
  } catch {
    return undefined;
  }
};
