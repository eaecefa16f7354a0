/** A standard flange, as far as its bolting goes. */

/** Another count that the standard allows, or that older flanges of the same designation have. */
export interface FlangeAlternative {
  readonly count: number;
  readonly firstDeg: number;
  readonly when: string;
}

/** Lengths in mm; angles in degrees clockwise from the top. */
export interface Flange {
  /** Printed form: `EN 1092-1 DN 100 PN 16`, `ASME B16.5 NPS 4 class 150`. */
  readonly designation: string;
  readonly standard: 'EN 1092-1' | 'ASME B16.5';
  /** Exact: for ASME B16.5 the circle in inches, converted. */
  readonly boltCircleMm: number;
  /** ASME B16.5: the circle in inches, two decimals as printed. */
  readonly boltCircleIn?: number;
  /** ASME B16.5: the circle as the metric tables print it. */
  readonly boltCircleMmPrinted?: number;
  readonly count: number;
  /** Designation of the thread: `M16`, `5/8-11 UNC`, `1 1/8-8 8UN`. */
  readonly thread: string;
  readonly boltHoleMm: number;
  /** First hole, half a pitch from the top: holes straddle the centre lines. */
  readonly firstDeg: number;
  readonly outsideMm?: number;
  readonly note?: string;
  readonly alternatives?: readonly FlangeAlternative[];
  readonly source: string;
}

/** Angle of the first hole of `count` that straddle the vertical centre line, degrees. */
export function straddling(count: number): number {
  return 180 / count;
}
