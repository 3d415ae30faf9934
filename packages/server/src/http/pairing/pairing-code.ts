import { randomInt, timingSafeEqual } from 'node:crypto';

/** Nothing that is taken for something else when read out or copied by hand. */
const alphabet = '2346789ABCDEFGHJKMNPQRTUVWXYZ';
const half = 5;

export const codeLife = 10 * 60_000;
const mostWrongTries = 10;
const triesWindow = 60_000;
const mostTriesInWindow = 5;

export type CodeTried = 'right' | 'wrong' | 'none' | 'too-many';

/** The one-time code that lets a device in: one at a time, ten minutes, once. */
export class PairingCode {
  readonly #now: () => Date;
  readonly #random: (below: number) => number;
  readonly #tries = new Map<string, readonly number[]>();
  #drawn: { readonly code: string; readonly until: number; readonly wrong: number } | undefined;

  constructor(now: () => Date, random: (below: number) => number = randomInt) {
    this.#now = now;
    this.#random = random;
  }

  /** A new code; the one before it is no good any more. */
  draw(): string {
    const code = Array.from({ length: 2 * half }, () => alphabet[this.#random(alphabet.length)] ?? '').join(
      '',
    );
    this.#drawn = { code, until: this.#now().getTime() + codeLife, wrong: 0 };
    return grouped(code);
  }

  /** The code in force, and until when. */
  current(): { readonly code: string; readonly until: string } | undefined {
    const drawn = this.#inForce();
    return drawn === undefined
      ? undefined
      : { code: grouped(drawn.code), until: new Date(drawn.until).toISOString() };
  }

  try(address: string, given: string): CodeTried {
    if (this.#tooMany(address)) return 'too-many';
    const drawn = this.#inForce();
    if (drawn === undefined) return 'none';
    if (isSame(plain(given), drawn.code)) {
      this.#drawn = undefined;
      return 'right';
    }
    this.#noteWrong(address);
    const wrong = drawn.wrong + 1;
    this.#drawn = wrong >= mostWrongTries ? undefined : { ...drawn, wrong };
    return 'wrong';
  }

  #inForce() {
    if (this.#drawn !== undefined && this.#drawn.until <= this.#now().getTime()) this.#drawn = undefined;
    return this.#drawn;
  }

  #recent(address: string): readonly number[] {
    const since = this.#now().getTime() - triesWindow;
    return (this.#tries.get(address) ?? []).filter((at) => at > since);
  }

  #tooMany(address: string): boolean {
    return this.#recent(address).length >= mostTriesInWindow;
  }

  #noteWrong(address: string): void {
    for (const other of this.#tries.keys()) if (this.#recent(other).length === 0) this.#tries.delete(other);
    this.#tries.set(address, [...this.#recent(address), this.#now().getTime()]);
  }
}

const grouped = (code: string): string => `${code.slice(0, half)}-${code.slice(half)}`;

const plain = (given: string): string =>
  given
    .slice(0, 100)
    .toUpperCase()
    .replaceAll(/[^0-9A-Z]/gu, '');

const isSame = (given: string, code: string): boolean =>
  given.length === code.length && timingSafeEqual(Buffer.from(given), Buffer.from(code));
