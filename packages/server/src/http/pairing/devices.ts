import { createHash, randomBytes } from 'node:crypto';
import { v7 } from 'uuid';
import type { PairedDevice, WorkshopStore } from '../../store/index.ts';

/** How often it is noted at most that a device was here. */
const noteEvery = 10 * 60_000;

/** Devices that may come in from the network; they belong to the own workshop and lie beside its record. */
export class Devices {
  readonly #store: WorkshopStore;
  readonly #company: () => string | undefined;
  readonly #now: () => Date;

  constructor(store: WorkshopStore, company: () => string | undefined, now: () => Date) {
    this.#store = store;
    this.#company = company;
    this.#now = now;
  }

  async list(): Promise<readonly PairedDevice[]> {
    const company = this.#company();
    return company === undefined ? [] : this.#store.devices(company);
  }

  /** A new device with its key, which is told this once; only its SHA-256 is kept. */
  async pair(
    company: string,
    name: string,
  ): Promise<{ readonly device: PairedDevice; readonly key: string }> {
    const key = randomBytes(32).toString('base64url');
    const device = await this.#store.pairDevice({ company, id: v7(), name, keyHash: hashOf(key) });
    return { device, key };
  }

  /** The device a key belongs to, as long as it is let in. */
  async withKey(key: string): Promise<PairedDevice | undefined> {
    const found = await this.#store.deviceByKey(hashOf(key));
    if (found === undefined || found.company !== this.#company()) return undefined;
    const since = this.#now().getTime() - Date.parse(found.seenAt ?? found.pairedAt);
    if (found.seenAt === undefined || since > noteEvery)
      await this.#store.touchDevice(found.company, found.id);
    return found;
  }

  async isLetIn(id: string): Promise<boolean> {
    return (await this.list()).some((one) => one.id === id && one.revokedAt === undefined);
  }

  async revoke(id: string): Promise<void> {
    const company = this.#company();
    if (company !== undefined) await this.#store.revokeDevice(company, id);
  }
}

const hashOf = (key: string): string => createHash('sha256').update(key).digest('hex');
