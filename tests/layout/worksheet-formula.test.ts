/** Formulas in two dimensions on paper: bars, roots, subscripts and exponents in their places. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatOf } from '../../src/layout/card/index.ts';
import { loadFaces } from '../../src/layout/type/index.ts';
import { type FormulaBox, formulaBox } from '../../src/layout/worksheet/formula-box.ts';
import {
  constant,
  type Expr,
  fraction,
  marksOf,
  power,
  product,
  quantity,
  root,
  sum,
} from '../../src/torque/formula/index.ts';

const setting = {
  faces: loadFaces(),
  format: formatOf('A4'),
  problems: {
    missing: (codePoint: number) => {
      throw new Error(`no glyph for U+${codePoint.toString(16)}`);
    },
    tooWide: () => {
      throw new Error('too wide');
    },
  },
};
const TYPE = { size: 10, script: 8 };
const box = (expr: Expr, flat = false): FormulaBox => formulaBox(setting, marksOf(expr, 'letters', flat), TYPE);
const text = (b: FormulaBox, wanted: string) => {
  const found = b.texts.find((t) => t.text.trim() === wanted || t.text.endsWith(`\u00a0${wanted}`));
  if (found === undefined) throw new Error(`${wanted} is not among ${b.texts.map((t) => t.text).join(' ')}`);
  return found;
};
const a = quantity('a', 1);
const longer = quantity('F_low', 2);

describe('a fraction', () => {
  const b = box(fraction(a, sum(longer, constant(1))));
  const [bar] = b.rules;

  test('has a bar as wide as its wider part, between both', () => {
    expect(b.rules.length).toBe(1);
    expect(bar?.y1).toBe(bar?.y2);
    expect(text(b, 'a').y).toBeLessThan(bar?.y1 ?? 0);
    expect(text(b, 'F').y - 0.6 * TYPE.size).toBeGreaterThan(bar?.y1 ?? 0);
    const one = text(b, '1');
    expect(bar?.x1 ?? 99).toBeLessThan(text(b, 'F').x);
    expect(bar?.x2 ?? 0).toBeGreaterThan(one.x + one.width);
  });

  test('centres its narrower part', () => {
    const over = text(b, 'a');
    expect(over.x + over.width / 2).toBeCloseTo(((bar?.x1 ?? 0) + (bar?.x2 ?? 0)) / 2, 1);
  });

  test('stands on one line with a solidus where that saves height, never before a further factor', () => {
    expect(box(fraction(a, longer), true).rules).toEqual([]);
    expect(box(product(fraction(a, longer), a), true).rules.length).toBe(1);
    expect(box(product(a, fraction(a, longer)), true).rules).toEqual([]);
    expect(box(fraction(a, product(a, longer)), true).rules.length).toBe(1);
  });
});

describe('subscripts, exponents, roots', () => {
  test('a subscript hangs below the baseline, an exponent stands above it, and neither is smaller than told', () => {
    const b = box(power(longer, 2));
    expect(text(b, 'F').y).toBe(0);
    expect(text(b, 'low').y).toBeGreaterThan(1);
    expect(text(b, '2').y).toBeLessThan(-2);
    expect(Math.min(...b.texts.map((t) => t.size))).toBe(TYPE.script);
    expect(text(b, '2').x).toBeGreaterThanOrEqual(text(b, 'low').x + text(b, 'low').width);
  });

  test('the bar of a root covers all that stands under it', () => {
    const b = box(root(sum(power(a, 2), power(longer, 2))));
    const bar = b.rules.at(-1);
    const last = b.texts.reduce((right, t) => Math.max(right, t.x + t.width), 0);
    expect(bar?.x2 ?? 0).toBeGreaterThanOrEqual(last);
    for (const t of b.texts) expect(t.y - 0.6 * t.size).toBeGreaterThan((bar?.y1 ?? 0) - 0.01);
  });
});

describe('any formula', () => {
  const tree = fc.letrec<{ expr: Expr }>((tie) => ({
    expr: fc.oneof(
      { maxDepth: 3 },
      fc.constantFrom(a, longer, constant(12)),
      fc.tuple(tie('expr'), tie('expr')).map(([x, y]) => sum(x, y)),
      fc.tuple(tie('expr'), tie('expr')).map(([x, y]) => product(x, y)),
      fc.tuple(tie('expr'), tie('expr')).map(([x, y]) => fraction(x, y)),
      tie('expr').map((x) => power(x, 2)),
      tie('expr').map((x) => root(x)),
    ),
  })).expr;

  test('keeps within its own box, and no text lies on another', () => {
    fc.assert(
      fc.property(tree, fc.boolean(), (expr, flat) => {
        const b = box(expr, flat);
        for (const t of b.texts) {
          expect(t.x >= -0.01 && t.x + t.width <= b.width + 0.01).toBe(true);
          expect(t.y - 0.66 * t.size >= -b.ascent - 0.01 && t.y <= b.descent + 0.01).toBe(true);
        }
        for (const r of b.rules) {
          expect(Math.min(r.y1, r.y2) >= -b.ascent - 0.01 && Math.max(r.y1, r.y2) <= b.descent + 0.6).toBe(true);
        }
        b.texts.forEach((s, i) => {
          for (const t of b.texts.slice(i + 1)) {
            const over = s.x < t.x + t.width - 0.1 && t.x < s.x + s.width - 0.1;
            const level = Math.min(s.y, t.y) > Math.max(s.y - 0.6 * s.size, t.y - 0.6 * t.size);
            expect(over && level, `${s.text} on ${t.text}`).toBe(false);
          }
        });
      }),
      { numRuns: 300 },
    );
  });
});
