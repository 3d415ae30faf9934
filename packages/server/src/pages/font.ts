import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { fontFile } from '@brinewright/papers';

/** The typeface of pages and papers; nothing where it is not installed, and then the system's own serves. */
export const fontBytes = async (): Promise<Buffer | undefined> => {
  try {
    return await readFile(createRequire(import.meta.url).resolve(fontFile));
  } catch {
    return undefined;
  }
};

export const fontUriOf = (bytes: Buffer | undefined): string | undefined =>
  bytes === undefined ? undefined : `data:font/woff2;base64,${bytes.toString('base64')}`;
