/** What is passed over by a look at letters: the same words and the same findings as by the patterns alone. */

import '../property-seed.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { headFrom, heads } from '../../src/rules/wrt/heads.ts';
import { newReading } from '../../src/rules/wrt/reading.ts';
import { VAGUE } from '../../src/rules/wrt/vague.ts';
import { vagueWordsIn } from '../../src/rules/wrt/vague-words.ts';

/** A word as one pattern says it: a number with its unit, letters with what joins them, or any one sign. */
const WORD =
  /\d(?:[\d.,/]*\d)?(?:\u00a0\d+\/\d+)?(?:[°"″%]|\u00a0[\p{L}°%µ"″][\p{L}\d·²³/]*)?(?:-\p{L}[\p{L}\d-]*)?|[\p{L}\ue000][\p{L}\p{M}\d'’/\ue000-]*|\S/gu;

const SCRAPS = [
  ...['wipe', 'O-ring', "don't", 'don’t', 'and/or', 'Öl', 'naïve', 'café', 'e\u0301', 'ſeal', 'M12', 'a', 'I', 'x'],
  ...['3', '0.05', '1/2', '3\u00a01/4', '12\u00a0mm', '90°', '5-hole', '8.8', '1,5', '10\u00a0N·m', '°C', 'µm', '²'],
  ...[' ', ' ', ' ', '\u00a0', '\t', '\u2009', '-', '–', '.', '. ', '!', '? ', ',', ';', '(', ')', '"', '_', '\u007f'],
  ...['😀', '漢字', '\u200b', '\ud800', '/', '×', '±', '=', '<', '~'],
];
const text = fc.array(fc.constantFrom(...SCRAPS), { maxLength: 24 }).map((s) => s.join(''));

function readingOfText(words: string) {
  return newReading([{ kind: 'paragraph', runs: [{ text: words }] }]);
}

test('words are cut where the pattern cuts them', () => {
  fc.assert(
    fc.property(text, (words) => {
      const expected = [...words.matchAll(WORD)].map((m) => `${m.index} ${m.index + m[0].length}`);
      const cut = readingOfText(words).sentences.flatMap((s) => s.words.map((w) => `${w.start} ${w.end}`));
      expect(cut).toEqual(expected.slice(0, cut.length));
      // Marks behind the last sentence are in none.
      expect(words.slice(Number(cut.at(-1)?.split(' ')[1] ?? 0))).not.toMatch(/[\p{L}\d]/u);
    }),
    { numRuns: 3000 },
  );
});

const WHOLE = new RegExp(`(?<![\\w-])(?:${VAGUE.map((v) => v.pattern).join('|')})(?![\\w-])`, 'gi');
const SPOKEN = [
  ...VAGUE.flatMap((v) => v.pattern.replace(/\(\?[:=!]|[()?\\]/g, ' ').split(/[ |]+/)),
  ...['As required', 'IF NECESSARY', 'and/or', 'a few', 'etc.', 'as the case may be', 'approx. 3', 'Kelvin', 'ſhould'],
  ...['wipe', 'the', '-', '.', ',', '3', '_', 'é', 'required torque', 'normally open', 'normal.'],
];

test('vague words stand where the pattern finds them', () => {
  let seen = 0;
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.constantFrom(...SPOKEN), fc.constantFrom(' ', ' ', ' ', '', '-', ', ')), { maxLength: 16 }),
      (parts) => {
        const reading = readingOfText(parts.flat().join(''));
        const starts = [...vagueWordsIn(reading, 'do')].map((f) => f.start);
        seen += starts.length;
        expect(starts).toEqual([...reading.typed.matchAll(WHOLE)].map((m) => m.index));
      },
    ),
    { numRuns: 3000 },
  );
  expect(seen).toBeGreaterThan(1000);
});

describe('heads', () => {
  test('are found at the beginnings of words alone', () => {
    const known = heads(['(?:as|if) (?:is )?needed', 'a few', 'etc\\.?|roughly']);
    const at = (words: string) => headFrom(known, words, 0);
    expect(at('Wipe as needed')).toBe(5);
    expect(at('A few')).toBe(0);
    expect(at('through, ROUGHLY')).toBe(9);
    expect(at('re-assemble, was, half-etched, bedetc')).toBe(37);
    expect(headFrom(known, 'etcetera', 1)).toBe(8);
  });

  test('of a pattern that hides its beginning are refused', () => {
    for (const pattern of ['(?:very )?tight', '[Aa]s needed', '\\d mm', 'a?bout', '(?:tight)* fit', 'x|as needed'])
      expect(() => heads([pattern]), pattern).toThrow(RangeError);
  });
});
