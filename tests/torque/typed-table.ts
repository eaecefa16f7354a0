/** Tables as a shop would type them from a manual, right and with slips. */

import { parseGrade, strengthOf, threadsOf } from '../../src/fasteners/index.ts';
import {
  compareStatedTable,
  findCondition,
  type JointCondition,
  type StatedCell,
  type StatedTableComparison,
  shortFormTorque,
} from '../../src/torque/index.ts';
import { quantity, valueIn } from '../../src/units/index.ts';

const SHARE = 0.75;
export const OILED = findCondition('oiled');

/** A maker's table by the maker's own friction, rounded to `figures`. */
export function typed(series: string, grades: readonly string[], K: number, unit = 'N·m', figures = 3): StatedCell[] {
  return threadsOf(series)
    .filter((t) => t.diameterMm >= 8 && t.diameterMm <= 30)
    .flatMap((thread) =>
      grades.flatMap((name) => {
        const grade = parseGrade(name);
        const strength = grade.ok ? strengthOf(grade.value, thread) : grade;
        if (!grade.ok || !strength.ok) return [];
        const F = SHARE * (strength.value.proofMPa ?? strength.value.yieldMPa) * thread.stressAreaMm2;
        const Nm = quantity('torque', shortFormTorque(K, thread.diameterMm, F), 'N·m');
        const stated = quantity('torque', Number(valueIn(Nm, unit).toPrecision(figures)), unit);
        return [{ thread, grade: grade.value, strength: strength.value, stated }];
      }),
    );
}

export function compare(
  cells: readonly StatedCell[],
  condition: JointCondition | undefined = OILED,
  preloadShare = SHARE,
): StatedTableComparison {
  if (condition === undefined) throw new RangeError('no condition');
  return compareStatedTable({ condition, preloadShare, cells });
}

export const METRIC = typed('coarse', ['8.8', '10.9', '12.9'], 0.15);

/** The table with other numbers in some of its cells. */
export const mistyped = (slips: ReadonlyMap<number, number>): StatedTableComparison =>
  compare(
    METRIC.map((c, i) => {
      const value = slips.get(i);
      return value === undefined ? c : { ...c, stated: quantity('torque', value, 'N·m', c.stated.decimals) };
    }),
  );

export const cellAt = (designation: string, grade: string): number =>
  METRIC.findIndex((c) => c.thread.designation === designation && c.grade.id === grade);

export const faulty = (r: StatedTableComparison): readonly number[] =>
  r.cells.flatMap((c, i) => (c.verdict === 'holds' ? [] : [i]));
