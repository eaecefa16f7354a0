/** Runs a command of `scripts/` as a person would, and hands back what it printed and how it ended. */

import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, onTestFinished } from 'vitest';

export const ROOT = path.resolve(import.meta.dirname, '..', '..');

/** The runtime keeps here what it made of the program's files: a command then starts in half the time. */
const COMPILED = path.join(ROOT, 'node_modules', '.cache', 'fettlebook', 'compiled');

export interface Ended {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface RunOptions {
  readonly env?: Readonly<Record<string, string>>;
  /** Shell prefix, such as a limit on file sizes. */
  readonly limit?: string;
  /** Called with each piece of standard error; may send a signal. */
  readonly onStderr?: (text: string, kill: (signal: NodeJS.Signals) => void) => void;
}

export function run(script: string, args: readonly string[], options: RunOptions = {}): Promise<Ended> {
  const command = [process.execPath, path.join(ROOT, 'scripts', script), ...args];
  const [file = '', ...rest] =
    options.limit === undefined ? command : ['bash', '-c', `${options.limit}; exec "$@"`, 'bash', ...command];
  const { INIT_CWD: _, FETTLEBOOK_SHOP: __, ...env } = process.env;
  return new Promise((resolve, reject) => {
    const child = spawn(file, rest, {
      cwd: ROOT,
      env: { ...env, NODE_COMPILE_CACHE: COMPILED, ...options.env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let stdout = '';
    let stderr = '';
    child.stdout.setEncoding('utf8').on('data', (t: string) => {
      stdout += t;
    });
    child.stderr.setEncoding('utf8').on('data', (t: string) => {
      stderr += t;
      options.onStderr?.(t, (signal) => child.kill(signal));
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, stdout, stderr }));
  });
}

/** A temporary folder, removed after the test. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'fettlebook-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A temporary folder, removed after the last test of the file. */
export function keptFolder(): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'fettlebook-test-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** Every file below the folder with its SHA-256: equal objects mean equal bytes. */
export function digest(folder: string): Readonly<Record<string, string>> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile())
    .map((e) => path.join(e.parentPath, e.name))
    .sort();
  return Object.fromEntries(
    files.map((f) => [path.relative(folder, f), createHash('sha256').update(readFileSync(f)).digest('hex')]),
  );
}
