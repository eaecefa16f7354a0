/** What the pages are made from: handed to them through virtual modules, so that they never read a file themselves. */

import type { ControlView } from '../control/types.ts';
import type { BuildReport, CheckWords } from '../pipeline/index.ts';
import type { ResolvedShop } from '../resolve/types.ts';

export interface SiteState {
  /** The last shop that compiled; undefined only while a dev server has not met a good one yet. */
  shop: ResolvedShop | undefined;
  /** Everything about control on the day of the build; undefined for a shop compiled without it. */
  control: ControlView | undefined;
  /** What the build reports, for its page. */
  report: BuildReport;
  /** Every check in words, each with its example run. */
  readonly checks: readonly CheckWords[];
  /** Shown on every page of the dev server while `errors` is above 0. */
  diagnosticsText: string;
  errors: number;
}

export const NO_REPORT: BuildReport = { checks: 0, procedures: [], others: [], warnings: [], accepted: [] };

/** A site of nothing: what tools that only read the configuration work with. */
export function emptyState(checks: readonly CheckWords[] = []): SiteState {
  return { shop: undefined, control: undefined, report: NO_REPORT, checks, diagnosticsText: '', errors: 0 };
}
