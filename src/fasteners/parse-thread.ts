/** Reads a thread designation as people write it and refuses every pair that no standard lists. */

import type { Parsed } from '../units/index.ts';
import { foldSigns } from './fold.ts';
import { named, nearestNumbers } from './nearest.ts';
import { MM_PER_INCH, type Thread } from './thread.ts';
import { METRIC_THREADS, UNIFIED_THREADS } from './threads.ts';

const METRIC =
  /^MF?\s*(\d+(?:\.\d+)?)(?:\s*[X-]\s*(\d+(?:\.\d+)?)(?![\dGH.]))?(?:\s*-?\s*\d[GH](?:\d[GH])?(?:\/\d[GH](?:\d[GH])?)?)?$/;
const INCH_SIZE = String.raw`(#\s*\d{1,2}|\d+[\s-]+\d+\/\d+|\d+\/\d+|\d*\.\d+|\d+)\s*(?:"|IN(?:CH)?\b\.?)?`;
const TPI = String.raw`(\d+[\s-]+1\/2|\d+(?:\.\d+)?)`;
const SERIES = String.raw`(8\s?-?UN|UNEF|UNC|UNF|UNS|UN)`;
const UNIFIED = new RegExp(
  `^${INCH_SIZE}(?:\\s*-\\s*${TPI}(?:[\\s-]*${SERIES})?|\\s*${SERIES})(?:\\s*-?\\s*[123][AB])?$`,
);

/**
 * Reads `M16`, `M16x1.5`, `M16 × 1,5`, `5/8-11 UNC`, `1/4-20`, `#10-32`, `1-1/8-8 UN`, `5/8 UNC`; a tolerance class
 * (`6g`, `2A`) is accepted and dropped. A diameter and pitch that no standard pairs is refused with the standard ones,
 * the nearest pitch first.
 * Sources: ISO 261 and ASME B1.1 (see the size tables).
 */
export function parseThread(text: string): Parsed<Thread> {
  const folded = fold(text);
  if (/(?:^|[\s-])LH$|LEFT/.test(folded)) {
    return refuse(
      `\`${text}\` is a left-hand thread, which the designation cannot carry`,
      'leave out the mark here and say left-hand in the note',
    );
  }
  if (folded.startsWith('M')) return readMetric(text, folded);
  return readUnified(text, folded);
}

/** One spelling for × and x, comma and point, dashes, vulgar fractions, `No.` and `#`; capitals; single spaces. */
function fold(text: string): string {
  return foldSigns(text)
    .replace(/[×*]/gu, 'X')
    .replace(/(\d),(\d)/gu, '$1.$2')
    .toUpperCase()
    .replace(/^\s*(?:NO\.?|NR\.?)\s*(?=\d)/u, '#')
    .replace(/UNR(?=[CFS]|EF|\b)/u, 'UN')
    .replace(/^\s*(8\s?UN|UNEF|UNC|UNF|UNS)\s+(.*\S)\s*$/u, '$2 $1')
    .replace(/\s+/gu, ' ')
    .trim();
}

function readMetric(text: string, folded: string): Parsed<Thread> {
  const match = METRIC.exec(folded);
  if (match === null) return refuse(`\`${text}\` is not a metric thread`, 'write it like `M16` or `M16x1.5`');
  const diameter = Number(match[1]);
  const sameSize = METRIC_THREADS.filter((t) => t.diameterMm === diameter);
  if (sameSize.length === 0) {
    const sizes = [...new Set(METRIC_THREADS.map((t) => t.diameterMm))];
    const near = nearestNumbers(diameter, sizes).map((d) => `M${d}`);
    return refuse(`\`${text}\` has no standard diameter`, `nearest standard sizes: ${named(near)}`);
  }
  const found =
    match[2] === undefined
      ? sameSize.find((t) => t.series === 'coarse')
      : sameSize.find((t) => t.pitchMm === Number(match[2]));
  if (found !== undefined) return { ok: true, value: found };
  if (match[2] === undefined) {
    const standard = named(sameSize.map((t) => t.designation));
    return refuse(`\`${text}\` has no coarse thread`, `say which pitch: ${standard}`);
  }
  const pitch = Number(match[2]);
  const standard = named(byDistance(sameSize, (t) => Math.abs(t.pitchMm - pitch)));
  const length = pitch > 6 ? ' (a bolt length does not belong in the thread)' : '';
  return refuse(`\`${text}\` is not a standard pitch for its diameter`, `standard: ${standard}${length}`);
}

function readUnified(text: string, folded: string): Parsed<Thread> {
  const match = UNIFIED.exec(folded);
  if (match === null) {
    const bare = new RegExp(`^${INCH_SIZE}$`).exec(folded);
    const threads = bare === null ? [] : ofSize(bare[1] ?? '').flat();
    if (threads.length > 0) {
      return refuse(
        `\`${text}\` does not say how many threads per inch`,
        `say which: ${named(threads.map((t) => t.designation))}`,
      );
    }
    return refuse(`\`${text}\` is not a thread`, 'write it like `M16`, `M16x1.5`, `5/8-11 UNC` or `#10-32 UNF`');
  }
  const sizes = ofSize(match[1] ?? '');
  const series = (match[3] ?? match[4])?.replace(/[\s-]/g, '');
  const tpi = match[2] === undefined ? undefined : inches(match[2]);
  for (const threads of sizes) {
    const found = threads.find((t) => (tpi === undefined || t.tpi === tpi) && isSeries(t, series, tpi));
    if (found !== undefined) return { ok: true, value: found };
  }
  const sameSize = sizes.find((threads) => threads.length > 0) ?? [];
  const standard = byDistance(sameSize, (t) => (tpi === undefined ? 0 : Math.abs((t.tpi ?? 0) - tpi)));
  if (standard.length > 0) return refuse(`\`${text}\` is not a standard thread`, `standard: ${named(standard)}`);
  const value = inches(match[1] ?? '');
  const near = nearestNumbers(value, [...new Set(UNIFIED_THREADS.map((t) => t.diameterMm / MM_PER_INCH))]);
  const names = near.map((d) => UNIFIED_THREADS.find((t) => t.diameterMm / MM_PER_INCH === d)?.size ?? '');
  return refuse(`\`${text}\` has no standard diameter`, `nearest standard sizes: ${named(names)}`);
}

/** `UN` alone stands for any series of that pair; 8UN at 1 in is UNC, the same thread. A series without a pitch must be exact. */
function isSeries(thread: Thread, series: string | undefined, tpi: number | undefined): boolean {
  if (series === undefined || series === thread.series) return true;
  if (tpi === undefined) return false;
  return series === 'UN' || (series === '8UN' && thread.tpi === 8);
}

/** Threads of the size written, as inches first and then as a numbered size: `10-32` can only be `#10-32`. */
function ofSize(text: string): readonly (readonly Thread[])[] {
  const number = /^#?\s*(\d{1,2})$/.exec(text)?.[1];
  const byNumber = number === undefined ? [] : UNIFIED_THREADS.filter((t) => t.size === `#${Number(number)}`);
  if (text.startsWith('#')) return [byNumber];
  const value = inches(text);
  return [UNIFIED_THREADS.filter((t) => Math.abs(t.diameterMm / MM_PER_INCH - value) < 0.0006), byNumber];
}

function inches(text: string): number {
  return text
    .replace('#', '')
    .split(/[\s-]+/)
    .reduce((sum, part) => {
      const [top = '', bottom = '1'] = part.split('/');
      return sum + Number(top) / Number(bottom);
    }, 0);
}

/** Designations of `threads`, the nearest first; equal ones keep the order of the tables. */
function byDistance(threads: readonly Thread[], apart: (thread: Thread) => number): readonly string[] {
  return threads.toSorted((a, b) => apart(a) - apart(b)).map((t) => t.designation);
}

function refuse(problem: string, hint: string): Parsed<never> {
  return { ok: false, problem, hint };
}
