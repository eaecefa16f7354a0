/** Processes that write the ledger, and what is left in the folder when they are killed. */

import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { onTestFinished } from 'vitest';
import { diskFiles } from '../../src/control/files.ts';
import type { Entry } from '../../src/control/types.ts';
import { verifyLedger } from '../../src/control/verify-ledger.ts';
import type { Hook } from './fs-hook.ts';
import { OPEN_RULES } from './issue-one.ts';

export interface Ended {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly stderr: string;
}

export interface Running {
  readonly pid: number;
  readonly ended: Promise<Ended>;
}

const CHILD = path.join(import.meta.dirname, 'write-child.ts');
const HOOK = pathToFileURL(path.join(import.meta.dirname, 'fs-hook.ts')).href;

/** Starts a script under the hook. */
export function start(args: readonly string[], hook?: Hook): Running {
  const hooked = hook === undefined ? [] : ['--import', `${HOOK}?${encodeURIComponent(JSON.stringify(hook))}`];
  const child = spawn(process.execPath, [...hooked, ...args], { stdio: ['ignore', 'ignore', 'pipe'] });
  let stderr = '';
  child.stderr.setEncoding('utf8').on('data', (t: string) => {
    stderr += t;
  });
  const ended = new Promise<Ended>((resolve, reject) => {
    child.on('error', reject).on('close', (code, signal) => resolve({ code, signal, stderr }));
  });
  return { pid: child.pid ?? 0, ended };
}

/** Issues `doc` into the folder in a process of its own. */
export function startIssue(folder: string, doc: string, hook?: Omit<Hook, 'folder'>): Running {
  return start([CHILD, folder, doc], hook === undefined ? undefined : { folder, ...hook });
}

/** What the hook has counted. */
export interface Counted {
  readonly count: number;
  readonly contents: readonly number[];
  readonly writes: readonly number[];
}

export function counted({ stderr }: Ended): Counted {
  return JSON.parse(stderr);
}

/** A temporary folder, removed after the test; with the same files as `from`. */
export function folderLike(from?: string): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'ledger-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  if (from !== undefined) cpSync(from, folder, { recursive: true });
  return folder;
}

export interface Left {
  readonly faults: readonly string[];
  readonly entries: readonly Entry[];
  /** Files below `issued/`, those with a dot in front apart. */
  readonly files: readonly string[];
  readonly hidden: readonly string[];
}

/** What the next build finds. */
export function left(folder: string): Left {
  const faults: string[] = [];
  const files = diskFiles(folder);
  const { ledger } = verifyLedger(files, 'shop', OPEN_RULES, (code, _, message) => faults.push(`${code} ${message}`));
  const isHidden = (name: string): boolean => /\/\.[^/]*$/.test(name);
  const list = files.list();
  return {
    faults,
    entries: ledger.entries,
    files: list.filter((n) => !isHidden(n)),
    hidden: list.filter(isHidden),
  };
}

/** Runs a task for each, so many at a time. */
export async function inTurn(
  points: readonly number[],
  atOnce: number,
  task: (point: number) => Promise<void>,
): Promise<void> {
  const left = [...points];
  const worker = async (): Promise<void> => {
    for (let point = left.shift(); point !== undefined; point = left.shift()) await task(point);
  };
  await Promise.all(Array.from({ length: atOnce }, worker));
}

/** 1, 2, 3 … */
export function upTo(count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => i + 1);
}

/** The text of a lock that some process holds. */
export function lockText(more: Readonly<Record<string, unknown>>): string {
  const lock = {
    born: '',
    count: 0,
    files: [],
    host: hostname(),
    pid: 1,
    prev: '',
    seal: '',
    seq: 0,
    started: '2026-03-01T08:00:00.000Z',
  };
  return `${JSON.stringify({ ...lock, ...more })}\n`;
}
