import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import type { Entry, Sealed } from './entry.ts';

/** The entry in canonical form with its SHA-256 (J1). */
export const seal = (entry: Entry): Sealed => {
  const text = canonicalize(entry);
  if (text === undefined) throw new RangeError('an entry is an object');
  return { entry, text, hash: sha256Hex(utf8ToBytes(text)) };
};

export const sha256Hex = (bytes: Uint8Array): string => bytesToHex(sha256(bytes));
