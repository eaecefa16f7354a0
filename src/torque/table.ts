/** A torque table for a wall poster: one grade, one condition, one share of preload, a row for each thread. */

import { bearingOf, type Grade, type Strength, strengthOf, type Thread } from '../fasteners/index.ts';
import { quantity, type Torque, valueIn } from '../units/index.ts';
import { type Band, mapBand, positive } from './band.ts';
import type { JointCondition } from './conditions.ts';
import { longFormTorque, shortFormPreload, shortFormTorque } from './formulas.ts';
import { unitPairAgrees } from './stated.ts';

export interface TorqueTableRow {
  readonly thread: Thread;
  readonly preloadN: number;
  /** Short form at nominal K, full precision. */
  readonly torqueNm: number;
  readonly torqueLbfFt: number;
  /** The same to print: two to three figures. */
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

function tableRow(
  thread: Thread,
  grade: Grade,
  strength: Strength,
  condition: JointCondition,
  share: number,
): TorqueTableRow {
  const bearing = bearingOf('stud', thread, grade);
  const preloadN = share * (strength.proofMPa ?? strength.yieldMPa) * thread.stressAreaMm2;
  const torqueNm = shortFormTorque(condition.nutFactor.nominal, thread.diameterMm, preloadN);
  const torqueLbfFt = valueIn(quantity('torque', torqueNm, 'N·m'), 'lbf·ft');
  return {
    thread,
    preloadN,
    torqueNm,
    torqueLbfFt,
    printedNm: toPrint(torqueNm, 'N·m'),
    printedLbfFt: toPrint(torqueLbfFt, 'lbf·ft'),
    longFormNm: mapBand(condition.friction, (mu) =>
      longFormTorque({ thread, frictionThread: mu, frictionBearing: mu, bearing }, preloadN),
    ),
  };
}

/** Hundredths below 1, tenths below 10, whole numbers below 1000, tens above. */
function toPrint(value: number, unit: string): Torque {
  const decimals = value < 1 ? 2 : value < 10 ? 1 : 0;
  const rounded = value < 1000 ? Number(value.toFixed(decimals)) : Math.round(value / 10) * 10;
  return quantity('torque', rounded, unit, decimals);
}

function slug(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}

/**
 * What is wrong with a table, one sentence each; nothing when it holds. Checked afresh from threads, grade and condition:
 * preload is the stated share; short and long form agree; torque and preload rise with diameter within a series; the
 * printed columns agree with each other and with the computed torque.
 */
export function checkTorqueTable(table: TorqueTable): readonly string[] {
  return [...table.rows.flatMap((row) => checkRow(table, row)), ...checkRise(table)];
}

function checkRow(table: TorqueTable, row: TorqueTableRow): readonly string[] {
  const at = `\`${row.thread.designation}\``;
  const strength = strengthOf(table.grade, row.thread);
  if (!strength.ok) return [strength.problem];
  const { nutFactor } = table.condition;
  const fresh = tableRow(row.thread, table.grade, strength.value, table.condition, table.preloadShare);
  const faults: string[] = [];
  if (!near(row.preloadN, fresh.preloadN, 0.001))
    faults.push(`${at}: preload is not ${table.preloadShare} of the ${table.preloadBasis} load`);
  if (!near(row.torqueNm, fresh.torqueNm, 0.001))
    faults.push(`${at}: torque does not follow from K, diameter and preload`);
  const back = shortFormPreload(nutFactor.nominal, row.thread.diameterMm, row.torqueNm);
  if (!near(back, row.preloadN, 0.001)) faults.push(`${at}: torque does not give back the preload`);
  const low = shortFormTorque(nutFactor.low, row.thread.diameterMm, row.preloadN);
  const high = shortFormTorque(nutFactor.high, row.thread.diameterMm, row.preloadN);
  const long = fresh.longFormNm.nominal;
  if (!(long >= low && long <= high)) faults.push(`${at}: the long form lies outside the band of the short form`);
  const nm = valueIn(row.printedNm, 'N·m');
  const other = valueIn(row.printedLbfFt, 'N·m');
  if (!unitPairAgrees(nm, other, halfDigit(row.printedNm), halfDigit(row.printedLbfFt))) {
    faults.push(`${at}: the two unit columns differ`);
  }
  if (!unitPairAgrees(nm, row.torqueNm, halfDigit(row.printedNm), 0))
    faults.push(`${at}: the printed torque is not the computed one`);
  const lbfFt = valueIn(quantity('torque', row.torqueLbfFt, 'lbf·ft'), 'N·m');
  if (!near(lbfFt, row.torqueNm, 1e-6)) faults.push(`${at}: lbf·ft and N·m are not the same torque`);
  return faults;
}

function checkRise(table: TorqueTable): readonly string[] {
  const faults: string[] = [];
  for (const series of new Set(table.rows.map((r) => r.thread.series))) {
    const rows = table.rows.filter((r) => r.thread.series === series);
    for (let i = 1; i < rows.length; i++) {
      const [before, row] = [rows[i - 1], rows[i]];
      if (before === undefined || row === undefined || row.thread.diameterMm <= before.thread.diameterMm) continue;
      if (row.torqueNm <= before.torqueNm && !gradeDrops(table, before, row)) {
        faults.push(`\`${row.thread.designation}\`: torque does not rise over \`${before.thread.designation}\``);
      }
    }
  }
  return faults;
}

/** Some grades lose strength above a size (SAE 2 above 3/4 in): there the torque may fall, and rightly. */
function gradeDrops(table: TorqueTable, before: TorqueTableRow, row: TorqueTableRow): boolean {
  const [a, b] = [strengthOf(table.grade, before.thread), strengthOf(table.grade, row.thread)];
  return a.ok && b.ok && b.value.tensileMPa < a.value.tensileMPa;
}

function near(a: number, b: number, share: number): boolean {
  return Math.abs(a - b) <= share * Math.abs(b);
}

/** Half a unit of the last printed digit, in N·m; tens are printed above 1000. */
function halfDigit(torque: Torque): number {
  const digit = torque.value >= 1000 && torque.decimals === 0 ? 10 : 10 ** -torque.decimals;
  return valueIn(quantity('torque', digit / 2, torque.unit), 'N·m');
}
