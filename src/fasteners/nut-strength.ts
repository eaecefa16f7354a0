/** The proof load of a nut in a given thread. */

import type { Parsed } from '../units/index.ts';
import { named } from './nearest.ts';
import type { NutGrade } from './nut-grade.ts';
import { NUT_ROWS, type NutRow } from './nut-strength-rows.ts';
import { holds, MPA_PER_KSI, rangeInWords, sizeOf } from './strength-row.ts';
import type { Thread } from './thread.ts';

export interface NutStrength {
  /** Stress under proof load on the stress area of the thread (that of the test mandrel), MPa. */
  readonly proofMPa: number;
  /** That stress times the stress area, N. The standards print it rounded. */
  readonly proofLoadN: number;
  readonly source: string;
}

/**
 * heavy: heavy hexagon; without it ASTM A194 is heavy (its own rule where an order is silent), every other nut is not.
 */
export interface NutForm {
  readonly heavy?: boolean;
}

/**
 * Strength of `nut` in the size of `thread`. Refuses a nut outside the sizes, pitches and forms of its standard, and an
 * inch nut on a metric thread or the reverse; the hint names what there is. Values hold for plain nuts: hot-dip
 * galvanised nuts tapped oversize carry less (ISO 10684, ASTM A563).
 */
export function nutStrengthOf(nut: NutGrade, thread: Thread, form: NutForm = {}): Parsed<NutStrength> {
  const ofNut = NUT_ROWS.filter((r) => r.nut === nut.id);
  const ofSystem = ofNut.filter((r) => r.system === thread.system);
  if (ofSystem.length === 0) return wrongSystem(nut, thread, ofNut.length > 0);
  const heavy = form.heavy ?? nut.standard === 'ASTM A194';
  const ofForm = ofSystem.filter((r) => r.heavy === undefined || r.heavy === heavy);
  const rows = ofForm.filter((r) => r.series === undefined || r.series === seriesOf(thread));
  const row = rows.find((r) => holds(r, sizeOf(thread)));
  if (row === undefined) return noRow(nut, thread, rows.length > 0 ? rows : ofForm, rows.length > 0);
  const proofMPa = row.proof * (row.system === 'metric' ? 1 : MPA_PER_KSI);
  return { ok: true, value: { proofMPa, proofLoadN: proofMPa * thread.stressAreaMm2, source: row.source } };
}

/** UNC and 8UN share the coarse column of the nut standards; UNF, 12UN and finer the fine one. */
function seriesOf(thread: Thread): 'coarse' | 'fine' {
  return ['coarse', 'UNC', '8UN'].includes(thread.series) ? 'coarse' : 'fine';
}

function noRow(nut: NutGrade, thread: Thread, rows: readonly NutRow[], listsSeries: boolean): Parsed<never> {
  const pitches = rows.every((r) => r.series === undefined)
    ? ''
    : ` with ${listsSeries ? seriesOf(thread) : 'coarse'} pitch`;
  return {
    ok: false,
    problem: `a nut \`${nut.id}\` is not made in \`${thread.designation}\``,
    hint: `${nut.standard} gives it for ${rangeInWords(rows, thread.system)}${pitches}; choose another nut or size`,
  };
}

function wrongSystem(nut: NutGrade, thread: Thread, isKnown: boolean): Parsed<never> {
  if (!isKnown) {
    return {
      ok: false,
      problem: `no strength is known for a nut \`${nut.id}\``,
      hint: 'read the nut with its standard',
    };
  }
  const metric = thread.system === 'metric';
  const suited = metric ? ['8', '10', 'A2-70', 'ASTM A194 2H'] : ['SAE 5', 'SAE 8', 'ASTM A194 2H', 'ASTM A563 DH'];
  return {
    ok: false,
    problem: `a nut \`${nut.id}\` is for ${metric ? 'inch' : 'metric'} threads and \`${thread.designation}\` is ${metric ? 'a metric' : 'an inch'} thread`,
    hint: `nuts for ${metric ? 'metric' : 'inch'} threads: ${named(suited)}`,
  };
}
