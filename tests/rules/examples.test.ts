/** Every check against its own example: the bad one gives exactly the marked diagnostics, the good one none. */

import { describe, expect, test } from 'vitest';
import { CODES, renderFull } from '../../src/diagnostics/index.ts';
import { EXAMPLE_FOLDER, runExample } from '../../src/pipeline/index.ts';
import { CHECKS } from '../../src/rules/index.ts';

test('the example shop is sound', () => {
  const { diagnostics, textOf } = runExample([]);
  expect(renderFull(diagnostics, textOf)).toBe('');
});

test('every code has one check, in the order of the list', () => {
  expect(CHECKS.map((c) => c.code)).toEqual(CODES);
  const names = CHECKS.map((c) => c.name);
  expect(names.filter((n, i) => names.indexOf(n) !== i)).toEqual([]);
});

describe.each(CHECKS.map((check) => ({ code: check.code, name: check.name, check })))('$code $name', ({ check }) => {
  test('says what, why and from where', () => {
    expect(check.name).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(check.title).toMatch(/^[A-Z].*\.$/);
    expect(check.why).toMatch(/^[A-Z].*\.$/);
    expect(check.why).not.toBe(check.title);
    expect(check.sources.length).toBeGreaterThan(0);
  });

  test('the bad example gives exactly the marked diagnostics', () => {
    const { diagnostics, marks, textOf } = runExample(check.example.bad, check.example.disk);
    const expected = [
      ...marks.map((m) => `${check.code} ${EXAMPLE_FOLDER}/${m.relative} ${m.start} ${m.end}`),
      ...(check.example.badFiles ?? []).map((file) => `${check.code} ${EXAMPLE_FOLDER}/${file} 0 0`),
    ];
    const found = diagnostics.map((d) => `${d.code} ${d.range.file} ${d.range.start} ${d.range.end}`);
    expect(expected.length).toBeGreaterThan(0);
    expect(found.sort(), renderFull(diagnostics, textOf)).toEqual(expected.sort());
    for (const d of diagnostics) {
      expect(d.severity).toBe(check.severity);
      expect(d.message, 'lower case, no full stop').toMatch(/^(?![A-Z][a-z]).*[^.]$/su);
      expect(d.hint ?? '', 'says what to do').not.toBe('');
    }
  });

  test('the good example gives none', () => {
    const { diagnostics, textOf } = runExample(check.example.good ?? []);
    expect(renderFull(diagnostics, textOf)).toBe('');
  });
});
