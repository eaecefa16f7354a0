/** The fingerprint of a card: a digest of everything that it says, without the places in files it was read from. */

import { createHash } from 'node:crypto';

/** The card with its digest and fingerprint, computed when one is first read: a check needs none. content: called once. */
export function withFingerprint<T extends object>(
  card: T,
  content: () => unknown,
): T & { readonly digest: string; readonly fingerprint: string } {
  let known: string | undefined;
  const get = (): string => {
    known ??= digest(content());
    return known;
  };
  return Object.defineProperties(card, {
    digest: { enumerable: true, get },
    fingerprint: { enumerable: true, get: () => fingerprintOf(get()) },
  }) as T & { readonly digest: string; readonly fingerprint: string };
}

/** SHA-256, hex, over the content's JSON without the keys `range` and `ranges`. */
export function digest(content: unknown): string {
  return createHash('sha256').update(jsonWithoutPlaces(content)).digest('hex');
}

/** What is printed of a digest: its first 8 digits, upper case. */
export function fingerprintOf(hex: string): string {
  return hex.slice(0, 8).toUpperCase();
}

/**
 * What `JSON.stringify` gives with a replacer that drops the places, several times faster: it calls the replacer for every value.
 * value: plain data; nothing in it has a `toJSON`.
 */
export function jsonWithoutPlaces(value: unknown): string {
  return written(value) ?? 'null';
}

/** Objects that many cards share, joints above all, are written once. Only frozen-by-type results of the resolver come here. */
const joints = new WeakMap<object, string>();

function written(value: unknown): string | undefined {
  switch (typeof value) {
    case 'string':
      return quoted(value);
    case 'number':
      return Number.isFinite(value) ? String(Object.is(value, -0) ? 0 : value) : 'null';
    case 'boolean':
      return value ? 'true' : 'false';
    case 'object':
      if (value === null) return 'null';
      return Array.isArray(value) ? list(value) : map(value as Readonly<Record<string, unknown>>);
    default:
      return undefined;
  }
}

function list(items: readonly unknown[]): string {
  let out = '';
  for (let i = 0; i < items.length; i++) out += `${i === 0 ? '' : ','}${written(items[i]) ?? 'null'}`;
  return `[${out}]`;
}

function map(object: Readonly<Record<string, unknown>>): string {
  // A joint plan is the largest thing on a card, and the same object on all cards of its variant.
  const isJoint = object['rounds'] !== undefined && object['sequence'] !== undefined;
  const known = isJoint ? joints.get(object) : undefined;
  if (known !== undefined) return known;
  let out = '';
  for (const key of Object.keys(object)) {
    if (key === 'range' || key === 'ranges') continue;
    const text = written(object[key]);
    if (text !== undefined) out += `${out === '' ? '' : ','}${quoted(key)}:${text}`;
  }
  const text = `{${out}}`;
  if (isJoint) joints.set(object, text);
  return text;
}

/** Signs that JSON writes as escapes; halves of a pair without the other among them. */
const ESCAPED =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the signs that are looked for
  /["\\\u0000-\u001f\ud800-\udfff]/;

function quoted(text: string): string {
  return ESCAPED.test(text) ? JSON.stringify(text) : `"${text}"`;
}
