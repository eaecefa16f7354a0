/** Ed25519 signatures of approvers (RFC 8032): keys as PEM files, public ones in the shop's folder, private ones outside. */

import { createPrivateKey, createPublicKey, generateKeyPairSync, type KeyObject, sign, verify } from 'node:crypto';
import { canonical, sha256 } from './canonical.ts';
import { type ControlFiles, KEYS } from './files.ts';
import type { Signature } from './types.ts';

/** Public keys of the approvers: key id to key, a person's older keys among them. */
export interface KeyRing {
  readonly find: (person: string, keyId: string) => KeyObject | undefined;
  /** Persons of whom there is a key. */
  readonly persons: ReadonlySet<string>;
  /** Files in `keys/` that hold something else than Ed25519 public keys in their usual spelling. */
  readonly unreadable: readonly string[];
}

/** First 16 hex digits of the SHA-256 over the SPKI form of the key, or of the public half of a private one. */
export function keyIdOf(key: KeyObject): string {
  const open = key.type === 'private' ? createPublicKey(key) : key;
  return sha256(open.export({ type: 'spki', format: 'der' })).slice(0, 16);
}

/** Reads `keys/<person>.pem`; one file may hold several keys, the older ones of the person below the present one. */
export function readKeys(files: ControlFiles, list: readonly string[]): KeyRing {
  const keys = new Map<string, KeyObject>();
  const persons = new Set<string>();
  const unreadable: string[] = [];
  for (const name of list) {
    const person = new RegExp(`^${KEYS}/([a-z0-9-]+)\\.pem$`).exec(name)?.[1];
    if (person === undefined) {
      if (name.startsWith(`${KEYS}/`)) unreadable.push(name);
      continue;
    }
    const text = Buffer.from(files.read(name) ?? []).toString('latin1');
    const read = (text.match(/-----BEGIN PUBLIC KEY-----[^-]+-----END PUBLIC KEY-----\n/g) ?? []).flatMap(
      (pem) => publicKey(pem) ?? [],
    );
    // A key has several spellings; only the usual one, and nothing beside it, so that every byte of the file counts.
    if (text === '' || read.map(publicPem).join('') !== text) {
      unreadable.push(name);
      continue;
    }
    for (const key of read) {
      keys.set(`${person} ${keyIdOf(key)}`, key);
      persons.add(person);
    }
  }
  return { find: (person, keyId) => keys.get(`${person} ${keyId}`), persons, unreadable };
}

function publicKey(pem: string): KeyObject | undefined {
  try {
    const key = createPublicKey(pem);
    return key.asymmetricKeyType === 'ed25519' ? key : undefined;
  } catch {
    return undefined;
  }
}

function publicPem(key: KeyObject): string {
  return key.export({ type: 'spki', format: 'pem' }).toString();
}

/** The private key in a PEM text; undefined when it holds none of the kind. */
export function privateKey(pem: string): KeyObject | undefined {
  try {
    const key = createPrivateKey(pem);
    return key.asymmetricKeyType === 'ed25519' ? key : undefined;
  } catch {
    return undefined;
  }
}

/** A fresh pair as PEM texts. */
export function newKeyPair(): { readonly publicPem: string; readonly privatePem: string } {
  const { publicKey: open, privateKey: secret } = generateKeyPairSync('ed25519');
  return {
    publicPem: publicPem(open),
    privatePem: secret.export({ type: 'pkcs8', format: 'pem' }).toString(),
  };
}

/** What is signed: the line without its signature and its seal. */
function signedBytes(line: object): Uint8Array {
  const { signature: _signature, seal: _seal, ...rest } = line as { signature?: unknown; seal?: unknown };
  return new TextEncoder().encode(canonical(rest));
}

export function signLine(line: object, by: string, key: KeyObject): Signature {
  return {
    by,
    key: keyIdOf(key),
    value: sign(null, signedBytes(line), key).toString('base64'),
  };
}

export function holds(line: object, signature: Signature, key: KeyObject): boolean {
  const value = Buffer.from(signature.value, 'base64');
  // Base64 has several spellings of the same bytes: only one is a signature.
  if (value.toString('base64') !== signature.value) return false;
  return verify(null, signedBytes(line), key, value);
}
