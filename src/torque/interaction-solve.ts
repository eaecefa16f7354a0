/** Forces and gaps of a joint whose bolts can go loose, and the small dense algebra under it. */

/** Square and symmetric, rows of equal length. */
export type Matrix = readonly (readonly number[])[];

/** The number at `index`. Throws RangeError outside the list: a wrong index is a programmer's error, never a zero. */
export function at(list: readonly number[] | undefined, index: number): number {
  const value = list?.[index];
  if (value === undefined) throw new RangeError(`there is no number at ${index}`);
  return value;
}

/** Sum of products of two lists of one length. */
export function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += at(a, i) * at(b, i);
  return sum;
}

/**
 * A symmetric positive definite matrix C swept on some of its indices T, the others being R:
 * -inv(C_TT) stands in TT, inv(C_TT) C_TR in TR, and C_RR - C_RT inv(C_TT) C_TR in RR. Changing one index costs n²
 * operations, where a fresh solution would cost n³. Source: the sweep operator, Goodnight, The American Statistician 33,
 * 1979 (memory), in its symmetric form.
 */
export interface Swept {
  readonly rows: number[][];
  readonly in: boolean[];
}

/** The matrix with nothing swept; the matrix itself stays as it is. */
export function unswept(matrix: Matrix): Swept {
  return { rows: matrix.map((row) => [...row]), in: matrix.map(() => false) };
}

/** Takes index k in, or out again. Throws RangeError when the matrix is not positive definite: a joint without stiffness. */
export function sweep(swept: Swept, k: number): void {
  const pivotRow = [...(swept.rows[k] ?? [])];
  const pivot = at(pivotRow, k);
  const sign = swept.in[k] ? -1 : 1;
  if (!(sign * pivot > 0)) throw new RangeError('the compliance of the joint is not positive definite');
  for (const [i, row] of swept.rows.entries()) {
    const share = at(row, k) / pivot;
    for (let j = 0; j < pivotRow.length; j++) row[j] = at(row, j) - share * at(pivotRow, j);
    row[k] = sign * share;
    if (i === k) swept.rows[k] = pivotRow.map((value, j) => (j === k ? -1 / pivot : (sign * value) / pivot));
  }
  swept.in[k] = sign > 0;
}

/** Inverse of a symmetric positive definite matrix. Throws RangeError when it is not positive definite. */
export function inverse(matrix: Matrix): Matrix {
  const swept = unswept(matrix);
  for (const k of matrix.keys()) sweep(swept, k);
  return swept.rows.map((row) => row.map((value) => -value));
}

/** Forces and gaps in balance: at every bolt the force is at its floor or there is no gap. */
export interface Balanced {
  /** N, or the unit of the floors. */
  readonly force: readonly number[];
  /** How far the joint has come together at a bolt beyond its nut, in the unit of `advance`; never below zero. */
  readonly gap: readonly number[];
}

/** A floor counts as broken below this share of the largest force in play. */
const TOLERANCE = 1e-11;
/** Exchanges of the whole set that may fail to improve before single ones take over: the usual three of the method. */
const PATIENCE = 3;

/**
 * The forces with force >= floor, gap = compliance force - advance >= 0, and force at its floor wherever there is a gap:
 * the one minimum of a strictly convex energy, so there is exactly one answer. compliance: mm/N (or any scale), symmetric
 * positive definite; swept: the same, swept on the bolts thought to stand above their floor, and left swept on those that
 * do; where it starts changes the time taken, not the answer. advance: mm by bolt. floor: N by bolt, at least one above 0.
 * Method: block principal pivoting with single exchanges as the fallback that must end (Júdice and Pires, Computers and
 * Operations Research 21, 1994; memory).
 */
export function balanced(
  compliance: Matrix,
  swept: Swept,
  advance: readonly number[],
  floor: readonly number[],
): Balanced {
  const scale = Math.max(...floor, ...advance.map((u, i) => Math.abs(u) / at(compliance[i], i)));
  let fewest = advance.length + 1;
  let patience = PATIENCE;
  for (;;) {
    const { force, gap } = withFree(swept, advance, floor);
    const wrong = force.flatMap((value, i) => {
      const short = swept.in[i] ? value - at(floor, i) : at(gap, i) / at(compliance[i], i);
      return short < -TOLERANCE * scale ? [i] : [];
    });
    const last = wrong.at(-1);
    if (last === undefined) {
      // What is left below a floor is rounding.
      return { force: force.map((f, i) => Math.max(f, at(floor, i))), gap: gap.map((g) => Math.max(g, 0)) };
    }
    patience = wrong.length < fewest ? PATIENCE : patience - 1;
    fewest = Math.min(fewest, wrong.length);
    for (const i of patience >= 0 ? wrong : [last]) sweep(swept, i);
  }
}

/** Balance when it is settled which bolts stand above their floor: those have no gap, the others their floor. */
function withFree(swept: Swept, advance: readonly number[], floor: readonly number[]): Balanced {
  const known = swept.in.map((free, i) => (free ? at(advance, i) : at(floor, i)));
  const product = swept.rows.map((row) => dot(row, known));
  return {
    force: product.map((value, i) => (swept.in[i] ? -value : at(floor, i))),
    gap: product.map((value, i) => (swept.in[i] ? 0 : value - at(advance, i))),
  };
}
