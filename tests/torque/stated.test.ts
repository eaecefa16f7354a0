/** A torque copied from a document against the computed one: slips of unit, decimal point and digit. */

import { describe, expect, test } from 'vitest';
import { bearingOf, parseGrade, parseThread, strengthOf } from '../../src/fasteners/index.ts';
import { compareStated, computeTorque, findCondition, type TorqueResult } from '../../src/torque/index.ts';
import { quantity } from '../../src/units/index.ts';

/** M16 8.8 oiled at 75 %: 174.5 N·m, from 142 to 218. */
function joint(): TorqueResult {
  const thread = parseThread('M16');
  const grade = parseGrade('8.8');
  const condition = findCondition('oiled');
  if (!thread.ok || !grade.ok || condition === undefined) throw new RangeError('no joint');
  const strength = strengthOf(grade.value, thread.value);
  if (!strength.ok) throw new RangeError(strength.problem);
  const bearing = bearingOf('hexagon', thread.value);
  return computeTorque({ thread: thread.value, strength: strength.value, condition, bearing, preloadShare: 0.75 });
}

describe('compareStated', () => {
  const r = joint();
  const T = r.shortForm.nominal;
  test.each([
    [1, 'inside', undefined],
    [1.2, 'inside', undefined],
    [12, 'unit slip', /lbf·in written as lbf·ft/],
    [1 / 12, 'unit slip', /lbf·ft written as lbf·in/],
    [8.85, 'unit slip', /lbf·in written as N·m/],
    [0.113, 'unit slip', /N·m written as lbf·in/],
    [1.4, 'unit slip', /N·m written as lbf·ft/],
    [0.7376, 'unit slip', /lbf·ft written as N·m/],
    [9.80665, 'unit slip', /N·m written as kgf·m/],
    [0.10197, 'unit slip', /kgf·m written as N·m/],
    [10.3, 'unit slip', /kgf·cm written as N·m/],
    [100, 'unit slip', /kgf·cm written as kgf·m/],
    [10, 'digit slip', /decimal point/],
    [0.1, 'digit slip', /decimal point/],
    [3, 'far off', undefined],
    [0.4, 'far off', undefined],
    [1.8, 'outside the band', undefined],
    [0.55, 'outside the band', undefined],
  ] as const)('%d times the computed torque is %s', (ratio, verdict, likely) => {
    const check = compareStated(ratio * T, r);
    expect(check.ratio).toBeCloseTo(ratio, 9);
    expect(check.verdict).toBe(verdict);
    if (likely === undefined) expect(check.likely).toBeUndefined();
    else expect(check.likely).toMatch(likely);
    if (check.correctedNm !== undefined) expect(Math.abs(check.correctedNm / T - 1)).toBeLessThanOrEqual(0.15);
  });
  test("a torque that is not above zero is a programmer's mistake", () => {
    expect(() => compareStated(0, r)).toThrow(RangeError);
  });

  test.each([
    ['714 for 174: a hundreds digit in the wrong place', 714, 'far off', /1st and 2nd digit exchanged/, 174],
    ['374 for 174', 374, 'far off', /1st digit 3 instead of 1/, 174],
    ['274 for 174', 274, 'outside the band', /1st digit 2 instead of 1/, 174],
    ['105 for 175: the second digit', 105, 'outside the band', /2nd digit 0 instead of 7/, 175],
  ] as const)('%s', (_, value, verdict, likely, meant) => {
    const check = compareStated(quantity('torque', value, 'N·m'), r);
    expect(check.verdict).toBe(verdict);
    expect(check.likely).toMatch(likely);
    expect(check.correctedNm).toBe(meant);
  });
  test('the digits are those of the unit in which the torque was written: 821 lbf·ft for 128.7', () => {
    const check = compareStated(quantity('torque', 218, 'lbf·ft'), r);
    expect(check.likely).toMatch(/1st and 2nd digit exchanged/);
    expect(check.correctedNm).toBeCloseTo(128 * 1.3558179, 3);
  });
  test('a digit is named beside a unit that fits less well, and the unit keeps the verdict', () => {
    // 237/174.5 = 1.358 is N·m for lbf·ft to the percent; 271/174.5 = 1.553 is 15 % from it, and 171 is near.
    expect(compareStated(quantity('torque', 237, 'N·m'), r).likely).toBe('N·m written as lbf·ft');
    const check = compareStated(quantity('torque', 271, 'N·m'), r);
    expect(check.verdict).toBe('unit slip');
    expect(check.likely).toBe('N·m written as lbf·ft, or the 1st digit 2 instead of 1');
  });
  test('inside the band comes first, whatever slip would fit as well', () => {
    expect(compareStated(quantity('torque', 147, 'N·m'), r)).toEqual({ ratio: 147 / T, verdict: 'inside' });
  });
});
