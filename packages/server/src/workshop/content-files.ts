import type { Readable } from 'node:stream';

/** Files named by the SHA-256 of what is in them (A1). */
export interface ContentFiles {
  /** Resolves once the file is durable; a file that is there already is not written again. */
  receive(
    company: string,
    hash: string,
    bytes: AsyncIterable<Uint8Array>,
  ): Promise<'durable' | 'wrong-hash' | 'too-large'>;
  remove(company: string, hash: string): Promise<void>;
  open(
    company: string,
    hash: string,
  ): Promise<{ readonly size: number; readonly bytes: Readable } | undefined>;
}

/** A short file as text; nothing where it has not come. */
export const textOf = async (
  files: ContentFiles,
  company: string,
  hash: string,
): Promise<string | undefined> => {
  const file = await files.open(company, hash);
  if (file === undefined) return undefined;
  const parts: Uint8Array[] = [];
  for await (const part of file.bytes) parts.push(part);
  return Buffer.concat(parts).toString('utf8');
};
