/** What the pages are made from: handed to them through virtual modules, so that they never read a file themselves. */

import type { ResolvedShop } from '../resolve/types.ts';

export interface SiteState {
  /** The last shop that compiled; undefined only while a dev server has not met a good one yet. */
  shop: ResolvedShop | undefined;
  /** Shown on every page of the dev server while `errors` is above 0. */
  diagnosticsText: string;
  errors: number;
}

/** A site of nothing: what tools that only read the configuration work with. */
export function emptyState(): SiteState {
  return { shop: undefined, diagnosticsText: '', errors: 0 };
}
