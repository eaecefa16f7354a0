/** Every single slip in every cell of a typed table: which of them are found. */

import { describe, expect, test } from 'vitest';
import { faulty, METRIC, mistyped } from './typed-table.ts';

/**
 * Every slip of one cell in a table of more than 30: no other cell is ever named, and the cell itself whenever the slip
 * moves it further than LARGE: the 11 % that every table is granted, and up to 5 % that a number of two figures, such as
 * the 100 that a slip may make, has perhaps been rounded by. Of all 1041 changes of one digit 43 % are caught; the rest
 * weigh less than real tables vary: 85 for 84 is 1 %.
 */
describe('one slip in one cell', () => {
  const LARGE = 0.165;
  const run = (slipsOf: (value: number, text: string) => readonly number[]) => {
    const count = { tried: 0, large: 0, caught: 0, missed: [] as string[], neighbours: [] as string[] };
    METRIC.forEach((cell, i) => {
      const { value, decimals } = cell.stated;
      for (const slip of slipsOf(value, value.toFixed(decimals))) {
        const found = faulty(mistyped(new Map([[i, slip]])));
        const moved = Math.max(slip / value, value / slip) - 1;
        const what = `${cell.thread.designation} ${cell.grade.id}: ${slip} for ${value}`;
        count.tried++;
        if (found.includes(i)) count.caught++;
        if (moved > LARGE) count.large++;
        if (moved > LARGE && !found.includes(i)) count.missed.push(what);
        if (found.some((k) => k !== i)) count.neighbours.push(what);
      }
    });
    return count;
  };

  test('the table has more than 30 cells', () => {
    expect(METRIC.length).toBeGreaterThan(30);
  });

  test('every single digit changed: all that move the value by more than 16.5 % are caught', () => {
    const r = run((_, text) =>
      [...text].flatMap((sign, at) =>
        sign === '.'
          ? []
          : [...'0123456789']
              .filter((d) => d !== sign && !(at === 0 && d === '0'))
              .map((d) => Number(text.slice(0, at) + d + text.slice(at + 1))),
      ),
    );
    expect(r.tried).toBeGreaterThan(700);
    expect([r.missed, r.neighbours]).toEqual([[], []]);
    expect(r.caught / r.tried).toBeGreaterThan(0.43);
  });

  test('every two neighbouring digits exchanged', () => {
    const r = run((value, text) =>
      [...text].slice(1).flatMap((_, i) => {
        const other = Number(text.slice(0, i) + text.charAt(i + 1) + text.charAt(i) + text.slice(i + 2));
        return other === value || other < 1 || text.includes('.') ? [] : [other];
      }),
    );
    expect(r.tried).toBeGreaterThan(50);
    expect([r.missed, r.neighbours]).toEqual([[], []]);
  });

  test('every factor of a unit or a decimal point: all are caught, and called so', () => {
    const factors = [12, 1.3558, 8.8507, 9.80665, 10.197, 100, 10].flatMap((f) => [f, 1 / f]);
    const r = run((value) => factors.map((f) => value * f));
    expect(r.caught).toBe(r.tried);
    expect(r.neighbours).toEqual([]);
    for (const [i, cell] of METRIC.entries()) {
      for (const f of factors) {
        const verdict = mistyped(new Map([[i, cell.stated.value * f]])).cells[i]?.verdict;
        expect(['unit slip', 'digit slip'], `${cell.stated.value} × ${f}`).toContain(verdict);
      }
    }
  });
});
