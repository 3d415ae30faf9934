import type { About, Entry, Json } from '../entry/entry.ts';
import type { KindName } from '../kinds/payloads.ts';
import { kindNow } from '../kinds/versions.ts';

/** Ids for tests: readable, in order, and of the form that ids have. */
export const testId = (number: number): string =>
  `00000000-0000-7000-8000-${String(number).padStart(12, '0')}`;

export const testCompany = testId(1);
export const testStream = testId(2);

export type DeskEntry = {
  readonly about?: About;
  readonly stream?: string;
  readonly again?: string;
  readonly wall?: string;
  readonly clock?: number;
};

/**
 * A device for tests of what lies above it: it writes entries by the rules J2 to J4 in the plainest way there is, and
 * takes what another holds.
 */
export class Desk {
  readonly held = new Map<string, Entry>();
  readonly device: string;
  #next: number;

  constructor(number: number) {
    this.device = testId(1000 * number);
    this.#next = 1000 * number + 1;
  }

  write(kind: KindName, payload: Json, options: DeskEntry = {}): Entry {
    return this.writeKind(kindNow(kind), payload, options);
  }

  writeKind(kind: string, payload: Json, options: DeskEntry = {}): Entry {
    const { about = {}, stream = testStream, again, wall = '2026-11-25T09:00:00Z', clock } = options;
    const entries = [...this.held.values()];
    const entry: Entry = {
      id: testId(this.#next),
      company: testCompany,
      stream,
      device: this.device,
      seq: this.#countOf(stream, this.device) + 1,
      lamport: Math.max(0, ...entries.map(({ lamport }) => lamport)) + 1,
      seen: this.#seen(stream),
      kind,
      payload,
      author: `hand ${this.device.slice(-4)}`,
      wall,
      zone: 'America/New_York',
      app: 'test',
      about,
      ...(again === undefined ? {} : { again }),
      ...(clock === undefined ? {} : { clock }),
    };
    this.#next += 1;
    this.held.set(entry.id, entry);
    return entry;
  }

  take(other: Desk): void {
    for (const [id, entry] of other.held) this.held.set(id, entry);
  }

  get entries(): readonly Entry[] {
    return [...this.held.values()];
  }

  #countOf(stream: string, device: string): number {
    return [...this.held.values()].filter((one) => one.stream === stream && one.device === device).length;
  }

  #seen(stream: string): Readonly<Record<string, number>> {
    const others = new Set(
      [...this.held.values()]
        .filter((one) => one.stream === stream && one.device !== this.device)
        .map(({ device }) => device),
    );
    return Object.fromEntries([...others].map((device) => [device, this.#countOf(stream, device)]));
  }
}
