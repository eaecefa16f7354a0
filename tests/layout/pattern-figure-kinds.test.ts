/** Every kind of pattern, count, set of tools and features: legible, whole, and each hole's order shown once. */

import { describe, expect, test } from 'vitest';
import {
  type Pattern,
  patternHoles,
  type SequenceOptions,
  sequenceFault,
  tighteningSequence,
} from '../../src/geometry/index.ts';
import { type Drawing, drawPattern, specFrom, suitableWidth } from '../../src/layout/drawing/index.ts';
import { symbols, texts } from './figure-boxes.ts';
import { draw, KINDS, problems, WIDTHS } from './figure-kinds.ts';
import { featuresAbout } from './joints.ts';

const COUNTS = Array.from({ length: 59 }, (_, i) => i + 2);
/** Holes by the number in their symbol, or by the table where the symbols are too small. */
function shownMoves(drawing: Drawing): string[][] {
  const moves: string[][] = [];
  for (const t of texts(drawing).filter((m) => m.role === 'order')) {
    const inSymbol = symbols(drawing).some((s) => Math.hypot(s.centre.x - t.at.x, s.centre.y - t.at.y) < s.radius);
    const move = inSymbol ? Number(t.text) : (t.bolt?.order ?? 0);
    const holes = inSymbol ? [String(t.bolt?.hole)] : t.text.split('+');
    moves[move - 1] = [...(moves[move - 1] ?? []), ...holes];
  }
  return moves.map((m) => [...m].sort((a, b) => Number(a) - Number(b)));
}

function expectedMoves(pattern: Pattern, options: SequenceOptions = {}): string[][] {
  return tighteningSequence(pattern, options).moves.map((m) => [...m].sort((a, b) => a - b).map(String));
}

describe.each(Object.entries(KINDS))('%s', (_, patternOf) => {
  test.each([false, true])('2 to 60 bolts, features %s', (withFeatures) => {
    const found: string[] = [];
    for (const count of COUNTS) {
      const pattern = patternOf(count);
      const drawing = draw(pattern, WIDTHS[count % 3] ?? 70, withFeatures ? featuresAbout(600) : []);
      found.push(...problems(drawing).map((p) => `${count} bolts: ${p}`));
      expect(shownMoves(drawing), `${count} bolts`).toEqual(expectedMoves(pattern));
      expect(symbols(drawing).length).toBe(patternHoles(pattern).length);
    }
    expect(found).toEqual([]);
  });
});

describe.each([2, 4] as const)('%i tools', (tools) => {
  test.each(['circle', 'concentric circles'])('%s: the bolts of a move have one number', (kind) => {
    const found: string[] = [];
    let drawn = 0;
    for (const count of COUNTS) {
      const pattern = KINDS[kind]?.(count);
      if (pattern === undefined || sequenceFault(pattern, { tools }) !== undefined) continue;
      drawn++;
      const drawing = draw(pattern, WIDTHS[count % 3] ?? 70, count % 8 === 0 ? featuresAbout(600) : [], { tools });
      found.push(...problems(drawing).map((p) => `${count} bolts: ${p}`));
      expect(shownMoves(drawing), `${count} bolts`).toEqual(expectedMoves(pattern, { tools }));
      expect(drawing.description).toContain('together');
    }
    expect(found).toEqual([]);
    expect(drawn).toBeGreaterThan(6);
  });

  test('the figure says that the same number means together', () => {
    const drawing = draw({ kind: 'circle', diameterMm: 400, count: 16, firstDeg: 0 }, 70, [], { tools });
    const said = texts(drawing)
      .map((t) => t.text)
      .join(' ');
    expect(said).toContain('same number: together');
  });
});

describe('a suitable width', () => {
  test.each(Object.entries(KINDS).filter(([kind]) => kind !== 'points' && kind !== 'rectangle'))(
    '%s of 8: numbers in the symbols, hole 1 beside',
    (_, patternOf) => {
      const pattern = patternOf(8);
      const sequence = tighteningSequence(pattern);
      const spec = specFrom({
        pattern,
        holes: patternHoles(pattern),
        sequence,
        action: 'tighten',
        name: 'cover joint',
        view: 'from above',
      });
      const widthMm = suitableWidth(spec);
      const drawing = drawPattern(spec, { widthMm });
      expect(widthMm).toBeLessThanOrEqual(104);
      expect(problems(drawing)).toEqual([]);
      for (const t of texts(drawing).filter((m) => m.role === 'order')) {
        const own = symbols(drawing).find((s) => s.bolt?.hole === t.bolt?.hole);
        expect(Math.abs((own?.centre.x ?? 0) - t.at.x)).toBeLessThan(1e-9);
      }
    },
  );
});
