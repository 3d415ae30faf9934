import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import type { Family } from '../model/family.ts';
import type { Medium } from '../model/fitting.ts';

/** SHA-256 over the canonical JSON (RFC 8785) of what was compiled: the same equipment, the same digest. */
export const digestOf = (
  families: ReadonlyMap<string, Family>,
  media: ReadonlyMap<string, Medium>,
): string => {
  const whole = { families: Object.fromEntries(families), media: Object.fromEntries(media) };
  return bytesToHex(sha256(utf8ToBytes(canonicalize(whole) ?? '')));
};
