/** The dev server: pages of the working content, made again at every change, with the faults in front while there are any. */

import { dev } from 'astro';
import type { ControlView } from '../control/types.ts';
import type { BuildReport } from '../pipeline/index.ts';
import type { ResolvedShop } from '../resolve/types.ts';
import { allCheckWords, scratchFolder } from './check-words.ts';
import { siteConfig } from './config.ts';
import { diagnosticsPage } from './diagnostics-page.ts';
import { emptyState, type SiteState } from './site-state.ts';
import { CHANGING_MODULES } from './virtual-modules.ts';

export interface CompileOutcome {
  /** What could be resolved; left out when nothing could, then the pages keep the last good shop. */
  readonly shop?: ResolvedShop;
  /** What is known of control on the day; left out, the pages keep what they had. */
  readonly control?: ControlView;
  readonly report: BuildReport;
  readonly diagnosticsText: string;
  readonly errors: number;
}

export interface DevSiteOptions {
  readonly port?: number;
  readonly compile: () => Promise<CompileOutcome>;
  /** Absolute folders whose files make the content. */
  readonly watchDirs: readonly string[];
  /** Told of every compilation, the first one included. */
  readonly onCompiled?: (outcome: CompileOutcome) => void;
}

export interface DevSite {
  /** `http://localhost:4321/` */
  readonly address: string;
  readonly stop: () => Promise<void>;
}

/** Saves of several files that follow each other within this time, in ms, are compiled once. */
const QUIET_MS = 80;

/** Editors write a file in steps, and all of them count as one change. */
function debounced(run: () => Promise<void>): () => void {
  let timer: NodeJS.Timeout | undefined;
  let running = Promise.resolve();
  return () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      // One after the other: a slow compilation must not overwrite a newer one.
      running = running.then(run);
    }, QUIET_MS);
  };
}

function take(state: SiteState, outcome: CompileOutcome): void {
  if (outcome.shop !== undefined) state.shop = outcome.shop;
  if (outcome.control !== undefined) state.control = outcome.control;
  state.report = outcome.report;
  state.diagnosticsText = outcome.diagnosticsText;
  state.errors = outcome.errors;
}

/** Starts the server; resolves when pages are served. Content faults are shown on the pages and never stop it. */
export async function devSite({ port, compile, watchDirs, onCompiled }: DevSiteOptions): Promise<DevSite> {
  process.env['ASTRO_TELEMETRY_DISABLED'] = '1';
  const state = emptyState(allCheckWords(await scratchFolder()));
  const first = await compile();
  take(state, first);
  onCompiled?.(first);
  const config = siteConfig({ state, base: '/' });
  const server = await dev({
    ...config,
    configFile: false,
    logLevel: 'warn',
    server: { host: 'localhost', ...(port === undefined ? {} : { port }) },
    integrations: [
      {
        name: 'fettlebook:content-watch',
        hooks: {
          'astro:server:setup': ({ server: vite }) => {
            vite.middlewares.use((_request, response, next) => {
              if (state.shop !== undefined) return next();
              response.setHeader('content-type', 'text/html; charset=utf-8');
              response.end(diagnosticsPage(state.diagnosticsText));
            });
            const again = debounced(async () => {
              const outcome = await compile();
              take(state, outcome);
              onCompiled?.(outcome);
              for (const environment of Object.values(vite.environments)) {
                for (const id of CHANGING_MODULES) {
                  const module = environment.moduleGraph.getModuleById(id);
                  if (module !== undefined) environment.moduleGraph.invalidateModule(module);
                }
              }
              vite.environments.client.hot.send({ type: 'full-reload', path: '*' });
            });
            vite.watcher.add([...watchDirs]);
            vite.watcher.on('all', (event, file) => {
              const isContent = watchDirs.some((dir) => file.startsWith(dir));
              if (isContent && (event === 'add' || event === 'change' || event === 'unlink')) again();
            });
          },
        },
      },
    ],
  });
  return { address: `http://localhost:${server.address.port}/`, stop: () => server.stop() };
}
