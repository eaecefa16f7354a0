/** Builds the static site of a checked shop into a folder. */

import { spawn } from 'node:child_process';
import { rmSync } from 'node:fs';
import { cp, mkdir, mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { ControlView } from '../control/types.ts';
import type { BuildReport } from '../pipeline/index.ts';
import type { CheckedShop } from '../resolve/types.ts';
import { allCheckWords, scratchFolder } from './check-words.ts';
import { PROJECT_ROOT } from './project-root.ts';

export interface BuildSiteOptions {
  /** What the build reports, for its page. */
  readonly report: BuildReport;
  /** Everything about control on the day of the build; left out, the pages show nothing of control. */
  readonly control?: ControlView;
  /** Absolute; made when it is not there; files already in it that the site does not have are left alone. */
  readonly outDir: string;
  /** Told in a few words what was done. */
  readonly onProgress?: (done: string) => void;
  /** Ends the build early; the promise then rejects when nothing more will be written. */
  readonly signal?: AbortSignal;
}

/**
 * Renders all pages, the search index, the fonts and the style sheet into `outDir`; the same shop gives the same bytes.
 * Astro runs in a process of its own: it keeps scratch files under the folder in which it was started, which would depend
 * on the caller and collide between two builds. Throws an Error with Astro's own words when a page cannot be rendered.
 */
export async function buildSite(
  shop: CheckedShop,
  { report, control, outDir, onProgress, signal }: BuildSiteOptions,
): Promise<void> {
  const caches = await scratchFolder();
  const scratch = await mkdtemp(join(caches, 'site-'));
  // A command that is stopped by a signal ends without `finally`.
  const sweep = () => rmSync(scratch, { recursive: true, force: true });
  process.once('exit', sweep);
  try {
    const built = join(scratch, 'dist');
    await runWorker(
      JSON.stringify({
        shop,
        control,
        report,
        checks: allCheckWords(caches),
        outDir: built,
        cacheDir: join(scratch, 'cache'),
      }),
      signal,
    );
    signal?.throwIfAborted();
    onProgress?.('pages rendered');
    await mkdir(outDir, { recursive: true });
    await cp(built, outDir, { recursive: true });
  } finally {
    process.off('exit', sweep);
    await rm(scratch, { recursive: true, force: true });
  }
}

/** Variables that Vite and Astro take for their own settings: a test runner or a shell must not change what is built. */
const FOREIGN = ['BASE_URL', 'MODE', 'DEV', 'PROD', 'SSR', 'SITE', 'ASSETS_PREFIX', 'VITEST', 'NODE_OPTIONS'];

function workerEnvironment(): NodeJS.ProcessEnv {
  const own = Object.entries(process.env).filter(([name]) => !FOREIGN.includes(name));
  return { ...Object.fromEntries(own), ASTRO_TELEMETRY_DISABLED: '1', NODE_ENV: 'production', FORCE_COLOR: '0' };
}

function runWorker(job: string, signal: AbortSignal | undefined): Promise<void> {
  const worker = fileURLToPath(new URL('./build-worker.ts', import.meta.url));
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [worker], {
      cwd: PROJECT_ROOT,
      env: workerEnvironment(),
      stdio: ['pipe', 'ignore', 'pipe'],
      ...(signal === undefined ? {} : { signal }),
    });
    const stop = () => child.kill();
    process.once('exit', stop);
    let words = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      words += text;
    });
    child.on('error', reject);
    child.on('close', (code) => {
      process.off('exit', stop);
      if (code === 0) resolve();
      else reject(new Error(`the site could not be built\n${words.trim()}`));
    });
    // A worker that died early closes the pipe; `close` then says why.
    child.stdin.on('error', () => undefined);
    child.stdin.end(job);
  });
}
