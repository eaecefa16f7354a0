/** One row of a strength table: a grade, the sizes for which it holds, and its smallest strengths. */

/** Psi is exact from pound and inch (NIST SP 811): 1 ksi = 6.894757 MPa. */
export const MPA_PER_KSI = 6.894757293168361;

export interface StrengthRow {
  readonly grade: string;
  readonly system: 'metric' | 'unified';
  /** Diameter, mm or in by `system`: `from` inclusive, `over` exclusive, `to` inclusive; absent means no limit. */
  readonly from?: number;
  readonly over?: number;
  readonly to?: number;
  /** MPa or ksi by `system`. */
  readonly proof?: number;
  readonly yield: number;
  readonly tensile: number;
  readonly yieldKind: string;
  readonly source: string;
}

export type Sizes = Pick<StrengthRow, 'from' | 'over' | 'to'>;
