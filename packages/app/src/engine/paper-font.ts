import address from '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2?url';
import { toBase64 } from '../offline/base64.ts';

let made: Promise<string | undefined> | undefined;

/** The typeface, to go with a paper that has to stand alone; kept on the device with the rest of the app. */
export const paperFont = (): Promise<string | undefined> => {
  made ??= fetched();
  return made;
};

const fetched = async (): Promise<string | undefined> => {
  try {
    const answer = await fetch(new URL(address, import.meta.url));
    return answer.ok
      ? `data:font/woff2;base64,${toBase64(new Uint8Array(await answer.arrayBuffer()))}`
      : undefined;
  } catch {
    return undefined;
  }
};
