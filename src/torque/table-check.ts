/** Does a torque table hold? Reckoned afresh from threads, grade and condition, and compared with its neighbours. */

import { bearingOf, strengthOf } from '../fasteners/index.ts';
import { formatQuantity, type Torque, valueIn } from '../units/index.ts';
import { positive } from './band.ts';
import { longFormTorque, shortFormPreload } from './formulas.ts';
import { lastFigureNm } from './printed.ts';
import { type TorqueTable, type TorqueTableRow, tableRow } from './table.ts';
import { unitPairAgrees } from './unit-pair.ts';

/** Exact by definition, NIST SP 811 App. B; written out, so that the inch column has a route of its own. */
const NEWTON_PER_LBF = 4.4482216152605;
const MM_PER_FT = 304.8;

/**
 * What is wrong with a table, one sentence each; nothing when it holds. Preload is the stated share; torque follows from
 * it and gives it back; the long form, worked out anew, lies in the band of the short form; lbf·ft follow from feet and
 * pounds; the printed columns agree with each other, lie within a figure of the computed torque and never above it;
 * torque and printed torque rise with the diameter within a series.
 */
export function checkTorqueTable(table: TorqueTable): readonly string[] {
  return [...table.rows.flatMap((row) => checkRow(table, row)), ...checkRise(table)];
}

function checkRow(table: TorqueTable, row: TorqueTableRow): readonly string[] {
  const at = `\`${row.thread.designation}\``;
  const strength = strengthOf(table.grade, row.thread);
  if (!strength.ok) return [strength.problem];
  const { thread } = row;
  const { nutFactor, friction } = table.condition;
  const fresh = tableRow(thread, table.grade, strength.value, table.condition, table.preloadShare);
  const bearing = bearingOf('stud', thread, table.grade);
  const mu = friction.nominal;
  const long = longFormTorque({ thread, frictionThread: mu, frictionBearing: mu, bearing }, row.preloadN);
  const feet = nutFactor.nominal * (thread.diameterMm / MM_PER_FT) * (row.preloadN / NEWTON_PER_LBF);
  const printed = [row.printedNm, row.printedLbfFt];
  const [nm = 0, other = 0] = printed.map((p) => valueIn(p, 'N·m'));
  const [halfNm = 0, halfOther = 0] = printed.map((p) => lastFigureNm(p) / 2);
  const checks: readonly (readonly [holds: boolean, fault: string])[] = [
    [
      near(row.preloadN, fresh.preloadN, 0.001),
      `preload is not ${table.preloadShare} of the ${table.preloadBasis} load`,
    ],
    [near(row.torqueNm, fresh.torqueNm, 0.001), 'torque does not follow from K, diameter and preload'],
    [
      near(shortFormPreload(nutFactor.nominal, thread.diameterMm, row.torqueNm), row.preloadN, 0.001),
      'torque does not give back the preload',
    ],
    [
      near(row.bandNm.low, fresh.bandNm.low, 0.001) && near(row.bandNm.high, fresh.bandNm.high, 0.001),
      'the band does not follow from K low and high',
    ],
    [long >= row.bandNm.low && long <= row.bandNm.high, 'the long form lies outside the band of the short form'],
    [near(row.longFormNm.nominal, long, 0.001), 'the long form does not follow from friction and bearing face'],
    [near(row.torqueLbfFt, feet, 0.001), 'lbf·ft and N·m are not the same torque'],
    [unitPairAgrees(nm, other, halfNm, halfOther), 'the two unit columns differ'],
    [printed.every((p) => close(p, row.torqueNm)), 'the printed torque is not the computed one'],
    [printed.every((p) => notAbove(p, row.torqueNm)), 'the printed torque is above the computed one'],
  ];
  return checks.flatMap(([holds, fault]) => (holds ? [] : [`${at}: ${fault}`]));
}

function near(a: number, b: number, share: number): boolean {
  return Math.abs(a - b) <= share * Math.abs(b);
}

/** Within one unit of its last figure. */
function close(printed: Torque, Nm: number): boolean {
  return Math.abs(valueIn(printed, 'N·m') - Nm) <= lastFigureNm(printed) * (1 + 1e-6);
}

function notAbove(printed: Torque, Nm: number): boolean {
  return valueIn(printed, 'N·m') <= Nm * (1 + 1e-9);
}

function checkRise(table: TorqueTable): readonly string[] {
  const faults: string[] = [];
  for (const rows of Map.groupBy(table.rows, (r) => r.thread.series).values()) {
    for (const [i, row] of rows.entries()) {
      const before = rows[i - 1];
      if (before === undefined || row.thread.diameterMm <= before.thread.diameterMm) continue;
      const rises = row.torqueNm > before.torqueNm && row.printedNm.value >= before.printedNm.value;
      if (!rises && !gradeDrops(table, before, row)) {
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

/**
 * What is wrong between tables: of two that share condition and share of preload, the one of the stronger grade must ask
 * for the greater torque in every thread that both have. Stronger: greater tensile strength and greater proof stress, or
 * yield where both rest on yield; tables that rest on different stresses are not compared.
 */
export function checkAcrossClasses(tables: readonly TorqueTable[]): readonly string[] {
  return tables.flatMap((weak) =>
    tables
      .filter((strong) => strong !== weak && comparable(weak, strong))
      .flatMap((strong) => weak.rows.flatMap((row) => acrossRow(row, weak, strong))),
  );
}

function comparable(a: TorqueTable, b: TorqueTable): boolean {
  positive('preload share', a.preloadShare);
  return (
    a.condition.id === b.condition.id &&
    a.preloadBasis === b.preloadBasis &&
    Math.abs(a.preloadShare / b.preloadShare - 1) < 1e-9
  );
}

function acrossRow(row: TorqueTableRow, weak: TorqueTable, strong: TorqueTable): readonly string[] {
  const { designation } = row.thread;
  const other = strong.rows.find((r) => r.thread.designation === designation);
  const [a, b] = [strengthOf(weak.grade, row.thread), strengthOf(strong.grade, row.thread)];
  if (other === undefined || !a.ok || !b.ok) return [];
  const [low, high] = [a.value.proofMPa ?? a.value.yieldMPa, b.value.proofMPa ?? b.value.yieldMPa];
  if (b.value.tensileMPa <= a.value.tensileMPa || high <= low) return [];
  if (other.torqueNm > row.torqueNm && other.printedNm.value >= row.printedNm.value) return [];
  return [
    `\`${designation}\`: ${formatQuantity(other.printedNm)} for \`${strong.grade.id}\` does not rise over` +
      ` ${formatQuantity(row.printedNm)} for \`${weak.grade.id}\``,
  ];
}
