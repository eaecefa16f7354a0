/** Acceptance limits as authors write them. */

import { describe, expect, test } from 'vitest';
import { formatLimit, NO_BREAK_SPACE, parseLimit } from '../../src/units/index.ts';

const plain = (text: string) => text.replaceAll(NO_BREAK_SPACE, ' ');

describe('parseLimit reads', () => {
  test.each([
    ['0 to 0.10 mm', '0 to 0.10 mm'],
    ['0.05 mm to 0.10 mm', '0.05 to 0.10 mm'],
    ['at most 0.05 mm', 'at most 0.05 mm'],
    ['At least 3 mm', 'at least 3 mm'],
    ['12.0 ± 0.2 mm', '11.8 to 12.2 mm'],
    ['12.0 +/- 0.2 mm', '11.8 to 12.2 mm'],
    ['12 ± 0.05 mm', '11.95 to 12.05 mm'],
    ['1/2 ± 1/16 in', '0.4375 to 0.5625 in'],
    ['1/16 to 1/8 in', '1/16 to 1/8 in'],
    ['-5 to 5 mm', '\u22125 to 5 mm'],
    ['3 to 3 mm', '3 to 3 mm'],
  ])('%s as %s', (text, printed) => {
    const parsed = parseLimit(text, 'length');
    expect(parsed.ok ? plain(formatLimit(parsed.value)) : parsed.problem).toBe(printed);
  });
});

describe('parseLimit refuses', () => {
  test.each([
    ['0.2 to 0.1 mm', /runs backwards/],
    ['5 mm', /is not a limit/],
    ['at most', /is not a limit/],
    ['12 ± -0.2 mm', /negative deviation/],
    ['10 mm to 1 in', /mixes units/],
    ['1 in ± 0.5 mm', /mixes units/],
    ['15 to 25 N·m', /is a torque/],
    ['0 to 5', /has no unit/],
    ['', /is not a limit/],
  ])('%s', (text, problem) => {
    const parsed = parseLimit(text, 'length');
    expect(parsed.ok ? 'read' : parsed.problem).toMatch(problem);
  });
});
