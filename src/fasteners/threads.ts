/** Every standard thread, made once from the size tables. */

import { METRIC_SIZES } from './metric-sizes.ts';
import { metricThread, type Thread, unifiedThread } from './thread.ts';
import { UNIFIED_SIZES } from './unified-sizes.ts';

/** Metric threads by rising diameter, the coarse pitch first, then fine pitches from the largest. */
export const METRIC_THREADS: readonly Thread[] = METRIC_SIZES.flatMap(({ diameter, coarse, fine }) => [
  ...(coarse === undefined ? [] : [metricThread(diameter, coarse, 'coarse')]),
  ...fine.map((pitch) => metricThread(diameter, pitch, 'fine')),
]);

/** Unified threads by rising diameter, series in the order UNC, UNF, UNEF, UNS, 8UN. */
export const UNIFIED_THREADS: readonly Thread[] = UNIFIED_SIZES.flatMap(({ size, diameterIn, tpi }) =>
  Object.entries(tpi).map(([series, n]) => unifiedThread(size, diameterIn, n, series)),
);

/** All standard threads of one series (`coarse`, `fine`, `UNC`, `UNF`, `UNEF`, `UNS`, `8UN`), by rising diameter. */
export function threadsOf(series: string): readonly Thread[] {
  return [...METRIC_THREADS, ...UNIFIED_THREADS].filter((t) => t.series === series);
}
