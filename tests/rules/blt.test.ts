/** Orders that are asked for, and flanges of two forms: told and not told. */

import { describe, expect, test } from 'vitest';
import { FLANGES } from '../../src/fasteners/index.ts';
import { added, ONE_FORM, PATTERN, PUMP, put, told } from './told.ts';

const pattern = (yaml: string) => put(PUMP, PATTERN, `    pattern: ${yaml}\n`);

describe('BLT008', () => {
  test.each([
    ['{ circle: 240 mm, count: 3 }', 'in turn', 0],
    ['{ circle: 240 mm, count: 4 }', 'in turn', 1],
    ['{ circle: 240 mm, count: 7 }', 'in turn', 1],
    ['{ circle: 240 mm, count: 8 }', 'cross', 0],
    ['{ arc: 600 mm, count: 5, span: 120 deg }', 'in turn', 1],
    ['{ arc: 600 mm, count: 5, span: 120 deg }', 'spiral', 0],
    ['{ rectangle: [300 mm, 200 mm], along: 3, across: 3 }', 'in turn', 1],
    ['{ points: [[0 mm, 0 mm], [80 mm, 0 mm], [0 mm, 80 mm]] }', 'in turn', 0],
  ])('%s %s', (yaml, method, count) => {
    const found = told('BLT008', ONE_FORM, pattern(yaml), added(`sequence: { method: ${method} }`));
    expect(found.map((t) => t.at)).toEqual(Array.from({ length: count }, () => 'in turn'));
  });

  test('the usual order is not asked for, and is not told', () => {
    expect(told('BLT008', added('sequence: { tools: 2 }'))).toEqual([]);
  });
});

describe('BLT009', () => {
  const flange = (note?: string, count = 8) => [
    ONE_FORM,
    pattern(`{ circle: 145 mm, count: ${count}, first: ${180 / count} deg }`),
    added('flange: EN 1092-1 DN 65 PN 16', ...(note === undefined ? [] : [`note: ${note}`])),
  ];

  test('DN 65 in PN 10 and PN 16 alone has two forms (EN 1092-1:2018)', () => {
    const two = FLANGES.filter((f) => f.alternatives !== undefined).map((f) => f.designation);
    expect(two).toEqual(['EN 1092-1 DN 65 PN 10', 'EN 1092-1 DN 65 PN 16']);
  });

  test.each([
    [undefined, 8, 1],
    [undefined, 4, 1],
    ['8 holes, counted on the pipe', 8, 0],
    ['The flange on the pipe has eight bolts.', 8, 0],
    ['4 holes, older flange', 4, 0],
    ['8 holes, counted on the pipe', 4, 1],
    ['Counted on the pipe', 8, 1],
    ['18 holes in the blank', 8, 1],
  ])('note %s with %d bolts', (note, count, times) => {
    expect(told('BLT009', ...flange(note, count))).toHaveLength(times);
  });

  test('another count is the fault of the pattern alone', () => {
    expect(told('BLT009', ...flange(undefined, 6))).toEqual([]);
    expect(told('BLT006', ...flange(undefined, 6))).toHaveLength(1);
  });
});
