/** The one Astro configuration: of the build, of the dev server and of tools that read `astro.config.mjs`. */

import type { AstroInlineConfig } from 'astro';
import { PROJECT_ROOT } from './project-root.ts';
import type { SiteState } from './site-state.ts';
import { virtualModules } from './virtual-modules.ts';

export interface SiteConfigOptions {
  readonly state: SiteState;
  /** Path under which the site is served, beginning and ending in `/`; only the page for lost addresses depends on it. */
  readonly base: string;
  readonly outDir?: string;
  readonly cacheDir?: string;
}

/** Astro's settings for a shop. */
export function siteConfig({ state, base, outDir, cacheDir }: SiteConfigOptions): AstroInlineConfig {
  return {
    root: PROJECT_ROOT,
    srcDir: './src/site',
    publicDir: './public',
    base,
    output: 'static',
    trailingSlash: 'always',
    // The default drops white space between a number and its unit.
    compressHTML: true,
    devToolbar: { enabled: false },
    build: { format: 'directory', inlineStylesheets: 'never' },
    ...(outDir === undefined ? {} : { outDir }),
    ...(cacheDir === undefined ? {} : { cacheDir }),
    vite: {
      plugins: [virtualModules(state)],
      define: { __SITE_BASE__: JSON.stringify(base) },
      ...(cacheDir === undefined ? {} : { cacheDir: `${cacheDir}/vite` }),
      // Pages are rendered from another folder than the project's, from where packages could not be found.
      ssr: { noExternal: ['minisearch'] },
      build: {
        assetsInlineLimit: 0,
        modulePreload: false,
        // Fonts are pages of the site and not assets of the style sheet.
        rolldownOptions: { external: [/\/fonts\/[\w-]+\.woff2$/u] },
      },
    },
  };
}
