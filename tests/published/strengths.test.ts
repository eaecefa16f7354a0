/** Strengths of classes and grades against ISO 898-1, ISO 3506-1, SAE J429 and ASTM tables. */

import { describe, expect, test } from 'vitest';
import { METRIC_THREADS, strengthOf, type Thread, UNIFIED_THREADS } from '../../src/fasteners/index.ts';
import { grade, inches, readData, value } from './read-data.ts';

const MPA_PER_KSI = 6.894757293168361;

describe('metric classes and grades', () => {
  for (const row of readData('strength-metric')) {
    const name = `${row.text('standard')} ${row.text('grade')}`;
    test(`${name} from ${row.text('d_over_mm') || 0} to M${row.text('d_to_mm')} (${row.text('source')})`, () => {
      const over = row.has('d_over_mm') ? row.number('d_over_mm') : 1.5;
      const sizes = METRIC_THREADS.filter((t) => t.diameterMm > over && t.diameterMm <= row.number('d_to_mm'));
      expect(sizes.length).toBeGreaterThan(0);
      for (const t of sizes) {
        const s = value(strengthOf(grade(name), t));
        expect(s.tensileMPa).toBe(row.number('Rm_min_MPa'));
        expect(s.yieldMPa).toBe(row.number('yield_min_MPa'));
        expect(s.proofMPa).toBe(row.has('Sp_MPa') ? row.number('Sp_MPa') : undefined);
      }
    });
  }
});

/** Sizes of a row: `over 1`, `1/4` (inclusive), `all` or empty; up to and including `size_to_in`. */
function inRange(t: Thread, from: string, to: string): boolean {
  const d = t.diameterMm / 25.4;
  if (from.startsWith('over ')) {
    if (d <= inches(from.slice(5)) + 1e-9) return false;
  } else if (from !== '' && from !== 'all' && d < inches(from) - 1e-9) return false;
  return to === '' || to === 'all' || d <= inches(to) + 1e-9;
}

describe('inch grades', () => {
  for (const row of readData('strength-inch')) {
    const name = `${row.text('standard')} ${row.text('grade')}`;
    const [from, to] = [row.text('size_from_in'), row.text('size_to_in')];
    test(`${name} from ${from || 'the smallest'} to ${to} in (${row.text('source')})`, () => {
      const sizes = UNIFIED_THREADS.filter((t) => inRange(t, from, to));
      expect(sizes.length).toBeGreaterThan(0);
      for (const t of sizes) {
        const s = value(strengthOf(grade(name), t));
        expect(s.tensileMPa / MPA_PER_KSI).toBeCloseTo(row.number('tensile_min_ksi'), 9);
        expect(s.yieldMPa / MPA_PER_KSI).toBeCloseTo(row.number('yield_min_ksi'), 9);
        if (row.has('proof_ksi')) expect((s.proofMPa ?? 0) / MPA_PER_KSI).toBeCloseTo(row.number('proof_ksi'), 9);
        else expect(s.proofMPa).toBeUndefined();
      }
    });
  }
});
