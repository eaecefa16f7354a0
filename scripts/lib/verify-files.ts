/** A published folder file by file: against the digests of its manifest, or against a second build. */

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { MANIFEST } from './staging.ts';
import type { Finding } from './verify-manifest.ts';

/** Every file below the folder but its manifest, with its SHA-256; undefined for what is no ordinary file or cannot be read. */
export type Digests = ReadonlyMap<string, string | undefined>;

/** Files with a dot in front are not passed over: a web server may obey them. */
export function digestsOf(folder: string): Digests {
  const found = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((e) => !e.isDirectory())
    .map((e) => {
      const full = path.join(e.parentPath, e.name);
      return [path.relative(folder, full).split(path.sep).join('/'), e.isFile() ? digest(full) : undefined] as const;
    })
    .filter(([name]) => name !== MANIFEST);
  return new Map(found.sort(([a], [b]) => (a < b ? -1 : 1)));
}

function digest(file: string): string | undefined {
  try {
    return createHash('sha256').update(readFileSync(file)).digest('hex');
  } catch {
    return undefined;
  }
}

/** What each kind of difference means. */
export interface FileWords {
  readonly differs: string;
  readonly missing: string;
  readonly surplus: string;
}

export const AGAINST_MANIFEST: FileWords = {
  differs: 'its bytes are not those that were published',
  missing: 'it was published, and it is not there',
  surplus: 'it was not published',
};

export const AGAINST_BUILD: FileWords = {
  differs: 'a second build makes other bytes',
  missing: 'a second build makes it, and it is not there',
  surplus: 'a second build does not make it',
};

/** Names every file that differs, sorted by name. wanted: file to SHA-256. */
export function fileFindings(found: Digests, wanted: Readonly<Record<string, string>>, words: FileWords): Finding[] {
  const names = [...new Set([...Object.keys(wanted), ...found.keys()])].sort();
  return names.flatMap((name): Finding[] => {
    const kind = !found.has(name)
      ? 'missing'
      : !Object.hasOwn(wanted, name)
        ? 'surplus'
        : found.get(name) !== wanted[name]
          ? 'differs'
          : undefined;
    return kind === undefined ? [] : [{ kind, words: `${name}: ${words[kind]}` }];
  });
}
