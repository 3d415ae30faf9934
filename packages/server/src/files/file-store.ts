import { createHash, randomUUID } from 'node:crypto';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { type Disk, type DiskFile, realDisk } from './disk.ts';

/** A file of more bytes is refused. */
export const longestFile = 64 * 1024 * 1024;

export type Received = 'durable' | 'wrong-hash' | 'too-large';

/**
 * Files named by the SHA-256 of what is in them, each company's apart: `<root>/<company>/<aa>/<hash>`. A name is
 * there only when the whole file is (A1).
 */
export class FileStore {
  readonly #root: string;
  readonly #disk: Disk;
  readonly #most: number;

  constructor(root: string, disk: Disk, most: number) {
    this.#root = root;
    this.#disk = disk;
    this.#most = most;
  }

  /** Resolves with 'durable' once the file is on disk; with anything else nothing of it is left. */
  async receive(
    company: string,
    hash: string,
    bytes: AsyncIterable<Uint8Array>,
    size?: number,
  ): Promise<Received> {
    if (!isName(company, hash)) return 'wrong-hash';
    if (size !== undefined && size > this.#most) return 'too-large';
    if (!(await this.has(company, hash))) {
      const made = join(this.#incoming, randomUUID());
      const came = await this.#take(made, hash, bytes, size);
      if (came !== 'durable') return came;
      await this.#moveIn(made, company, hash);
    }
    await this.#syncName(company, hash);
    return 'durable';
  }

  async open(
    company: string,
    hash: string,
  ): Promise<{ readonly size: number; readonly bytes: Readable } | undefined> {
    if (!isName(company, hash)) return undefined;
    const path = this.#pathOf(company, hash);
    const size = await this.#disk.size(path);
    return size === undefined ? undefined : { size, bytes: await this.#disk.read(path) };
  }

  async has(company: string, hash: string): Promise<boolean> {
    return isName(company, hash) && (await this.#disk.size(this.#pathOf(company, hash))) !== undefined;
  }

  async remove(company: string, hash: string): Promise<void> {
    if (!(await this.has(company, hash))) return;
    await this.#disk.remove(this.#pathOf(company, hash));
    await this.#disk.syncFolder(this.#shelfOf(company, hash));
  }

  /** The hashes of all files of the company, in order. */
  async list(company: string): Promise<readonly string[]> {
    if (!companyName.test(company)) return [];
    const shelves = await this.#disk.list(join(this.#root, company));
    const names = await Promise.all(
      shelves.map((shelf) => this.#disk.list(join(this.#root, company, shelf))),
    );
    return names
      .flat()
      .filter((name) => hashName.test(name))
      .toSorted();
  }

  /** Removes what a crash left half received. */
  async tidy(): Promise<void> {
    for (const name of await this.#disk.list(this.#incoming))
      await this.#disk.remove(join(this.#incoming, name));
  }

  get #incoming(): string {
    return join(this.#root, 'incoming');
  }

  #shelfOf(company: string, hash: string): string {
    return join(this.#root, company, hash.slice(0, 2));
  }

  #pathOf(company: string, hash: string): string {
    return join(this.#shelfOf(company, hash), hash);
  }

  /** Writes to a name of its own, and removes that again unless all is right with it. */
  async #take(
    made: string,
    hash: string,
    bytes: AsyncIterable<Uint8Array>,
    size: number | undefined,
  ): Promise<Received> {
    await this.#disk.makeFolder(this.#incoming);
    try {
      const came = await this.#write(made, bytes);
      const isRight = came.hash === hash && (size === undefined || came.size === size);
      if (isRight && came.size <= this.#most) return 'durable';
      await this.#disk.remove(made);
      return came.size > this.#most ? 'too-large' : 'wrong-hash';
    } catch (error) {
      await this.#disk.remove(made).catch(sweptAtNextOpening);
      throw error;
    }
  }

  async #write(
    made: string,
    bytes: AsyncIterable<Uint8Array>,
  ): Promise<{ readonly hash: string; readonly size: number }> {
    const file = await this.#disk.create(made);
    try {
      const came = await this.#copy(file, bytes);
      await file.sync();
      return came;
    } finally {
      await file.close();
    }
  }

  /** Stops at the first byte too many. */
  async #copy(file: DiskFile, bytes: AsyncIterable<Uint8Array>) {
    const sum = createHash('sha256');
    let size = 0;
    for await (const part of bytes) {
      size += part.byteLength;
      if (size > this.#most) break;
      sum.update(part);
      await file.write(part);
    }
    return { hash: sum.digest('hex'), size };
  }

  async #moveIn(made: string, company: string, hash: string): Promise<void> {
    try {
      await this.#disk.makeFolder(this.#shelfOf(company, hash));
      await this.#disk.rename(made, this.#pathOf(company, hash));
    } catch (error) {
      await this.#disk.remove(made).catch(sweptAtNextOpening);
      throw error;
    }
  }

  /** Also for a file that was there: whoever put it there may have died before this. */
  async #syncName(company: string, hash: string): Promise<void> {
    await this.#disk.syncFolder(this.#shelfOf(company, hash));
    await this.#disk.syncFolder(join(this.#root, company));
    await this.#disk.syncFolder(this.#root);
  }
}

const sweptAtNextOpening = (): void => {};

const hashName = /^[0-9a-f]{64}$/u;
const companyName = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/u;

/** Nothing else ever becomes part of a path. */
const isName = (company: string, hash: string): boolean => companyName.test(company) && hashName.test(hash);

export type FilesOptions = {
  readonly disk?: Disk;
  readonly most?: number;
  /** Not where another process may be receiving at this moment. */
  readonly tidy?: boolean;
};

/** Opens the files under a folder, which is made when the first one comes. */
export const openFiles = async (
  root: string,
  { disk = realDisk, most = longestFile, tidy = true }: FilesOptions = {},
): Promise<FileStore> => {
  const files = new FileStore(root, disk, most);
  if (tidy) await files.tidy();
  return files;
};
