/** Canonical JSON (RFC 8785) and the digests over it. */

import { hash } from 'node:crypto';
import canonicalize from 'canonicalize';

/** value: plain data. Throws RangeError for what JSON does not have, such as NaN. */
export function canonical(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new RangeError('there is nothing to write');
  return text;
}

/** SHA-256, hex. */
export function sha256(bytes: string | Uint8Array): string {
  return hash('sha256', bytes, 'hex');
}
