import { createRequire } from 'node:module';
import type { Io } from '../io.ts';

const file =
  '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2';

/** The typeface of our papers as an address that needs no network; nothing where it is not installed. */
export const fontUri = (io: Io): string | undefined => {
  try {
    const path = createRequire(import.meta.url).resolve(file);
    return `data:font/woff2;base64,${io.readBase64(path)}`;
  } catch {
    return undefined;
  }
};
