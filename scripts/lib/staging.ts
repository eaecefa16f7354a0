/** A build is made beside the output folder and exchanged whole: the folder is the old build or the new one, never half of each. */

import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { UsageFault } from './faults.ts';

/** Names the process that is building, so that a later build can tell a running one from one that was killed. */
const OWNER = '.builder';
/** Written last, so that its presence tells a whole build; also what shows that a folder is ours to replace. */
export const MANIFEST = 'manifest.json';

/** What is made: the file that stands in every whole one, and how it is called. */
export interface Made {
  readonly mark: string;
  readonly what: string;
}

const BUILD: Made = { mark: MANIFEST, what: 'a build' };

export interface Staging {
  readonly folder: string;
  /** Exchanges the finished build with the output folder. */
  readonly publish: () => void;
  /** Removes every trace of an unfinished build. */
  readonly discard: () => void;
}

/** Prepares to make it in `out`. Throws UsageFault when `out` is not a folder that may be replaced by it. */
export function openStaging(out: string, shop: string, made: Made = BUILD): Staging {
  refuseUnsafe(out, shop, made);
  const parent = path.dirname(out);
  const stem = `.${path.basename(out)}.`;
  mkdirSync(parent, { recursive: true });
  sweep(parent, stem);
  const folder = mkdtempSync(path.join(parent, `${stem}new-`));
  writeFileSync(path.join(folder, OWNER), String(process.pid));
  const discard = (): void => rmSync(folder, { recursive: true, force: true });
  return {
    folder,
    discard,
    publish: () => {
      rmSync(path.join(folder, OWNER));
      // A temporary folder is closed to others; what is published must be readable by a web server.
      chmodSync(folder, 0o777 & ~process.umask());
      if (!existsSync(out)) {
        renameSync(folder, out);
        return;
      }
      const old = mkdtempSync(path.join(parent, `${stem}old-`));
      renameSync(out, path.join(old, 'build'));
      try {
        renameSync(folder, out);
      } catch (cause) {
        renameSync(path.join(old, 'build'), out);
        rmSync(old, { recursive: true, force: true });
        throw cause;
      }
      rmSync(old, { recursive: true, force: true });
    },
  };
}

function refuseUnsafe(out: string, shop: string, { mark, what }: Made): void {
  const inside = (inner: string, outer: string): boolean =>
    inner === outer || inner.startsWith(outer.endsWith(path.sep) ? outer : outer + path.sep);
  if (inside(shop, out) || inside(out, shop)) {
    throw new UsageFault(
      `the output folder \`${out}\` and the shop folder \`${shop}\` lie within each other`,
      'choose another folder with `--out DIR`',
    );
  }
  if (!existsSync(out)) return;
  const names = readdirSync(out);
  if (names.length > 0 && !names.includes(mark)) {
    throw new UsageFault(
      `\`${out}\` holds files that are not ${what}, and ${what} replaces the whole folder`,
      'choose an empty or new folder with `--out DIR`',
    );
  }
}

/** Removes what killed builds left, and puts back an output folder that was taken away but not replaced. */
function sweep(parent: string, stem: string): void {
  for (const name of readdirSync(parent)) {
    const full = path.join(parent, name);
    if (name.startsWith(`${stem}old-`)) {
      const out = path.join(parent, stem.slice(1, -1));
      const kept = path.join(full, 'build');
      if (!existsSync(out) && existsSync(kept)) renameSync(kept, out);
      rmSync(full, { recursive: true, force: true });
    } else if (name.startsWith(`${stem}new-`) && !isRunning(path.join(full, OWNER))) {
      rmSync(full, { recursive: true, force: true });
    }
  }
}

function isRunning(file: string): boolean {
  try {
    process.kill(Number(readFileSync(file, 'utf8')), 0);
    return true;
  } catch (cause) {
    return cause instanceof Error && 'code' in cause && cause.code === 'EPERM';
  }
}
