/** The files of document control in a shop's folder: the ledger, what it seals, and the public keys. Read here alone. */

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

export const ISSUED = 'issued';
export const KEYS = 'keys';
export const LEDGER = `${ISSUED}/ledger.jsonl`;
/** Number of lines and seal of the last one, so that lines lost at the end are missed. */
export const HEAD = `${ISSUED}/head`;
/** There while a line is written: names the process, and what it will leave. */
export const LOCK = `${ISSUED}/.writing`;

export interface ControlFiles {
  /** All files below `issued/` and `keys/`, by their path from the shop folder, sorted; a folder that cannot be read ends in `/`. */
  readonly list: () => readonly string[];
  /** Undefined when it is not there or cannot be read. */
  readonly read: (relative: string) => Uint8Array | undefined;
}

export function diskFiles(folder: string): ControlFiles {
  const walk = (relative: string): string[] => {
    try {
      return readdirSync(path.join(folder, relative), { withFileTypes: true }).flatMap((e) => {
        const inside = `${relative}/${e.name}`;
        return e.isDirectory() ? walk(inside) : [inside];
      });
    } catch (cause) {
      // A folder that is there and cannot be read is not one that holds nothing.
      return cause instanceof Error && 'code' in cause && cause.code === 'ENOENT' ? [] : [`${relative}/`];
    }
  };
  return {
    list: () => [...walk(ISSUED), ...walk(KEYS)].sort(),
    read: (relative) => {
      try {
        return readFileSync(path.join(folder, relative));
      } catch {
        return undefined;
      }
    },
  };
}

/** The same from memory, for examples and tests. */
export function memoryFiles(files: ReadonlyMap<string, string | Uint8Array>): ControlFiles {
  const ours = (name: string): boolean => name.startsWith(`${ISSUED}/`) || name.startsWith(`${KEYS}/`);
  return {
    list: () => [...files.keys()].filter(ours).sort(),
    read: (relative) => {
      const found = files.get(relative);
      return typeof found === 'string' ? new TextEncoder().encode(found) : found;
    },
  };
}

export const NO_FILES: ControlFiles = memoryFiles(new Map());
