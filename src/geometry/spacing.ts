/** Smallest spacing of bolts that leaves room for a heavy hexagon nut and its wrench. */

export interface BoltSpacing {
  /** Row of the table: nominal inch size, `1-1/8`. */
  readonly boltIn: string;
  /** Between bolt centres. */
  readonly spacingIn: number;
  /** From bolt centre to the hub. */
  readonly radialIn: number;
  /** From bolt centre to the edge. */
  readonly edgeIn: number;
  readonly source: string;
}

const READ = 'TEMA Standards Table D-5, inch bolts, heavy hex nuts; read second-hand, edition not stated';
/** The second-hand text has an edge distance of 2.5 in. */
const MEMORY = 'TEMA Standards Table D-5, inch bolts, heavy hex nuts (edge distance memory)';

type Line = readonly [
  boltIn: string,
  boltDiameterIn: number,
  spacingIn: number,
  radialIn: number,
  edgeIn: number,
  source: string,
];

const TABLE: readonly Line[] = [
  ['1/2', 0.5, 1.25, 0.8125, 0.625, READ],
  ['5/8', 0.625, 1.5, 0.9375, 0.75, READ],
  ['3/4', 0.75, 1.75, 1.125, 0.8125, READ],
  ['7/8', 0.875, 2.0625, 1.25, 0.9375, READ],
  ['1', 1, 2.25, 1.375, 1.0625, READ],
  ['1-1/8', 1.125, 2.5, 1.5, 1.125, READ],
  ['1-1/4', 1.25, 2.8125, 1.75, 1.25, READ],
  ['1-3/8', 1.375, 3.0625, 1.875, 1.375, READ],
  ['1-1/2', 1.5, 3.25, 2, 1.5, READ],
  ['1-5/8', 1.625, 3.5, 2.125, 1.625, READ],
  ['1-3/4', 1.75, 3.75, 2.25, 1.75, READ],
  ['1-7/8', 1.875, 4, 2.375, 1.875, READ],
  ['2', 2, 4.25, 2.5, 2, READ],
  ['2-1/4', 2.25, 4.75, 2.75, 2.25, READ],
  ['2-1/2', 2.5, 5.25, 3.0625, 2.375, MEMORY],
  ['2-3/4', 2.75, 5.75, 3.375, 2.625, READ],
  ['3', 3, 6.25, 3.625, 2.875, READ],
  ['3-1/4', 3.25, 6.625, 3.75, 3, READ],
  ['3-1/2', 3.5, 7.125, 4.125, 3.25, READ],
  ['3-3/4', 3.75, 7.625, 4.4375, 3.5, READ],
  ['4', 4, 8.125, 4.625, 3.625, READ],
];

/** Diameters within this are one size, in: 5/8 written as 15.875 mm. */
const SAME_SIZE = 1e-6;

/**
 * Smallest spacing for a bolt diameter in inches, from the row of that size or of the next larger: a metric bolt takes the
 * next larger inch bolt. Undefined below 1/2 in, above 4 in and for a diameter that is no number: the table has no row.
 */
export function minimumSpacing(boltDiameterIn: number): BoltSpacing | undefined {
  const [smallest] = TABLE;
  if (smallest === undefined || !(boltDiameterIn >= smallest[1] - SAME_SIZE)) return undefined;
  const line = TABLE.find(([, diameter]) => diameter >= boltDiameterIn - SAME_SIZE);
  if (line === undefined) return undefined;
  const [boltIn, , spacingIn, radialIn, edgeIn, source] = line;
  return { boltIn, spacingIn, radialIn, edgeIn, source };
}
