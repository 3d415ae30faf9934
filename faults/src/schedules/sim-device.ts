import { type DeviceCall, type Held, MemoryDeviceStore, newDevice } from '@brinewright/journal';

/** Thrown where the device dies: its transaction is rolled back, as when the battery goes. */
export class Crash extends Error {
  override readonly name = 'Crash';
}

export type SimDeviceOptions = {
  readonly label: string;
  readonly isOwner: boolean;
  /** Follows the whole log, as one in the office does. */
  readonly isOffice: boolean;
};

/** A phone or laptop: storage that may crash, and a clock that may be wrong. */
export class SimDevice {
  readonly label: string;
  readonly isOwner: boolean;
  readonly isOffice: boolean;
  /** Milliseconds its clock is ahead. */
  clockError = 0;
  /** Its order was spoiled: what it writes is refused for good. */
  isSpoiled = false;
  #store: MemoryDeviceStore;
  /** Counts down the calls that write; at nought the device dies. */
  #left: number | undefined;
  /** What it was doing when it died. */
  diedAt: DeviceCall | undefined;

  constructor(
    { label, isOwner, isOffice }: SimDeviceOptions,
    store: (before: (call: DeviceCall) => void) => MemoryDeviceStore,
  ) {
    this.label = label;
    this.isOwner = isOwner;
    this.isOffice = isOffice;
    this.#store = store((call) => this.#before(call));
  }

  static fresh(options: SimDeviceOptions, company: string, name: string): SimDevice {
    return new SimDevice(options, (before) => new MemoryDeviceStore(newDevice(company, name), { before }));
  }

  get store(): MemoryDeviceStore {
    return this.#store;
  }

  /** A copied profile lives on beside it. */
  copy(options: SimDeviceOptions): SimDevice {
    const copy = new SimDevice(options, (before) => this.#store.clone({ before }));
    copy.clockError = this.clockError;
    copy.isSpoiled = this.isSpoiled;
    return copy;
  }

  dieAfter(writes: number): void {
    this.#left = writes;
    this.diedAt = undefined;
  }

  live(): void {
    this.#left = undefined;
  }

  all(): Promise<readonly Held[]> {
    return this.#store.transact(async (tx) => {
      const held = [];
      for (const { stream } of await tx.streams()) held.push(...(await tx.entriesOf(stream)));
      return held;
    });
  }

  #before(call: DeviceCall): void {
    if (call === 'read' || this.#left === undefined) return;
    this.#left -= 1;
    if (this.#left > 0) return;
    this.#left = undefined;
    this.diedAt = call;
    throw new Crash(this.label);
  }
}
