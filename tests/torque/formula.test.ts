/** Formulas as trees: the printed line, worked out by another reader, gives the tree's own value. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  constant,
  cosine,
  degrees,
  difference,
  type Expr,
  evaluate,
  figures,
  fraction,
  given,
  givenFigures,
  marksOf,
  PI,
  power,
  printExpr,
  product,
  quantity,
  root,
  sum,
  symbolName,
} from '../../src/torque/formula/index.ts';
import { workOut } from './pocket-calculator.ts';

/** Trees over four named numbers, with values that print without rounding. */
const VALUES: ReadonlyMap<string, number> = new Map([
  ['d', 16],
  ['F_low', 2.5],
  ['As', 7],
  ['φ', 60],
]);
const tree = fc.letrec<{ expr: Expr }>((tie) => ({
  expr: fc.oneof(
    { maxDepth: 4, withCrossShrink: true },
    fc.constantFrom(quantity('d', 16), quantity('F_low', 2.5), quantity('A_s', 7), constant(3), PI),
    fc.tuple(tie('expr'), tie('expr')).map(([a, b]) => sum(a, b)),
    fc.tuple(tie('expr'), tie('expr'), tie('expr')).map(([a, b, c]) => difference(a, b, c)),
    fc.tuple(tie('expr'), tie('expr')).map(([a, b]) => product(a, b)),
    fc.tuple(tie('expr'), tie('expr')).map(([a, b]) => fraction(a, b)),
    tie('expr').map((a) => power(a, 2)),
    tie('expr').map((a) => power(a, 3)),
    tie('expr').map((a) => root(power(a, 2))),
    fc.constant(cosine(degrees('φ', 60))),
  ),
})).expr;

describe('a printed line', () => {
  test('worked out by another reader gives the value of the tree, in letters and in numbers', () => {
    fc.assert(
      fc.property(tree, (expr) => {
        const value = evaluate(expr);
        fc.pre(Number.isFinite(value) && Math.abs(value) < 1e12);
        const close = (found: number) => Math.abs(found - value) <= 1e-7 * Math.max(1, Math.abs(value));
        return close(workOut(printExpr(expr, 'numbers'))) && close(workOut(printExpr(expr, 'letters'), VALUES));
      }),
      { numRuns: 500 },
    );
  });

  test('reads as an engineer writes it', () => {
    const setting = fraction(
      product(quantity('T', 300), quantity('L', 10)),
      sum(quantity('L', 10), product(quantity('E', 4), cosine(degrees('φ', 0)))),
    );
    expect(printExpr(setting, 'letters')).toBe('T × L / (L + E × cos(φ))');
    expect(printExpr(setting, 'numbers')).toBe('300 × 10 / (10 + 4 × cos(0°))');
    const twoStep = difference(quantity('F_low', 9), sum(quantity('a', 1), quantity('b', 2)));
    expect(printExpr(twoStep, 'letters')).toBe('F_low − (a + b)');
    expect(printExpr(fraction(quantity('a', 1), product(quantity('b', 2), constant(3))), 'letters')).toBe(
      'a / (b × 3)',
    );
  });
});

describe('figures', () => {
  test.each([
    [0, '0'],
    [0.16, '0.16'],
    [16, '16'],
    [156.6682, '156.67'],
    [90.86768, '90.87'],
    [218.0824, '218.1'],
    [999.96, '1000'],
    [123456.7, '123457'],
    [0.000123456, '0.00012346'],
    [-2.34567, '−2.346'],
  ])('%d is printed %s', (value, text) => expect(figures(value)).toBe(text));

  test('never moves a number by more than a quarter of a thousandth', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (value) => {
        return Math.abs(Number(figures(value)) / value - 1) <= 0.00025 + 1e-12;
      }),
      { numRuns: 1000 },
    );
  });
});

describe('given numbers', () => {
  test.each([
    [28.575, '28.575'],
    [16, '16'],
    [0.16, '0.16'],
    [813.4909, '813.491'],
    [0, '0'],
    [-0.5, '−0.5'],
  ])('%d is printed %s', (value, text) => expect(givenFigures(value)).toBe(text));

  test('stand in the line as they were given, reckoned ones rounded', () => {
    const line = product(given('d', 28.575), quantity('F', 28.575));
    expect(printExpr(line, 'numbers')).toBe('28.575 × 28.57');
  });
});

describe('marks for drawing', () => {
  const text = (expr: Expr, mode: 'letters' | 'numbers') => JSON.stringify(marksOf(expr, mode));

  test('a fraction needs no parentheses, a sum among factors and under an exponent does', () => {
    const a = quantity('a', 1);
    const b = quantity('b', 2);
    expect(text(fraction(sum(a, b), product(a, b)), 'letters')).not.toContain('"("');
    expect(text(product(a, sum(a, b)), 'letters')).toContain('"("');
    expect(text(power(fraction(a, b), 2), 'letters')).toContain('"("');
    expect(text(root(sum(a, b)), 'letters')).not.toContain('"("');
  });

  test('factors stand beside each other in letters and take a sign among numbers', () => {
    const expr = product(quantity('K', 0.16), quantity('d', 16));
    expect(text(expr, 'letters')).not.toContain('×');
    expect(text(expr, 'numbers')).toContain('×');
  });

  test('a symbol is a letter with what stands after its low line', () => {
    expect(symbolName('F_T, low')).toEqual({ letter: 'F', sub: 'T, low' });
    expect(symbolName('σ')).toEqual({ letter: 'σ' });
  });
});
