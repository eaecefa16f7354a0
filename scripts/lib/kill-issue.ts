/** Kills the real `issue` command at chosen moments, in a shop of its own, and looks each time whether the ledger has held. */

import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { LOCK } from '../../src/control/index.ts';
import { hasErrors, renderShort } from '../../src/diagnostics/index.ts';
import { compileShop, issueDocument } from '../../src/pipeline/index.ts';
import { EXAMPLE_SHOP } from '../../src/rules/index.ts';
import type { Random } from '../bench/random.ts';
import { PROGRAM_FOLDER } from './options.ts';
import { today } from './today.ts';

export interface KillCount {
  /** Killed before the ledger was touched; while it was being written; after the issue was done. */
  readonly before: number;
  readonly within: number;
  readonly after: number;
}

const FIRST = /^( {2}- \{ rev: A, .*)$/m;

/**
 * kills: how many. A third of them falls anywhere in the run, a third while the lock is held, a third while files are written. Throws Error with what did not hold.
 * onKill: called after each, with the words of what was left.
 */
export async function killIssue(kills: number, random: Random, onKill: (words: string) => void): Promise<KillCount> {
  const work = mkdtempSync(path.join(tmpdir(), 'kill-issue-'));
  try {
    const base = path.join(work, 'base');
    makeShop(base);
    // The quickest of three: a kill that comes after the end tells nothing.
    let whole = Number.POSITIVE_INFINITY;
    for (const name of ['one', 'two', 'three'])
      whole = Math.min(whole, await runTime(copyOf(base, path.join(work, name))));
    const count = { before: 0, within: 0, after: 0 };
    for (let i = 0; i < kills; i++) {
      const folder = copyOf(base, path.join(work, `shop-${i}`));
      const child = startIssue(folder);
      const ended = new Promise<void>((resolve) => child.on('close', () => resolve()));
      if (i % 3 === 0) await pause(random.whole(Math.ceil(whole)));
      else if (i % 3 === 1) await fileOrEnd(path.join(folder, LOCK), child, random.whole(Math.ceil(whole / 6)));
      else await fileOrEnd(path.join(folder, 'issued', 'MW-1', 'B.json'), child, random.whole(4));
      child.kill('SIGKILL');
      await ended;
      const kind = judge(folder);
      count[kind] += 1;
      onKill(kind);
      rmSync(folder, { recursive: true });
    }
    return count;
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

/** The example shop with revision A issued and revision B as its draft. */
function makeShop(folder: string): void {
  const write = (change: (text: string) => string): void => {
    for (const [name, text] of Object.entries(EXAMPLE_SHOP)) {
      mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
      writeFileSync(path.join(folder, name), name.startsWith('procedures/') ? change(text) : text);
    }
  };
  write((text) => text);
  issue(folder);
  const day = today();
  const record = `  - { rev: B, effective: ${day}, approved: ${day}, author: ada, approver: ben, what: Gap measured wider, why: Reported }`;
  write((text) => text.replace(FIRST, `$1\n${record}`).replace('0.05 to 0.30 mm', '0.05 to 0.35 mm'));
}

function compile(folder: string): ReturnType<typeof compileShop> {
  return compileShop({ folder, shown: 'shop', cards: 'suspect' });
}

function issue(folder: string): void {
  issueDocument(compile(folder), 'MW-1', { folder, shown: 'shop', today: today() });
}

function copyOf(base: string, folder: string): string {
  cpSync(base, folder, { recursive: true });
  return folder;
}

function startIssue(folder: string): ChildProcess {
  const script = path.join(PROGRAM_FOLDER, 'scripts', 'issue.ts');
  return spawn(process.execPath, [script, 'MW-1', '--shop', folder], { stdio: ['ignore', 'ignore', 'pipe'] });
}

/** Milliseconds of a run that is left alone. */
async function runTime(folder: string): Promise<number> {
  const begun = performance.now();
  const child = startIssue(folder);
  let said = '';
  child.stderr?.setEncoding('utf8').on('data', (t: string) => {
    said += t;
  });
  const code = await new Promise<number | null>((resolve) => child.on('close', resolve));
  if (code !== 0) throw new Error(`the issue that is left alone ends with ${String(code)}: ${said}`);
  return performance.now() - begun;
}

/** Until the file is there, and so many milliseconds longer. */
async function fileOrEnd(file: string, child: ChildProcess, longer: number): Promise<void> {
  while (child.exitCode === null && !existsSync(file)) await new Promise(setImmediate);
  if (longer > 0) await pause(longer);
}

function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}

/** The next build and the next issue after the kill. */
function judge(folder: string): keyof KillCount {
  const locked = existsSync(path.join(folder, LOCK));
  const found = compile(folder);
  if (hasErrors(found.diagnostics)) throw new Error(renderShort(found.diagnostics, found.textOf));
  const done = found.control.ledger.entries.length === 2;
  if (!done) {
    issue(folder);
    const after = compile(folder);
    if (hasErrors(after.diagnostics)) throw new Error(renderShort(after.diagnostics, after.textOf));
    if (after.control.ledger.entries.length !== 2) throw new Error('the next issue is not in the ledger');
  }
  const files = readdirSync(path.join(folder, 'issued', 'MW-1')).filter((f) => !f.startsWith('.'));
  if (files.sort().join() !== 'A.json,B.changes.json,B.json') throw new Error(`left behind: ${files.join(', ')}`);
  return locked ? 'within' : done ? 'after' : 'before';
}
