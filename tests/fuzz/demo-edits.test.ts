/**
 * Any YAML gives diagnostics, never an exception: random edits of the demo's own files, each with the procedure that stands
 * on them. 300 in the suite; `npm run fuzz` makes 20,000 from a seed of its own.
 */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compileMemory, demoFiles, procedureFiles, subShop } from '../../scripts/bench/sub-shop.ts';
import { lineStarts, placeOf, renderFull, renderJson, renderSarif, renderShort } from '../../src/diagnostics/index.ts';
import { CHECKS } from '../../src/rules/index.ts';
import { SCRAPS } from '../fixtures/scraps.ts';

const RUNS = Number(process.env['FETTLEBOOK_FUZZ'] ?? 300);
const FILES = demoFiles();
const SHOPS = procedureFiles(FILES).map((name) => subShop(FILES, name));

/** Cuts, scraps put in, a line doubled or dropped, two stretches exchanged. */
const edit = fc.record({
  kind: fc.constantFrom('scrap', 'scrap', 'scrap', 'drop line', 'double line', 'exchange', 'indent'),
  file: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
  at: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
  other: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
  cut: fc.nat({ max: 40 }),
  scrap: fc.constantFrom(...SCRAPS),
});
type Edit = typeof edit extends fc.Arbitrary<infer T> ? T : never;

function apply(text: string, { kind, at, other, cut, scrap }: Edit): string {
  const from = Math.floor(at * text.length);
  if (kind === 'scrap') return text.slice(0, from) + scrap + text.slice(from + cut);
  const lines = text.split('\n');
  const i = Math.floor(at * lines.length);
  const j = Math.floor(other * lines.length);
  const line = lines[i] ?? '';
  if (kind === 'drop line') lines.splice(i, 1 + (cut % 4));
  else if (kind === 'double line') lines.splice(i, 0, line);
  else if (kind === 'indent') lines[i] = cut % 2 === 0 ? `  ${line}` : line.replace(/^ {2}/, '');
  else {
    lines[i] = lines[j] ?? '';
    lines[j] = line;
  }
  return lines.join('\n');
}

test(`${RUNS} random edits of the demo`, { timeout: RUNS * 400 + 60_000 }, () => {
  fc.assert(
    fc.property(fc.nat({ max: SHOPS.length - 1 }), fc.array(edit, { minLength: 1, maxLength: 3 }), (which, edits) => {
      const texts: Record<string, string> = { ...SHOPS[which] };
      // Registers are large and shared: half of all edits go to the procedure and its machine.
      const names = Object.keys(texts);
      const own = names.filter((n) => /^(procedures|machines)\//.test(n));
      for (const e of edits) {
        const pool = e.other < 0.5 ? own : names;
        const name = pool[Math.floor(e.file * pool.length)] ?? '';
        texts[name] = apply(texts[name] ?? '', e);
      }
      const { diagnostics, accepted, textOf, checked } = compileMemory(texts);
      expect(checked === undefined).toBe(diagnostics.some((d) => d.severity === 'error'));
      expect(() => renderFull(diagnostics, textOf)).not.toThrow();
      for (const d of diagnostics) {
        // What stands in backticks is the author's.
        expect(`${d.message} ${d.hint ?? ''}`.replace(/`[^`]*`/g, '')).not.toMatch(/\bundefined\b|\[object|\bNaN\b/);
        const text = textOf(d.range.file) ?? '';
        expect(d.range.start).toBeGreaterThanOrEqual(0);
        expect(d.range.end).toBeGreaterThanOrEqual(d.range.start);
        expect(d.range.end).toBeLessThanOrEqual(Math.max(text.length, 1));
        expect(placeOf(lineStarts(text), d.range.start).column).toBeGreaterThanOrEqual(1);
      }
      expect(renderShort(diagnostics, textOf).split('\n').length).toBe(diagnostics.length + 1);
      expect(JSON.parse(renderJson(diagnostics, textOf))).toHaveLength(diagnostics.length);
      expect(() => JSON.parse(renderSarif({ diagnostics, accepted, rules: CHECKS, textOf }))).not.toThrow();
    }),
    { numRuns: RUNS },
  );
});
