/** The Vite plugin through which the shop, its control, the fonts, the checks and what was found reach the pages. */

import type { Plugin } from 'vite';
import { makeSiteFonts } from './fonts.ts';
import type { SiteState } from './site-state.ts';

const SHOP = 'virtual:shop';
const CONTROL = 'virtual:control';
const FONTS = 'virtual:site-fonts';
const DIAGNOSTICS = 'virtual:site-diagnostics';
const REPORT = 'virtual:build-report';
const CHECKS = 'virtual:checks';
const ALL = [SHOP, CONTROL, FONTS, DIAGNOSTICS, REPORT, CHECKS];

/** Vite's convention: an id that starts with a null byte belongs to the plugin that resolved it. */
function own(id: string): string {
  return `\0${id}`;
}

/** Ids to throw out of the module graphs when the shop was compiled again. */
export const CHANGING_MODULES: readonly string[] = [own(SHOP), own(CONTROL), own(DIAGNOSTICS), own(REPORT)];

/** `JSON.parse` of a string is what engines parse fastest, and no text of an author can end the literal. */
function jsonModule(value: unknown): string {
  const json = JSON.stringify(value ?? null);
  return `export default JSON.parse(${JSON.stringify(json)});`;
}

/** Serves the virtual modules from `state`, which a dev server may change between two loads. */
export function virtualModules(state: SiteState): Plugin {
  return {
    name: 'fettlebook:virtual-modules',
    resolveId(id) {
      return ALL.includes(id) ? own(id) : undefined;
    },
    async load(id) {
      if (id === own(SHOP)) return jsonModule(state.shop);
      if (id === own(CONTROL)) return jsonModule(state.control);
      if (id === own(DIAGNOSTICS)) return jsonModule({ text: state.diagnosticsText, errors: state.errors });
      if (id === own(REPORT)) return jsonModule(state.report);
      if (id === own(CHECKS)) return jsonModule(state.checks);
      if (id === own(FONTS)) return jsonModule(await makeSiteFonts());
      return undefined;
    },
  };
}
