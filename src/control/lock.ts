/** The file that says that a line is being written: who writes, and what the line will leave behind. */

import { readFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { z } from 'zod';

const shape = z.strictObject({
  pid: z.int(),
  /** When the process was born, in the system's own count; numbers of processes are used again. */
  born: z.string(),
  host: z.string(),
  started: z.string(),
  /** Lines and seal of the ledger before, and after. */
  count: z.int(),
  prev: z.string(),
  seq: z.int(),
  seal: z.string(),
  /** Files that belong to it, by their path from the shop folder. */
  files: z.array(z.string()),
});

export type Lock = z.output<typeof shape>;

/** Undefined when it is not there, or was left empty by a full disk: then nothing has been written yet. */
export function readLock(bytes: Uint8Array | undefined): Lock | undefined {
  if (bytes === undefined) return undefined;
  try {
    const read = shape.safeParse(JSON.parse(new TextDecoder().decode(bytes)));
    return read.success ? read.data : undefined;
  } catch {
    return undefined;
  }
}

/** The lock of this process, before it has anything to leave behind. */
export function ownLock(): Lock {
  const { pid } = process;
  const started = new Date().toISOString();
  return { pid, born: bornAt(pid) ?? '', host: hostname(), started, count: 0, prev: '', seq: 0, seal: '', files: [] };
}

/** Whether the process that took it is still at work, on this machine. */
export function isAtWork({ pid, born }: Pick<Lock, 'pid' | 'born'>): boolean {
  try {
    process.kill(pid, 0);
  } catch (cause) {
    if (!(cause instanceof Error && 'code' in cause && cause.code === 'EPERM')) return false;
  }
  const now = bornAt(pid);
  return now === undefined || born === '' || now === born;
}

/** Field 22 of `/proc/<pid>/stat`; undefined where there is no such file. */
function bornAt(pid: number): string | undefined {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    // The name of the process stands in brackets and may hold blanks.
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19];
  } catch {
    return undefined;
  }
}
