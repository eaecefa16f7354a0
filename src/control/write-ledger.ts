/**
 * Appends lines to the ledger, all of them or none. The ledger is exchanged by renaming, which is the moment at which the act
 * is done; what a process leaves that dies before or after it is told by its lock and put in order by the next one.
 */

import {
  closeSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  renameSync,
  rmdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { hostname } from 'node:os';
import path from 'node:path';
import { canonical, sha256 } from './canonical.ts';
import { headText } from './chain.ts';
import { type ControlFiles, diskFiles, HEAD, ISSUED, LEDGER, LOCK } from './files.ts';
import { isAtWork, type Lock, ownLock, readLock } from './lock.ts';
import { signLine } from './signature.ts';
import type { Entry, Ledger } from './types.ts';

/** The act cannot be done now; nothing was changed. */
export class ControlFault extends Error {
  readonly hint: string;
  constructor(message: string, hint: string) {
    super(message);
    this.hint = hint;
  }
}

/** Taken while what a dead process left is put in order. */
const RECOVERY = `${LOCK}-recovery`;

/** A line without what the ledger itself adds. */
export type Act = Entry extends infer E
  ? E extends Entry
    ? Omit<E, 'seq' | 'prev' | 'seal' | 'recorded' | 'signature'>
    : never
  : never;

export interface Writing {
  /** As verified under the lock: what the act was judged by. */
  readonly ledger: Ledger;
  /** One line each. */
  readonly acts: readonly Act[];
  /** By their path from `issued/`. */
  readonly files: readonly { readonly file: string; readonly text: string }[];
  readonly today: string;
  readonly sign?: { readonly by: string; readonly key: Parameters<typeof signLine>[2] };
}

/** The lines with their numbers, their seals, and their signatures. */
export function linesOf({ ledger, acts, today, sign }: Pick<Writing, 'ledger' | 'acts' | 'today' | 'sign'>): Entry[] {
  const lines: Entry[] = [];
  for (const act of acts) {
    const prev = lines.at(-1)?.seal ?? ledger.head;
    const bare = { ...act, seq: ledger.entries.length + lines.length + 1, prev, recorded: today };
    const signed = sign === undefined ? bare : { ...bare, signature: signLine(bare, sign.by, sign.key) };
    lines.push({ ...signed, seal: sha256(canonical(signed)) } as Entry);
  }
  return lines;
}

/**
 * Runs `prepare` with the ledger locked and writes the lines that it asks for. Throws ControlFault when somebody else is writing.
 * `prepare` must read the ledger anew: another process may have written since the caller looked.
 */
export function writeLines(folder: string, prepare: () => Writing): readonly Entry[] {
  const made = mkdirSync(path.join(folder, ISSUED), { recursive: true });
  const release = takeLock(folder);
  let left: Lock | undefined;
  try {
    const writing = prepare();
    const entries = linesOf(writing);
    const last = entries.at(-1);
    if (last === undefined) return [];
    const lock: Lock = {
      ...ownLock(),
      count: writing.ledger.entries.length,
      prev: writing.ledger.head,
      seq: last.seq,
      seal: last.seal,
      files: writing.files.map((f) => `${ISSUED}/${f.file}`),
    };
    left = lock;
    try {
      append(folder, lock, entries, writing.files);
    } catch (cause) {
      // Such as a full disk: what is half done is undone, unless the line is in the ledger already.
      const done = finish(folder, diskFiles(folder), lock);
      if (!done) {
        left = undefined;
        throw cause;
      }
    }
    left = undefined;
    return entries;
  } finally {
    // With something left that could not be put in order, the lock stays: it tells the next command what to do.
    if (left === undefined) release();
    if (made !== undefined) clearEmpty(path.join(folder, ISSUED));
  }
}

/** An act that was refused leaves no folder behind. */
function clearEmpty(folder: string): void {
  try {
    rmdirSync(folder);
  } catch {
    // Something was written.
  }
}

function append(folder: string, lock: Lock, entries: readonly Entry[], files: Writing['files']): void {
  // The lock names what will be left behind before any of it is there.
  replace(folder, LOCK, `${canonical(lock)}\n`);
  for (const { file, text } of files) {
    const name = `${ISSUED}/${file}`;
    mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
    replace(folder, name, text);
  }
  const before = diskFiles(folder).read(LEDGER);
  const added = Buffer.from(entries.map((e) => `${canonical(e)}\n`).join(''));
  replace(folder, LEDGER, Buffer.concat([before ?? Buffer.alloc(0), added]));
  replace(folder, HEAD, headText(lock.seq, lock.seal));
}

/** Takes the lock, after what a dead process left has been put in order. Returns how it is given back. */
function takeLock(folder: string): () => void {
  for (let tries = 0; tries < 5; tries++) {
    const release = tryLock(folder, LOCK);
    if (release !== undefined) {
      sweep(folder, diskFiles(folder));
      return release;
    }
    recover(folder);
  }
  throw new ControlFault('the ledger is being written by several commands in turn', 'wait a moment and run it again');
}

/** Undefined when it is taken. */
function tryLock(folder: string, name: string): (() => void) | undefined {
  const full = path.join(folder, name);
  const mine = `${full}.${process.pid}`;
  try {
    writeFileSync(mine, `${canonical(ownLock())}\n`);
    // A link comes into being with its content, and only once.
    linkSync(mine, full);
    return () => rmSync(full, { force: true });
  } catch (cause) {
    if (cause instanceof Error && 'code' in cause && cause.code === 'EEXIST') return undefined;
    throw cause;
  } finally {
    rmSync(mine, { force: true });
  }
}

/** Puts in order what a process left that died while it was writing. Throws when it is still at work. */
function recover(folder: string): void {
  deadOrThrow(folder, LOCK);
  // One at a time: what is cleared away must not be what the next one has just begun to write.
  const release = tryLock(folder, RECOVERY);
  if (release === undefined) {
    if (deadOrThrow(folder, RECOVERY)) rmSync(path.join(folder, RECOVERY), { force: true });
    return;
  }
  try {
    const lock = deadOrThrow(folder, LOCK);
    if (lock === undefined) return;
    finish(folder, diskFiles(folder), lock);
    rmSync(path.join(folder, LOCK), { force: true });
  } finally {
    release();
  }
}

/** The lock of a dead process; undefined when there is none any more. */
function deadOrThrow(folder: string, name: string): Lock | undefined {
  const bytes = diskFiles(folder).read(name);
  if (bytes === undefined) return undefined;
  const lock = readLock(bytes);
  if (lock === undefined) {
    throw new ControlFault(
      `\`${name}\` cannot be read`,
      'make sure that nobody is issuing, then take that file away and run the command again',
    );
  }
  if (lock.host !== hostname()) {
    throw new ControlFault(
      `the machine \`${lock.host}\` has been writing the ledger since ${lock.started}`,
      `wait until it has finished; when it has died, take \`${name}\` away and run the command again`,
    );
  }
  if (isAtWork(lock)) {
    throw new ControlFault(
      `another command has been writing the ledger since ${lock.started} (process ${lock.pid})`,
      'wait until it has finished and run the command again: what you issue must follow from what it wrote',
    );
  }
  return lock;
}

/** The line is in the ledger: only its head may be missing. It is not: its files go. Returns whether it is. */
function finish(folder: string, files: ControlFiles, lock: Lock): boolean {
  let done = false;
  if (lock.seq > 0) {
    const text = new TextDecoder().decode(files.read(LEDGER));
    done = text.includes(`"seal":"${lock.seal}"`);
    if (done) replace(folder, HEAD, headText(lock.seq, lock.seal));
    else for (const name of lock.files) rmSync(path.join(folder, name), { force: true });
  }
  sweep(folder, files);
  return done;
}

/** Takes away what was never finished. Whoever does it holds the lock, or puts in order what its dead holder left. */
function sweep(folder: string, files: ControlFiles): void {
  const part = new RegExp(`^${ISSUED}/(.*/)?\\.[^/]*\\.part$`);
  for (const name of files.list()) {
    if (part.test(name) || isStray(name)) rmSync(path.join(folder, name), { force: true });
  }
}

/** What a process has made to take the lock with, and did not live to use. */
function isStray(name: string): boolean {
  const pid = new RegExp(`^${LOCK.replace('.', '\\.')}(?:-recovery)?\\.(\\d+)$`).exec(name)?.[1];
  return pid !== undefined && !isAtWork({ pid: Number(pid), born: '' });
}

/** Writes beside and renames; on the disk before the name leads to it. */
function replace(folder: string, name: string, content: string | Uint8Array): void {
  const full = path.join(folder, name);
  const part = path.join(path.dirname(full), `.${path.basename(full)}.part`);
  const handle = openSync(part, 'w');
  try {
    writeFileSync(handle, content);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
  renameSync(part, full);
}
