/** The process in which Astro builds the site: reads a job as JSON from its input, see build-site.ts. */

import { text } from 'node:stream/consumers';
import { build } from 'astro';
import type { ControlView } from '../control/types.ts';
import type { BuildReport, CheckWords } from '../pipeline/index.ts';
import type { ResolvedShop } from '../resolve/types.ts';
import { siteConfig } from './config.ts';

interface Job {
  readonly shop: ResolvedShop;
  /** Left out for a shop compiled without control. */
  readonly control?: ControlView;
  readonly report: BuildReport;
  readonly checks: readonly CheckWords[];
  readonly outDir: string;
  readonly cacheDir: string;
}

const { shop, control, report, checks, outDir, cacheDir } = JSON.parse(await text(process.stdin)) as Job;
const state = { shop, control, report, checks, diagnosticsText: '', errors: 0 };
try {
  await build({
    ...siteConfig({ state, base: shop.info.basePath, outDir, cacheDir }),
    configFile: false,
    logLevel: 'error',
  });
} catch (problem) {
  process.stderr.write(`${problem instanceof Error ? (problem.stack ?? problem.message) : String(problem)}\n`);
  process.exitCode = 1;
}
