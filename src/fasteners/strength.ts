/** The smallest strengths of a grade in a given thread: the same grade changes with size. */

import type { Parsed } from '../units/index.ts';
import type { Grade } from './grade.ts';
import { named } from './nearest.ts';
import { INCH_STRENGTH } from './strength-inch.ts';
import { METRIC_STRENGTH } from './strength-metric.ts';
import { holds, MPA_PER_KSI, rangeInWords, type StrengthRow, sizeOf } from './strength-row.ts';
import type { Thread } from './thread.ts';

/** All in MPa. `proofMPa` is absent where the standard has none (stainless, ASTM A193, A320, F593): yield is not proof. */
export interface Strength {
  readonly proofMPa?: number;
  readonly yieldMPa: number;
  /** What the yield figure is: `ReL`, `Rpf`, `Rp0.2`, `0.2 % offset`. */
  readonly yieldKind: string;
  readonly tensileMPa: number;
  readonly source: string;
  /** A warning that the standard itself gives with the grade. */
  readonly caution?: string;
}

const ROWS: readonly StrengthRow[] = [...METRIC_STRENGTH, ...INCH_STRENGTH];

/**
 * Strength of `grade` in the size of `thread`. Refuses a grade outside the sizes of its standard, and an inch grade on
 * a metric thread or the reverse; the hint names the range or the near grades of the other system.
 */
export function strengthOf(grade: Grade, thread: Thread): Parsed<Strength> {
  const ofGrade = ROWS.filter((r) => r.grade === grade.id);
  const rows = ofGrade.filter((r) => r.system === thread.system);
  if (rows.length === 0) return wrongSystem(grade, thread, ofGrade);
  const row = rows.find((r) => holds(r, sizeOf(thread)));
  if (row === undefined) {
    return {
      ok: false,
      problem: `\`${grade.id}\` is not made in \`${thread.designation}\``,
      hint: `${grade.standard} gives it for ${rangeInWords(rows, thread.system)}; choose another grade or size`,
    };
  }
  return { ok: true, value: inMPa(row) };
}

function inMPa(row: StrengthRow): Strength {
  const factor = row.system === 'metric' ? 1 : MPA_PER_KSI;
  const base = {
    yieldMPa: row.yield * factor,
    yieldKind: row.yieldKind,
    tensileMPa: row.tensile * factor,
    source: row.source,
  };
  const caution = CAUTIONS[row.grade];
  return {
    ...base,
    ...(row.proof === undefined ? {} : { proofMPa: row.proof * factor }),
    ...(caution === undefined ? {} : { caution }),
  };
}

/** ISO 898-1:2013 Table 2, footnote to 12.9 (memory, in our words). */
const CAUTIONS: Readonly<Record<string, string>> = {
  '12.9':
    'ISO 898-1 asks for caution with class 12.9: wet or corrosive surroundings can crack it under stress, plated or not',
};

/** Grades of like strength in the other system, for the hint only: not equivalents. */
const NEAR: Readonly<Record<string, readonly string[]>> = {
  metric: ['8.8', '10.9', '12.9', 'A2-70', 'ASTM A193 B7'],
  unified: ['SAE 2', 'SAE 5', 'SAE 8', 'ASTM A574', 'ASTM A193 B7'],
};

function wrongSystem(grade: Grade, thread: Thread, ofGrade: readonly StrengthRow[]): Parsed<never> {
  if (ofGrade.length === 0) {
    return { ok: false, problem: `no strength is known for \`${grade.id}\``, hint: 'read the grade with its standard' };
  }
  const [own, other] = thread.system === 'metric' ? ['metric', 'inch'] : ['inch', 'metric'];
  return {
    ok: false,
    problem: `\`${grade.id}\` is for ${other} threads and \`${thread.designation}\` is ${own === 'inch' ? 'an inch' : 'a metric'} thread`,
    hint: `grades for ${own} threads: ${named(NEAR[thread.system] ?? [])}`,
  };
}
