/** Serial numbers: the card they take, and a plain answer for those that take none. Invented ranges. */

import { expect, test } from 'vitest';
import { answerSerial, rangesText } from '../../src/site/serials.ts';

const RANGES = [
  { from: 1201, to: 1236, label: 'Small', page: 'small/' },
  { from: 1237, to: 1290, label: 'Large', page: 'large/' },
  { from: 1400, to: 1400, label: 'Left hand' },
];

test.each([
  ['1201', 'small/'],
  ['1236', 'small/'],
  ['1237', 'large/'],
  ['001290', 'large/'],
  [' CL-1250 ', 'large/'],
])('%s takes a card', (written, page) => {
  expect(answerSerial(written, RANGES)).toMatchObject({ kind: 'card', page });
});

test.each([
  ['1200', 'outside every range of this machine (1201 to 1290, 1400)'],
  ['1291', 'No card here holds for it: stop'],
  ['1400', 'Left hand. This document has no card for it'],
  ['12x1', 'is not a serial number'],
  ['99999999999999', 'is not a serial number'],
])('%s takes none', (written, words) => {
  const answer = answerSerial(written, RANGES);
  expect(answer?.kind).toBe('none');
  expect(answer?.text).toContain(words);
});

test('nothing typed, nothing said', () => {
  expect(answerSerial('  ', RANGES)).toBeUndefined();
  expect(rangesText([])).toBe('');
});
