/** The cutting of text into terms: the same for index and query, and true to fractions. */

import { describe, expect, test } from 'vitest';
import { fold, indexTerms, queryTerms, slips } from '../../src/render/search/index.ts';

/** Every term that the query asks for is filed under the text. */
function meets(query: string, text: string): boolean {
  const filed = new Set(indexTerms(text));
  const asked = queryTerms(query);
  return asked.length > 0 && asked.every((term) => filed.has(term));
}

describe('fractions', () => {
  test('a vulgar fraction after a whole number stays a mixed number', () => {
    expect(queryTerms('1½ in')).toEqual(queryTerms('1 1/2 in'));
    expect(queryTerms('1½')).not.toContain('11/2');
    expect(queryTerms('1 1/8 in')).toEqual(['1-1/8in']);
  });

  test('a lone vulgar fraction is written with a plain slash', () => {
    expect(queryTerms('⅝')).toEqual(['5/8']);
    expect(queryTerms('15⁄16')).toEqual(['15/16']);
  });

  test('the fraction of a mixed number is not offered as a size of its own', () => {
    expect(meets('1/8', '1 1/8 in socket')).toBe(false);
    expect(meets('15/16', '15/16 in socket')).toBe(true);
    expect(meets('15', '15/16 in socket')).toBe(false);
  });
});

describe('threads and sizes', () => {
  test.each([
    ['M16', 'M16×1.5'],
    ['m16x1.5', 'M16×1.5'],
    ['M16 x 2', 'm16x2'],
    ['5/8-11', '5/8-11 UNC'],
    ['5/8', '5/8-11 UNC'],
    ['1 1/8-7', '1 1/8-7 UNC'],
    ['24 mm', 'a 24\u00a0mm socket'],
    ['24mm', 'a 24 mm socket'],
    ['15/16"', '15/16 in socket'],
    ['15/16', '15/16 in socket'],
  ])('%s finds %s', (query, text) => {
    expect(meets(query, text)).toBe(true);
  });

  test.each([
    ['M16', 'M160'],
    ['M1', 'M16'],
    ['24 mm', '124 mm'],
    ['24 mm', '24 in'],
  ])('%s does not find %s', (query, text) => {
    expect(meets(query, text)).toBe(false);
  });
});

describe('torques', () => {
  test.each([
    '120',
    '120 N·m',
    '120Nm',
    '120 nm',
    '120 N.m',
    '120 N⋅m',
    '89',
    '89 lbf·ft',
    '89 ft-lb',
    '89 lb-ft',
    '89 ft.lbf',
  ])('%s finds a torque of 120 N·m (89 lbf·ft)', (query) => {
    expect(meets(query, 'Cover joint: 120\u00a0N·m (89\u00a0lbf·ft)')).toBe(true);
  });

  test('a unit never parts from its number: 120 N·m is not 1200 N·m, nor 120 mm with some other torque', () => {
    expect(meets('120 N·m', '1200 N·m')).toBe(false);
    expect(meets('120 N·m', '120 mm and 30 N·m')).toBe(false);
    expect(meets('120 N·m', '120 lbf·ft')).toBe(false);
  });

  test('decimals are read with comma or point', () => {
    expect(queryTerms('8,5 N·m')).toEqual(queryTerms('8.5 N·m'));
    expect(meets('8.5', '8.5 N·m')).toBe(true);
    expect(meets('8', '8.5 N·m')).toBe(false);
  });
});

describe('part numbers and words', () => {
  test.each(['GK-6757-D3', 'gk-6757', '6757', 'd3', 'GK6757D3', '6757-d3'])(
    '%s finds GK-6757-D3 or its beginning',
    (query) => {
      const filed = indexTerms('Part: gasket, GK-6757-D3');
      for (const term of queryTerms(query)) expect(filed.some((f) => f.startsWith(term))).toBe(true);
    },
  );

  test('case, accents and look-alike signs are folded', () => {
    expect(fold('Ø 40 µm')).toBe(fold('ø 40 μm'));
    expect(queryTerms('Décapant')).toEqual(['decapant']);
    expect(queryTerms('half‑turn')).toEqual(['half-turn']);
  });

  test('hostile input gives few and short terms', () => {
    expect(queryTerms('<script>alert(1)</script>')).toEqual(['script', 'alert', '1']);
    expect(queryTerms('word '.repeat(5000)).length).toBeLessThanOrEqual(12);
    expect(queryTerms('')).toEqual([]);
    expect(queryTerms('the of and')).toEqual([]);
  });
});

test('slips count letters left out, added, changed and swapped', () => {
  expect(slips('gasket', 'gasket')).toBe(0);
  expect(slips('gaskte', 'gasket')).toBe(1);
  expect(slips('gaket', 'gasket')).toBe(1);
  expect(slips('gazket', 'gasket')).toBe(1);
  expect(slips('bearing', 'gasket')).toBeGreaterThan(3);
  expect(slips('', 'abc')).toBe(3);
});
