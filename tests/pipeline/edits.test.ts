/** Any edit of a sound shop gives diagnostics or a sound shop: never an exception, and no error without a place. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lineStarts, placeOf, renderFull } from '../../src/diagnostics/index.ts';
import { FULL_SHOP } from '../fixtures/full-joint.ts';
import { compileMini } from '../fixtures/mini-shop.ts';
import { SCRAPS } from '../fixtures/scraps.ts';

/** The machine twice over: most numbers stand there. */
const FILES = [...Object.keys(FULL_SHOP), 'machines/pump.yaml', 'machines/pump.yaml'];
const edit = fc.record({
  file: fc.constantFrom(...FILES),
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  cut: fc.nat({ max: 40 }),
  scrap: fc.constantFrom(...SCRAPS),
});

test('the shop to be edited is sound', () => {
  const { diagnostics, textOf } = compileMini({ ...FULL_SHOP });
  expect(renderFull(diagnostics, textOf)).toBe('');
});

test('300 random edits, one to three at a time', () => {
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 3 }), (edits) => {
      const texts: Record<string, string> = { ...FULL_SHOP };
      for (const { file, at, cut, scrap } of edits) {
        const text = texts[file] ?? '';
        const from = Math.floor(at * text.length);
        texts[file] = text.slice(0, from) + scrap + text.slice(from + cut);
      }
      const { diagnostics, textOf, checked } = compileMini(texts);
      expect(checked === undefined).toBe(diagnostics.some((d) => d.severity === 'error'));
      expect(renderFull(diagnostics, textOf)).not.toMatch(/\bundefined\b(?!-)|\[object/);
      for (const d of diagnostics) {
        const text = textOf(d.range.file) ?? '';
        expect(d.range.start).toBeGreaterThanOrEqual(0);
        expect(d.range.end).toBeGreaterThanOrEqual(d.range.start);
        expect(placeOf(lineStarts(text), d.range.start).column).toBeGreaterThanOrEqual(1);
      }
    }),
    { numRuns: Number(process.env['FETTLEBOOK_EDITS'] ?? 300) },
  );
});
