/** Scatter of tightening methods against published guide values. */

import { describe, expect, test } from 'vitest';
import { bearingOf, strengthOf } from '../../src/fasteners/index.ts';
import {
  alphaFromScatter,
  CONDITIONS,
  computeTorque,
  findCondition,
  scatterFromAlpha,
} from '../../src/torque/index.ts';
import { grade, type Row, readData, thread, value } from './read-data.ts';

const table = readData('preload-scatter');

function row(method: string): Row {
  const found = table.find((r) => r.text('method') === method);
  if (found === undefined) throw new RangeError(`no row ${method}`);
  return found;
}

/** ± share of M16 8.8 at 75 % of proof load with a wrench of ISO 6789. */
function computed(conditionId: string): number {
  const condition = findCondition(conditionId);
  if (condition === undefined) throw new RangeError(conditionId);
  const M16 = thread('M16');
  return computeTorque({
    thread: M16,
    condition,
    strength: value(strengthOf(grade('8.8'), M16)),
    bearing: bearingOf('hexagon', M16),
    preloadShare: 0.75,
  }).scatter.plusMinus;
}

describe('alpha_A against plus/minus: (a - 1)/(a + 1), the two ways in which the sources print it', () => {
  for (const r of table) {
    test(`${r.text('method')} (${r.text('source')})`, () => {
      const percents = r.text('quantity') === 'plus_minus_percent';
      const ends = [r.number('low'), r.number('high')].map((x) => (percents ? x / 100 : scatterFromAlpha(x)));
      const extremes = row('all methods; extremes');
      for (const share of ends) {
        // Back and forth, and no method beyond the extremes of the guide, elongation apart, which needs no torque.
        expect(scatterFromAlpha(alphaFromScatter(share))).toBeCloseTo(share, 12);
        expect(share).toBeLessThanOrEqual(extremes.number('high') / 100 + 0.001);
      }
    });
  }
  test('alpha_A 1.6 of a torque wrench is the low end of ±23 to 28 % (VDI 2230:1986)', () => {
    const share = scatterFromAlpha(row('torque wrench; general').number('low'));
    expect(Math.round(share * 100)).toBe(row('torque wrench; friction estimated').number('low'));
  });
  test('an impact wrench at alpha_A 2.5 to 4 is ±43 to 60 %, the high end of all methods (VDI 2230:2001)', () => {
    const share = scatterFromAlpha(row('impact wrench; set by re-check torque').number('high'));
    expect(share).toBeCloseTo(row('all methods; extremes').number('high') / 100, 12);
  });
});

describe('the scatter computed from the band of friction and the wrench', () => {
  test('oil: within 3 points of the ±25 % of lubricated bolts (NASA table; Machinery’s Handbook alike)', () => {
    expect(Math.abs(computed('oiled') - row('torque; lubricated bolts').number('low') / 100)).toBeLessThan(0.03);
    expect(Math.abs(computed('oiled') - row('torque wrench').number('low') / 100)).toBeLessThan(0.03);
  });
  test('oil: within ±23 to 28 % of a torque wrench with friction estimated (VDI 2230:1986)', () => {
    const guide = row('torque wrench; friction estimated');
    expect(computed('oiled') * 100).toBeGreaterThanOrEqual(guide.number('low'));
    expect(computed('oiled') * 100).toBeLessThanOrEqual(guide.number('high'));
  });
  test.each(CONDITIONS.map((c) => c.id))(
    '%s: within ±9 to 60 %%, the extremes of all methods (VDI 2230:2001)',
    (id) => {
      const extremes = row('all methods; extremes');
      expect(computed(id) * 100).toBeGreaterThanOrEqual(extremes.number('low'));
      expect(computed(id) * 100).toBeLessThanOrEqual(extremes.number('high'));
    },
  );
});
