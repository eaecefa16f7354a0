/** Builds once more from the shop's folder, for the same day, and names every file that comes out otherwise. */

import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { PROGRAM_FOLDER } from './options.ts';
import { MANIFEST } from './staging.ts';
import { AGAINST_BUILD, type Digests, digestsOf, fileFindings } from './verify-files.ts';
import type { Finding, Manifest } from './verify-manifest.ts';

/** dist: the published folder, and its digests. Resolves to what differs; a shop that cannot be built is a finding too. */
export async function rebuildFindings(
  shop: string,
  dist: string,
  { asOf, documents }: Manifest,
  found: Digests,
): Promise<Finding[]> {
  const folder = mkdtempSync(path.join(tmpdir(), 'fettlebook-verify-'));
  try {
    const out = path.join(folder, 'build');
    const drafts = documents.some((d) => d.standing === 'draft') ? ['--drafts'] : [];
    const failed = await build(['--shop', shop, '--out', out, '--as-of', asOf, ...drafts]);
    if (failed !== undefined) {
      return [{ kind: 'differs', words: `the shop’s folder cannot be built any more: ${failed}` }];
    }
    const findings = fileFindings(
      found,
      Object.fromEntries([...digestsOf(out)].map(([n, d]) => [n, d ?? ''])),
      AGAINST_BUILD,
    );
    const same = readFileSync(path.join(dist, MANIFEST)).equals(readFileSync(path.join(out, MANIFEST)));
    return same ? findings : [...findings, { kind: 'differs', words: `${MANIFEST}: ${AGAINST_BUILD.differs}` }];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** In a process of its own, as a person would. Resolves to its last words when it fails. */
function build(args: readonly string[]): Promise<string | undefined> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [path.join(PROGRAM_FOLDER, 'scripts', 'build.ts'), ...args], {
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    let told = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      told += text;
    });
    child.on('error', reject);
    child.on('close', (code) => resolve(code === 0 ? undefined : (told.trim().split('\n').at(-1) ?? '')));
  });
}
