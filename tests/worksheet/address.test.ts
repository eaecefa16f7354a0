/** The worksheet in its address: short, whole, and harmless whatever it says. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeInputs, encodeInputs } from '../../src/site/client/worksheet/address.ts';
import { computeWorksheet } from '../../src/site/client/worksheet/compute.ts';
import { FIELD_LIST, INITIAL, type Inputs, inputsFrom, isAsked } from '../../src/site/client/worksheet/fields.ts';

const HOSTILE = '<img src=x onerror="window.hit=1"><script>window.hit=1</script>';

/** Text as it may be typed, of the length that a field takes. */
const typed = fc.string({ unit: 'grapheme', maxLength: 30 }).filter((t) => !/[·.]/u.test(t) && t.length <= 80);

function anyInputs(): fc.Arbitrary<Inputs> {
  return fc
    .tuple(...FIELD_LIST.map((f) => (f.options === undefined ? typed : fc.constantFrom(...f.options.map((o) => o.id)))))
    .map((values) => {
      const texts = new Map(FIELD_LIST.map((f, i) => [f.key, values[i] ?? '']));
      return inputsFrom((key) => texts.get(key) ?? '');
    });
}

describe('the address', () => {
  test('of a fresh worksheet is empty', () => {
    expect(encodeInputs(INITIAL)).toBe('');
    expect(decodeInputs('')).toEqual({ inputs: INITIAL, faults: [] });
  });

  test('is short, in plain words, and holds only what differs', () => {
    const inputs = {
      ...INITIAL,
      n: '12',
      circle: '240 mm',
      thread: '5/8-11 UNC',
      grade: 'SAE 5',
      wrench: '20 to 100 N·m',
    };
    expect(encodeInputs(inputs)).toBe('thread=5/8-11+UNC&grade=SAE+5&n=12&circle=240+mm&wrench=20+to+100+N.m');
    expect(decodeInputs(`?${encodeInputs(inputs)}`)).toEqual({ inputs, faults: [] });
  });

  test('leaves out the fields of other patterns', () => {
    expect(encodeInputs({ ...INITIAL, pattern: 'rectangle', n: '77', along: '6' })).toBe('pattern=rectangle&along=6');
  });

  test('brings back whatever was typed, for every field that the pattern asks for', () => {
    fc.assert(
      fc.property(anyInputs(), (inputs) => {
        const { inputs: read, faults } = decodeInputs(encodeInputs(inputs));
        expect(faults).toEqual([]);
        for (const { key } of FIELD_LIST) {
          if (isAsked(key, inputs.pattern)) expect(read[key]).toBe(inputs[key].toWellFormed());
        }
      }),
      { numRuns: 300 },
    );
  });

  test('that is broken or hostile becomes faults and never a throw', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (query) => {
        const { inputs } = decodeInputs(query);
        expect(Array.isArray(computeWorksheet(inputs).faults)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  test.each([
    ['an unknown name', `evil=1&${encodeURIComponent(HOSTILE)}=1`, undefined, /no field of the worksheet/],
    ['an unknown choice', `head=${encodeURIComponent(HOSTILE)}`, 'head', /is no choice for `Head`/],
    ['a value twice', 'n=8&n=9', 'n', /more than once/],
    ['a text without end', `thread=${'9'.repeat(5000)}`, 'thread', /5000 characters/],
    ['a name of the language', '__proto__=1&constructor=2&toString=3', undefined, /no field of the worksheet/],
  ])('%s is named', (_what, query, field, problem) => {
    const { faults, inputs } = decodeInputs(query);
    expect(faults.length).toBeGreaterThan(0);
    expect(faults[0]?.field).toBe(field);
    expect(faults[0]?.problem).toMatch(problem);
    expect(computeWorksheet(inputs).read.tightening).toBeDefined();
  });
});
