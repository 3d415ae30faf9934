import type { Entry, Sealed } from '../entry/entry.ts';
import { isTombstone, tombstone } from '../entry/read-entry.ts';
import { seal } from '../entry/seal.ts';

/*
 * Redaction at the store (SPEC R1): the one exception to "never changed". A redaction itself is not redacted, so that
 * what it took out stays out.
 */

/** Of any version: who may not redact may not do so in the words of a newer program either. */
export const isRedaction = ({ kind }: Entry): boolean => kind.startsWith('redacted/');

/** The entry whose content is to go; undefined where this entry says none. */
export const targetOf = ({ kind, payload }: Entry): string | undefined => {
  if (kind !== 'redacted/1' || typeof payload !== 'object' || payload === null || Array.isArray(payload))
    return undefined;
  const { target } = payload;
  return typeof target === 'string' && uuid.test(target) ? target : undefined;
};

const uuid = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/u;

/** Its tombstone: id, place in the order and hash stay, the payload says by which entry it went. */
export const redact = <T extends Sealed>(sealed: T, by: string): T => {
  if (isRedaction(sealed.entry) || isTombstone(sealed.entry)) return sealed;
  const { entry, text } = seal(tombstone(sealed.entry, by));
  return { ...sealed, entry, text, redacted: true };
};
