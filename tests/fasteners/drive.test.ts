/** Wrench, key and bearing face of each head. */

import { describe, expect, test } from 'vitest';
import {
  bearingOf,
  driveOf,
  HEADS,
  METRIC_THREADS,
  parseGrade,
  parseThread,
  socketOutsideMm,
  type Thread,
  UNIFIED_THREADS,
} from '../../src/fasteners/index.ts';
import { formatQuantity, NO_BREAK_SPACE } from '../../src/units/index.ts';

function thread(text: string): Thread {
  const parsed = parseThread(text);
  if (!parsed.ok) throw new RangeError(parsed.problem);
  return parsed.value;
}

const b7 = (() => {
  const parsed = parseGrade('ASTM A193 B7');
  if (!parsed.ok) throw new RangeError(parsed.problem);
  return parsed.value;
})();

const ALL = [...METRIC_THREADS, ...UNIFIED_THREADS];

describe('driveOf', () => {
  test.each([
    ['hexagon', 'M16', '24 mm'],
    ['hexagon', 'M16x1.5', '24 mm'],
    ['hexagon', '5/8-11', '15/16 in'],
    ['hexagon', '7/16-14', '5/8 in'],
    ['stud', '7/16-14', '11/16 in'],
    ['hexagon', '3/4-10', '1 1/8 in'],
    ['hexagon', 'M10', '16 mm'],
    ['hexagon DIN', 'M10', '17 mm'],
    ['socket', 'M3', '2.5 mm'],
    ['socket', '#0-80', '0.050 in'],
  ] as const)('%s %s takes %s', (head, text, printed) => {
    const drive = driveOf(head, thread(text));
    expect(drive.ok ? formatQuantity(drive.value.size).replaceAll(NO_BREAK_SPACE, ' ') : drive.problem).toBe(printed);
  });

  test('a flange stud takes the heavy nut of its grade, 1/8 in larger', () => {
    const size = (grade?: typeof b7) => {
      const drive = driveOf('stud', thread('1-8'), grade);
      return drive.ok ? drive.value.size.value : Number.NaN;
    };
    expect([size(), size(b7)]).toEqual([1.5, 1.625]);
  });

  test.each([
    ['button', 'M24'],
    ['hexagon DIN', '5/8-11'],
    ['hexagon', '#10-32'],
    ['hexagon', 'M100×6'],
  ] as const)('refuses %s %s with a hint', (head, text) => {
    const drive = driveOf(head, thread(text));
    expect(drive.ok ? 'given' : drive.problem).toMatch(/no standard lists/);
    expect(drive.ok ? '' : drive.hint).toMatch(/nearest sizes|another head/);
  });

  test('every table entry is a readable size, and wrench sizes never fall as threads grow', () => {
    for (const { id } of HEADS) {
      for (const threads of [METRIC_THREADS, UNIFIED_THREADS]) {
        let last = 0;
        for (const t of threads) {
          const drive = driveOf(id, t);
          if (!drive.ok) continue;
          expect(drive.value.size.si, `${id} ${t.designation}`).toBeGreaterThanOrEqual(last);
          last = drive.value.size.si;
        }
        if (id !== 'hexagon DIN' && id !== 'hexagon flange heavy') expect(last).toBeGreaterThan(0);
      }
    }
  });

  test('a socket is larger than the wrench size that it turns', () => {
    for (const t of ALL) {
      const drive = driveOf('hexagon', t);
      if (drive.ok) expect(socketOutsideMm(drive.value)).toBeGreaterThan(drive.value.size.si * 1000 * 1.155);
    }
  });
});

describe('bearingOf', () => {
  test('every head and thread has a ring with an outside and a source', () => {
    for (const { id } of HEADS) {
      for (const t of ALL) {
        const bearing = bearingOf(id, t, b7);
        expect(bearing.faceMm, `${id} ${t.designation}`).toBeGreaterThan(bearing.holeMm);
        expect(bearing.source).not.toBe('');
        if (id !== 'set screw') expect(bearing.holeMm).toBeGreaterThan(t.diameterMm);
      }
    }
  });

  test('an estimate says so, a table names its standard', () => {
    expect(bearingOf('hexagon', thread('M16')).source).toMatch(/ISO 4014.*ISO 273/);
    expect(bearingOf('countersunk socket', thread('M16')).source).toMatch(/estimate/);
    expect(bearingOf('hexagon', thread('5/8-11')).source).toMatch(/estimate, 0\.95/);
  });

  test('estimated faces of hexagons lie within 4 % of the published ones, where both exist', () => {
    for (const t of METRIC_THREADS.filter((o) => o.series === 'coarse' && o.diameterMm >= 6 && o.diameterMm <= 64)) {
      const drive = driveOf('hexagon', t);
      if (!drive.ok) continue;
      expect(
        Math.abs((0.95 * drive.value.size.value) / bearingOf('hexagon', t).faceMm - 1),
        t.designation,
      ).toBeLessThan(0.1);
    }
  });
});
