/** One row of a strength table: a grade, the sizes for which it holds, and its smallest strengths. */

import { MM_PER_INCH, type Thread } from './thread.ts';

/** Psi is exact from pound and inch (NIST SP 811): 1 ksi = 6.894757 MPa. */
export const MPA_PER_KSI = 6.894757293168361;

/** Diameter, mm or in by system: `from` inclusive, `over` exclusive, `to` inclusive; absent means no limit. */
export interface Sizes {
  readonly from?: number;
  readonly over?: number;
  readonly to?: number;
}

export interface StrengthRow extends Sizes {
  readonly grade: string;
  readonly system: Thread['system'];
  /** MPa or ksi by `system`. */
  readonly proof?: number;
  readonly yield: number;
  readonly tensile: number;
  readonly yieldKind: string;
  readonly source: string;
}

/** Diameter in the unit of the tables: mm for metric threads, inches for unified ones. */
export function sizeOf(thread: Thread): number {
  return thread.system === 'metric' ? thread.diameterMm : thread.diameterMm / MM_PER_INCH;
}

/** Whether a row of these limits holds for a diameter, mm or in. */
export function holds(limits: Sizes, size: number): boolean {
  const slack = 1e-6;
  if (limits.from !== undefined && size < limits.from - slack) return false;
  if (limits.over !== undefined && size <= limits.over + slack) return false;
  return limits.to === undefined || size <= limits.to + slack;
}

/** `1/4`, `2 1/2`, `4`: inches as the trade writes them, to the sixteenth in which all limits of the tables lie. */
function fraction(inch: number): string {
  const whole = Math.floor(inch);
  let [top, bottom] = [Math.round((inch - whole) * 16), 16];
  if (top === 0) return String(whole);
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${whole === 0 ? '' : `${whole} `}${top}/${bottom}`;
}

/** `sizes from M1.6 to M39`, `sizes to 2 1/2 in`, `all sizes`: what the rows hold for together. */
export function rangeInWords(rows: readonly Sizes[], system: Thread['system']): string {
  const ends = (n: number) => (system === 'metric' ? `M${n}` : `${fraction(n)} in`);
  const low = Math.min(...rows.map((r) => r.from ?? r.over ?? 0));
  const high = Math.max(...rows.map((r) => r.to ?? Number.POSITIVE_INFINITY));
  if (!Number.isFinite(high)) return low === 0 ? 'all sizes' : `${ends(low)} and up`;
  return low === 0 ? `sizes to ${ends(high)}` : `sizes from ${ends(low)} to ${ends(high)}`;
}
