/**
 * Loaded before a command of a test: counts the operations below a folder that change the disk, and at the chosen one kills the
 * process, in the middle of it or before it, or fails as a full disk does. Which one, stands behind the `?` of its own address.
 */

import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

export interface Hook {
  /** Operations below this folder count. */
  readonly folder: string;
  /** Counted from 1. */
  readonly at: number;
  /** `before`: killed; `half`: killed when half of a file is written; `stop`: stopped before it; `full`: from there on, nothing can be written. */
  readonly do: 'before' | 'half' | 'stop' | 'full' | 'count';
}

const given = new URL(import.meta.url).search.slice(1);
const hook: Hook | undefined = given === '' ? undefined : JSON.parse(decodeURIComponent(given));
let count = 0;
/** Numbers of the operations that write the content of a file, and of all that take room. */
const contents: number[] = [];
const writes: number[] = [];
/** Descriptors of files below the folder. */
const open = new Set<number>();

function isOurs(target: unknown): boolean {
  return typeof target === 'number'
    ? open.has(target)
    : hook !== undefined && typeof target === 'string' && target.startsWith(hook.folder);
}

const NAMES = [
  'closeSync',
  'fsyncSync',
  'linkSync',
  'mkdirSync',
  'openSync',
  'renameSync',
  'rmSync',
  'writeFileSync',
] as const;
/** What takes room on the disk. */
const WRITES = new Set<string>(['linkSync', 'mkdirSync', 'openSync', 'writeFileSync']);

if (hook !== undefined) {
  for (const name of NAMES) {
    const real = fs[name] as (...args: unknown[]) => unknown;
    const hooked = (...args: unknown[]): unknown => {
      const [target] = args;
      // What only reads leaves the disk as it is.
      if (!isOurs(target) || (name === 'openSync' && args[1] !== 'w')) return real(...args);
      count += 1;
      if (name === 'writeFileSync') contents.push(count);
      const takesRoom = WRITES.has(name);
      if (takesRoom) writes.push(count);
      if (hook.do === 'full' && count >= hook.at && takesRoom) {
        throw Object.assign(new Error('ENOSPC: no space left on device'), { code: 'ENOSPC', path: String(target) });
      }
      if (count === hook.at && hook.do === 'before') process.kill(process.pid, 'SIGKILL');
      if (count === hook.at && hook.do === 'stop') process.kill(process.pid, 'SIGSTOP');
      if (count === hook.at && hook.do === 'half' && name === 'writeFileSync') {
        const bytes = Buffer.from(args[1] as string | Uint8Array);
        real(target, bytes.subarray(0, Math.floor(bytes.length / 2)));
        process.kill(process.pid, 'SIGKILL');
      }
      const result = real(...args);
      if (name === 'openSync') open.add(result as number);
      if (name === 'closeSync') open.delete(target as number);
      return result;
    };
    Object.assign(fs, { [name]: hooked });
  }
  syncBuiltinESMExports();
  if (hook.do === 'count')
    process.on('exit', () => process.stderr.write(`${JSON.stringify({ count, contents, writes })}\n`));
}
