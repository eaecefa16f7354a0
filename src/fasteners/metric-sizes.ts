/** Standard metric diameters and pitches, in mm. */

export interface MetricSize {
  readonly diameter: number;
  /** Absent where the standard gives fine pitches only. */
  readonly coarse?: number;
  readonly fine: readonly number[];
}

/**
 * ISO 261:1998 Table 2 (general plan), M1 to M100. memory, apart from the pairs that stand in the check values
 * (ISO 898-1 load tables, ISO 724 value lists, ASME PCC-1 Table H-1).
 * The flange-stud pitches of 3 mm at M82 and M95 are from ASME PCC-1 (memory).
 */
export const METRIC_SIZES: readonly MetricSize[] = [
  { diameter: 1, coarse: 0.25, fine: [0.2] },
  { diameter: 1.1, coarse: 0.25, fine: [0.2] },
  { diameter: 1.2, coarse: 0.25, fine: [0.2] },
  { diameter: 1.4, coarse: 0.3, fine: [0.2] },
  { diameter: 1.6, coarse: 0.35, fine: [0.2] },
  { diameter: 1.8, coarse: 0.35, fine: [0.2] },
  { diameter: 2, coarse: 0.4, fine: [0.25] },
  { diameter: 2.2, coarse: 0.45, fine: [0.25] },
  { diameter: 2.5, coarse: 0.45, fine: [0.35] },
  { diameter: 3, coarse: 0.5, fine: [0.35] },
  { diameter: 3.5, coarse: 0.6, fine: [0.35] },
  { diameter: 4, coarse: 0.7, fine: [0.5] },
  { diameter: 4.5, coarse: 0.75, fine: [0.5] },
  { diameter: 5, coarse: 0.8, fine: [0.5] },
  { diameter: 5.5, fine: [0.5] },
  { diameter: 6, coarse: 1, fine: [0.75] },
  { diameter: 7, coarse: 1, fine: [0.75] },
  { diameter: 8, coarse: 1.25, fine: [1, 0.75] },
  { diameter: 9, coarse: 1.25, fine: [1, 0.75] },
  { diameter: 10, coarse: 1.5, fine: [1.25, 1, 0.75] },
  { diameter: 11, coarse: 1.5, fine: [1, 0.75] },
  { diameter: 12, coarse: 1.75, fine: [1.5, 1.25, 1] },
  { diameter: 14, coarse: 2, fine: [1.5, 1.25, 1] },
  { diameter: 15, fine: [1.5, 1] },
  { diameter: 16, coarse: 2, fine: [1.5, 1] },
  { diameter: 17, fine: [1.5, 1] },
  { diameter: 18, coarse: 2.5, fine: [2, 1.5, 1] },
  { diameter: 20, coarse: 2.5, fine: [2, 1.5, 1] },
  { diameter: 22, coarse: 2.5, fine: [2, 1.5, 1] },
  { diameter: 24, coarse: 3, fine: [2, 1.5, 1] },
  { diameter: 25, fine: [2, 1.5, 1] },
  { diameter: 26, fine: [1.5] },
  { diameter: 27, coarse: 3, fine: [2, 1.5, 1] },
  { diameter: 28, fine: [2, 1.5, 1] },
  { diameter: 30, coarse: 3.5, fine: [3, 2, 1.5, 1] },
  { diameter: 32, fine: [2, 1.5] },
  { diameter: 33, coarse: 3.5, fine: [3, 2, 1.5] },
  { diameter: 35, fine: [1.5] },
  { diameter: 36, coarse: 4, fine: [3, 2, 1.5] },
  { diameter: 38, fine: [1.5] },
  { diameter: 39, coarse: 4, fine: [3, 2, 1.5] },
  { diameter: 40, fine: [3, 2, 1.5] },
  { diameter: 42, coarse: 4.5, fine: [4, 3, 2, 1.5] },
  { diameter: 45, coarse: 4.5, fine: [4, 3, 2, 1.5] },
  { diameter: 48, coarse: 5, fine: [4, 3, 2, 1.5] },
  { diameter: 50, fine: [3, 2, 1.5] },
  { diameter: 52, coarse: 5, fine: [4, 3, 2, 1.5] },
  { diameter: 55, fine: [4, 3, 2, 1.5] },
  { diameter: 56, coarse: 5.5, fine: [4, 3, 2, 1.5] },
  { diameter: 58, fine: [4, 3, 2, 1.5] },
  { diameter: 60, coarse: 5.5, fine: [4, 3, 2, 1.5] },
  { diameter: 62, fine: [4, 3, 2, 1.5] },
  { diameter: 64, coarse: 6, fine: [4, 3, 2, 1.5] },
  { diameter: 65, fine: [4, 3, 2, 1.5] },
  { diameter: 68, coarse: 6, fine: [4, 3, 2, 1.5] },
  { diameter: 70, fine: [6, 4, 3, 2, 1.5] },
  { diameter: 72, fine: [6, 4, 3, 2, 1.5] },
  { diameter: 75, fine: [4, 3, 2, 1.5] },
  { diameter: 76, fine: [6, 4, 3, 2, 1.5] },
  { diameter: 80, fine: [6, 4, 3, 2, 1.5] },
  { diameter: 82, fine: [3, 2] },
  { diameter: 85, fine: [6, 4, 3, 2] },
  { diameter: 90, fine: [6, 4, 3, 2] },
  { diameter: 95, fine: [6, 4, 3, 2] },
  { diameter: 100, fine: [6, 4, 3, 2] },
];
