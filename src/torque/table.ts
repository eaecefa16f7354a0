/** A torque table for a wall poster: one grade, one condition, one share of preload, a row for each thread. */

import { bearingOf, type Grade, type Strength, strengthOf, type Thread } from '../fasteners/index.ts';
import { quantity, type Torque, valueIn } from '../units/index.ts';
import { type Band, mapBand, positive } from './band.ts';
import type { JointCondition } from './conditions.ts';
import { longFormTorque, shortFormTorque } from './formulas.ts';
import { toPrint } from './printed.ts';

export interface TorqueTableRow {
  readonly thread: Thread;
  readonly preloadN: number;
  /** Short form at nominal K, full precision. */
  readonly torqueNm: number;
  readonly torqueLbfFt: number;
  /** Short form at low, nominal and high K, N·m. */
  readonly bandNm: Band;
  /** The torque to print: three figures, the rest cut off, so that none prints more than is computed. */
  readonly printedNm: Torque;
  readonly printedLbfFt: Torque;
  /** Long form at low, nominal and high friction, N·m. */
  readonly longFormNm: Band;
}

export interface TorqueTable {
  /** Kebab-case, unique by its makings: `sae-5-unc-oiled-75`. */
  readonly id: string;
  readonly title: string;
  readonly series: string;
  readonly grade: Grade;
  readonly condition: JointCondition;
  readonly preloadShare: number;
  readonly preloadBasis: 'proof' | 'yield';
  readonly rows: readonly TorqueTableRow[];
  /** Threads for which the standard has no such grade, with the reason. */
  readonly omitted: readonly { readonly designation: string; readonly reason: string }[];
}

/**
 * Rows in the order of `threads`; a thread that the grade's standard does not cover goes to `omitted`.
 * share: of proof load, or of yield load when the grade has no proof stress. Bearing faces: hexagon head, for ASTM A193
 * and A320 the heavy nut. Throws RangeError on a share that is not above zero.
 */
export function torqueTable(
  threads: readonly Thread[],
  grade: Grade,
  condition: JointCondition,
  share: number,
): TorqueTable {
  positive('preload share', share);
  const rows: TorqueTableRow[] = [];
  const omitted: { designation: string; reason: string }[] = [];
  let basis: TorqueTable['preloadBasis'] = 'proof';
  for (const thread of threads) {
    const strength = strengthOf(grade, thread);
    if (!strength.ok) {
      omitted.push({ designation: thread.designation, reason: strength.problem });
      continue;
    }
    if (strength.value.proofMPa === undefined) basis = 'yield';
    rows.push(tableRow(thread, grade, strength.value, condition, share));
  }
  const series = [...new Set(threads.map((t) => t.series))].join(' and ');
  const percent = Number((share * 100).toFixed(1));
  return {
    id: slug(`${grade.id} ${series} ${condition.id} ${percent}`),
    title: `${grade.id}, ${series}, ${condition.name}, ${percent} % of ${basis} load`,
    series,
    grade,
    condition,
    preloadShare: share,
    preloadBasis: basis,
    rows,
    omitted,
  };
}

/** One row of a table, from the thread's own figures alone. */
export function tableRow(
  thread: Thread,
  grade: Grade,
  strength: Strength,
  condition: JointCondition,
  share: number,
): TorqueTableRow {
  const bearing = bearingOf('stud', thread, grade);
  const preloadN = share * (strength.proofMPa ?? strength.yieldMPa) * thread.stressAreaMm2;
  const bandNm = mapBand(condition.nutFactor, (K) => shortFormTorque(K, thread.diameterMm, preloadN));
  const torqueNm = bandNm.nominal;
  const torqueLbfFt = valueIn(quantity('torque', torqueNm, 'N·m'), 'lbf·ft');
  return {
    thread,
    preloadN,
    torqueNm,
    torqueLbfFt,
    bandNm,
    printedNm: toPrint(torqueNm, 'N·m', 'down'),
    printedLbfFt: toPrint(torqueLbfFt, 'lbf·ft', 'down'),
    longFormNm: mapBand(condition.friction, (mu) =>
      longFormTorque({ thread, frictionThread: mu, frictionBearing: mu, bearing }, preloadN),
    ),
  };
}

function slug(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
