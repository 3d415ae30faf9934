import type { Language } from '@brinewright/words';
import type { Workshop } from '../workshop/workshop.ts';
import type { AppFiles } from './app-files.ts';
import type { Devices } from './pairing/devices.ts';
import type { PairingCode } from './pairing/pairing-code.ts';

/** What devices on the network find, where they are let in at all. */
export type LanEntrance = {
  readonly urls: readonly string[];
  /** SHA-256 of the certificate to compare; none behind a proxy, which has its own. */
  readonly fingerprint: string | undefined;
  /** The certificate of our own authority, for phones to install; none where certificate files were given. */
  readonly authority: string | undefined;
};

/** Everything the pages and the API answer from. */
export type House = {
  /** The own workshop, once it has been begun. */
  readonly own: () => Workshop | undefined;
  readonly begin: (author: string, name: string) => Promise<Workshop>;
  readonly demo: Workshop | undefined;
  /** Resolves when the store answers. */
  readonly isReady: () => Promise<void>;
  readonly devices: Devices;
  readonly code: PairingCode;
  readonly lan: () => LanEntrance | undefined;
  /** Where the own record lies, as shown to its owner. */
  readonly dataPlace: string;
  /** The field app, where it has been built. */
  readonly app: AppFiles | undefined;
  readonly usualLanguage: Language;
  readonly now: () => Date;
};

export type WorkshopName = 'own' | 'demo';
export type Side = 'loopback' | 'lan';
