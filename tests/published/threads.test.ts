/** Thread diameters and areas against ISO 898-1, ISO 724 and ASME B1.1 tables. */

import { describe, expect, test } from 'vitest';
import { halfDigit, readData, thread } from './read-data.ts';

const IN = 25.4;

describe('ISO 898-1 and ISO 724: metric threads', () => {
  for (const row of readData('thread-metric')) {
    const name = row.text('designation');
    test(`${name} (${row.text('source')})`, () => {
      const t = thread(name);
      expect(t.series).toBe(row.text('series'));
      expect(Number(t.stressAreaMm2.toPrecision(3))).toBe(row.number('As_mm2'));
      if (row.has('As_long_mm2')) expect(t.stressAreaMm2 / row.number('As_long_mm2')).toBeCloseTo(1, 3);
      const lengths = [
        ['d2_pitch_mm', t.pitchDiameterMm],
        ['D1_minor_internal_mm', t.internalMinorMm],
        ['d3_minor_external_mm', t.minorDiameterMm],
      ] as const;
      for (const [column, length] of lengths) {
        if (row.has(column)) expect(Math.abs(length - row.number(column)), column).toBeLessThanOrEqual(0.0006);
      }
    });
  }
});

describe('ASME B1.1: unified threads', () => {
  for (const row of readData('thread-unified')) {
    const name = row.text('designation');
    test(`${name} (${row.text('source')})`, () => {
      const t = thread(name);
      expect(t.series).toBe(row.text('series'));
      expect(t.diameterMm).toBeCloseTo(row.number('d_in') * IN, 9);
      const share = row.text('series') === '8UN' ? 0.003 : 0.002;
      expect(Math.abs(t.stressAreaMm2 / IN ** 2 / row.number('At_in2') - 1)).toBeLessThanOrEqual(share);
      if (row.has('At_long_in2')) {
        expect(Math.abs(t.stressAreaMm2 / IN ** 2 / row.number('At_long_in2') - 1)).toBeLessThanOrEqual(0.0005);
      }
      expect(Math.abs(t.pitchDiameterMm / IN - row.number('pitch_dia_in'))).toBeLessThanOrEqual(0.0001);
      if (row.has('minor_dia_internal_in')) {
        expect(Math.abs(t.internalMinorMm / IN - row.number('minor_dia_internal_in'))).toBeLessThanOrEqual(0.00015);
      }
    });
  }
});

describe('ASME B1.1: stress areas alone', () => {
  for (const row of readData('thread-unified-areas')) {
    const name = row.text('designation');
    test(`${name} (${row.text('source')})`, () => {
      // Half a digit of the printed area, and 0.1 % for tables that cut instead of rounding.
      const printed = row.number('At_in2');
      const room = halfDigit(row.text('At_in2')) + 0.001 * printed;
      expect(Math.abs(thread(name).stressAreaMm2 / IN ** 2 - printed)).toBeLessThanOrEqual(room);
    });
  }
});
