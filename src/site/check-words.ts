/**
 * The words of all checks, each with its example run: two seconds of work that depends on the program alone. They are kept among the
 * scratch files, under a name that changes with the program's files.
 */

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { type CheckWords, checkWords } from '../pipeline/index.ts';
import { CHECKS } from '../rules/index.ts';
import { PROJECT_ROOT } from './project-root.ts';

/** Where the program keeps its scratch files, made when it is not there. */
export async function scratchFolder(): Promise<string> {
  const folder = join(PROJECT_ROOT, 'node_modules', '.cache', 'fettlebook');
  await mkdir(folder, { recursive: true });
  return folder;
}

/** folder: for scratch files; it must be there. */
export function allCheckWords(folder: string): readonly CheckWords[] {
  const file = join(folder, `checks-${programStamp()}.json`);
  const kept = readKept(file);
  if (kept !== undefined) return kept;
  const words = CHECKS.map(checkWords);
  try {
    const part = `${file}.${process.pid}`;
    writeFileSync(part, JSON.stringify(words));
    // Those of other states of the program.
    for (const old of readdirSync(folder)) {
      if (/^checks-[0-9a-f]{16}\.json$/.test(old)) rmSync(join(folder, old), { force: true });
    }
    renameSync(part, file);
  } catch {
    // A full or read-only disk costs the next build its two seconds.
  }
  return words;
}

function readKept(file: string): readonly CheckWords[] | undefined {
  try {
    return JSON.parse(readFileSync(file, 'utf8')) as readonly CheckWords[];
  } catch {
    return undefined;
  }
}

/** Names, sizes and times of the program's own files: an edit of any of them changes it. */
function programStamp(): string {
  const src = join(PROJECT_ROOT, 'src');
  const hash = createHash('sha256');
  for (const e of readdirSync(src, { recursive: true, withFileTypes: true })) {
    if (!e.isFile() || !e.name.endsWith('.ts')) continue;
    const full = join(e.parentPath, e.name);
    const { size, mtimeMs } = statSync(full);
    hash.update(`${full} ${size} ${mtimeMs}\n`);
  }
  return hash.digest('hex').slice(0, 16);
}
