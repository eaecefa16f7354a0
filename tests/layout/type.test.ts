/** Type: coverage, measuring, line breaking. */

import { describe, expect, test } from 'vitest';
import {
  breakLines,
  cutByFace,
  loadFaces,
  measure,
  type Span,
  type TextProblems,
  widthOf,
} from '../../src/layout/type/index.ts';

const faces = loadFaces();

function watch(): TextProblems & { readonly codePoints: number[]; readonly words: string[] } {
  const codePoints: number[] = [];
  const words: string[] = [];
  return {
    codePoints,
    words,
    missing: (codePoint) => {
      codePoints.push(codePoint);
    },
    tooWide: (word) => {
      words.push(word);
    },
  };
}

function plain(text: string): Span {
  return { text, weight: 'regular', size: 11.5, ink: 'ink' };
}

function textOf(lines: ReturnType<typeof breakLines>): string[] {
  return lines.map((line) => line.pieces.map((p) => p.text).join(''));
}

describe('faces', () => {
  test('signs of the trade are all covered, some by the fallback face', () => {
    const problems = watch();
    const trade = '½ ⅛ ° ± × · ⌀ Ø µ Ω → ☐ ≤ ≥ ⚠ – — ‑ − ² ₂ ′ ″ é ł ☑';
    const pieces = [
      ...cutByFace(faces, plain(trade), problems),
      ...cutByFace(faces, { ...plain(trade), weight: 'bold' }, problems),
    ];
    expect(problems.codePoints).toEqual([]);
    expect(new Set(pieces.map((p) => p.face.name))).toEqual(new Set(['regular', 'fallback', 'bold', 'fallbackBold']));
    expect(pieces.find((p) => p.text.includes('⌀'))?.face.name).toBe('fallback');
  });

  test('a character of no face is reported with its code point and never vanishes', () => {
    const problems = watch();
    const pieces = cutByFace(faces, plain('a\ue123b'), problems);
    expect(problems.codePoints).toEqual([0xe123]);
    expect(pieces.map((p) => p.text).join('')).toBe('a\ufffdb');
  });

  test('control characters are reported', () => {
    const problems = watch();
    cutByFace(faces, plain('a\u0007b\u202ec'), problems);
    expect(problems.codePoints).toEqual([7, 0x202e]);
  });

  test('figures of one weight are of one width: columns line up', () => {
    for (const weight of ['regular', 'semibold', 'bold'] as const) {
      const widths = [...'0123456789'].map((d) => widthOf(faces[weight], d, 10));
      expect(new Set(widths.map((w) => w.toFixed(6))).size).toBe(1);
    }
  });

  test('a glyph tells one code point, whichever was asked for first', () => {
    const { font } = faces.regular;
    expect(font.layout('\u03bc').glyphs[0]?.codePoints).toEqual([0xb5]);
    expect(font.layout('\u00b5').glyphs[0]?.codePoints).toEqual([0xb5]);
    expect(font.layout('fi').glyphs.flatMap((g) => [...g.codePoints])).toEqual([0x66, 0x69]);
    expect(font.layout('\ufb01').glyphs.flatMap((g) => [...g.codePoints])).toEqual([0x66, 0x69]);
  });
});

describe('lines', () => {
  const text =
    'Set the wrench to 85\u00a0N·m and tighten the screws crosswise in three rounds, then once round at 85\u00a0N·m.';

  test.each([90, 120, 200, 400])('none is wider than %i pt, and all words are there', (width) => {
    const problems = watch();
    const lines = breakLines(faces, [plain(text)], width, problems);
    for (const line of lines) {
      expect(line.width).toBeLessThanOrEqual(width + 0.02);
      const own = line.pieces.reduce((sum, p) => sum + measure(faces, plain(p.text.trimEnd()), problems), 0);
      expect(Math.abs(own - line.width)).toBeLessThan(0.5);
    }
    expect(textOf(lines).join(' ').replace(/ +/gu, ' ')).toBe(text);
    expect(problems.words).toEqual([]);
  });

  test('number and unit are never parted', () => {
    for (let width = 60; width < 300; width += 7) {
      const lines = textOf(breakLines(faces, [plain(text)], width, watch()));
      expect(lines.filter((l) => l.includes('85')).every((l) => l.includes('85\u00a0N·m'))).toBe(true);
    }
  });

  test('a word that is too wide is reported and stays whole in reading order', () => {
    const problems = watch();
    const long = 'W'.repeat(120);
    const lines = breakLines(faces, [plain(`a ${long} b`)], 150, problems);
    expect(problems.words).toEqual([long]);
    expect(textOf(lines).join('').replaceAll(' ', '')).toBe(`a${long}b`);
    for (const line of lines) expect(line.width).toBeLessThanOrEqual(150.02);
  });

  test('weights meet without a gap or an overlap', () => {
    const lines = breakLines(
      faces,
      [plain('Tighten the '), { ...plain('end-cover joint'), weight: 'semibold' }, plain(' in order.')],
      400,
      watch(),
    );
    const [line] = lines;
    const pieces = line?.pieces ?? [];
    expect(pieces.length).toBe(3);
    pieces.slice(1).forEach((p, i) => {
      const before = pieces[i];
      expect(p.x).toBeCloseTo((before?.x ?? 0) + (before?.width ?? 0), 6);
    });
  });

  test('line ends of the source break the line', () => {
    expect(textOf(breakLines(faces, [plain('one\ntwo')], 400, watch()))).toEqual(['one', 'two']);
  });

  test('words of another script appear as text', () => {
    const problems = watch();
    const lines = breakLines(faces, [plain('שלום עולם')], 400, problems);
    expect(textOf(lines).join('')).toBe('שלום עולם');
    expect(problems.codePoints).toEqual([]);
  });
});
