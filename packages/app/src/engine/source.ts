import type { Entry } from '@brinewright/journal';

/** What the engine reads of the device; a database in life, a list in tests. */
export type Source = {
  readonly company: string;
  /** All streams on this device, the workshop's own among them. */
  readonly streams: () => Promise<readonly string[]>;
  readonly entriesOf: (stream: string) => Promise<readonly Entry[]>;
  /** Definition files of the workshop that have come to this device. */
  readonly definitions: () => Promise<readonly DefinitionText[]>;
};

export type DefinitionText = { readonly name: string; readonly text: string };
