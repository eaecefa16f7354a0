/** The forms in which diagnostics are printed. */

import { expect, test } from 'vitest';
import {
  collector,
  didYouMean,
  lineStarts,
  placeOf,
  renderFull,
  renderJson,
  renderShort,
} from '../../src/diagnostics/index.ts';
import { CATALOGUE } from '../../src/rules/index.ts';

const TEXT = 'a: 1\r\nconsumable: antisieze\nb: 2\n';

function one() {
  const { report, list } = collector(CATALOGUE);
  report('REF002', { file: 'content/x.yaml', start: 18, end: 27 }, 'consumable `antisieze` is not in the register', {
    label: 'used by step 12',
    hint: 'did you mean `antiseize`?',
  });
  return list();
}

test('in full: headline, place, excerpt with caret and label, hint', () => {
  expect(renderFull(one(), () => TEXT)).toBe(
    [
      'error REF002 undefined-consumable: consumable `antisieze` is not in the register',
      '  content/x.yaml:2:13',
      '  |',
      '2 | consumable: antisieze',
      '  |             ^^^^^^^^^ used by step 12',
      '  hint: did you mean `antiseize`?',
      '',
    ].join('\n'),
  );
});

test('one line, and JSON with the agreed keys', () => {
  expect(renderShort(one(), () => TEXT)).toBe(
    'content/x.yaml:2:13: error REF002: consumable `antisieze` is not in the register (did you mean `antiseize`?)\n',
  );
  expect(JSON.parse(renderJson(one(), () => TEXT))).toEqual([
    {
      code: 'REF002',
      name: 'undefined-consumable',
      severity: 'error',
      message: 'consumable `antisieze` is not in the register',
      file: 'content/x.yaml',
      line: 2,
      column: 13,
      hint: 'did you mean `antiseize`?',
      related: [],
    },
  ]);
  expect(renderJson([], () => TEXT)).toBe('[]\n');
});

test('a long line is cut around its column, and the caret stays under the fault', () => {
  const long = `${'x'.repeat(300)}FAULT${'y'.repeat(300)}`;
  const { report, list } = collector(CATALOGUE);
  report('FLD004', { file: 'f', start: 300, end: 305 }, 'm');
  const [, , , row = '', caret = ''] = renderFull(list(), () => long).split('\n');
  expect(row.length).toBeLessThan(120);
  expect(row.slice(caret.indexOf('^'), caret.lastIndexOf('^') + 1)).toBe('FAULT');
});

test('control characters of content never reach the terminal', () => {
  const { report, list } = collector(CATALOGUE);
  report('FLD004', { file: 'f', start: 0, end: 1 }, 'bad \u001b[31m text \u202e');
  const shown = renderFull(list(), () => '\u001b[2J x');
  expect(shown).toContain('\ufffd[31m text');
  expect(shown.includes('\u001b') || shown.includes('\u202e')).toBe(false);
});

test('lines and columns count from one with every kind of line end', () => {
  const starts = lineStarts('a\nb\r\nc\rd');
  expect(starts).toEqual([0, 2, 5, 7]);
  expect(placeOf(starts, 5)).toEqual({ line: 3, column: 1 });
  expect(placeOf(starts, 99)).toEqual({ line: 4, column: 93 });
});

test('the same fault at the same place is kept once', () => {
  const { report, list } = collector(CATALOGUE);
  for (let i = 0; i < 3; i++) report('REF001', { file: 'f', start: 1, end: 2 }, 'same');
  expect(list()).toHaveLength(1);
});

test('did you mean: slips of the hand and renamed ids, and nothing far-fetched', () => {
  expect(didYouMean('sokcet-24', ['socket-24', 'socket-27'])).toBe('did you mean `socket-24`?');
  expect(didYouMean('torque-wrench-200', ['torque-wrench-40-200', 'hammer'])).toBe(
    'did you mean `torque-wrench-40-200`?',
  );
  expect(didYouMean('hammer', ['feeler-gauge'])).toBeUndefined();
});
