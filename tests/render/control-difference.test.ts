/** Marks between two texts: nothing of either text is lost, and what is left unmarked is the same in both. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changeGroups } from '../../src/render/html/control/change-groups.ts';
import { markDifference } from '../../src/render/html/control/difference.ts';
import { COMPARISON } from './control-samples.ts';

const plain = (html: string) =>
  html
    .replaceAll(/<\/?(?:del|ins)>/gu, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');
const unmarked = (html: string) =>
  html
    .replaceAll(/<(del|ins)>[\s\S]*?<\/\1>/gu, ' ')
    .split(/\s+/u)
    .filter((w) => w !== '');

const text = fc.array(fc.constantFrom('turn', 'the', 'cover', 'by', '<b>', '95 N·m,', 'a & b', '  '), {
  maxLength: 14,
});

test('both texts are kept, and share what is unmarked', () => {
  fc.assert(
    fc.property(text, text, (a, b) => {
      const [before, after] = [a.join(' '), b.join(' ')];
      const marked = markDifference(before, after);
      expect(plain(marked.before)).toBe(before);
      expect(plain(marked.after)).toBe(after);
      if (marked.before.includes('<del>') || marked.after.includes('<ins>'))
        expect(unmarked(marked.before)).toEqual(unmarked(marked.after));
    }),
  );
});

test('the same text has no mark, texts with little in common have none either, nor have very long ones', () => {
  expect(markDifference('turn it by half', 'turn it by half')).toEqual({
    before: 'turn it by half',
    after: 'turn it by half',
  });
  expect(markDifference('Steel rule', 'Depth gauge')).toEqual({ before: 'Steel rule', after: 'Depth gauge' });
  const long = 'word '.repeat(401);
  expect(markDifference(long, `${long}more`).after).not.toContain('<ins>');
});

test('every change stands in exactly one group', () => {
  const grouped = changeGroups(COMPARISON.changes).flatMap((g) => g.changes);
  expect(grouped).toHaveLength(COMPARISON.changes.length);
  expect(new Set(grouped)).toEqual(new Set(COMPARISON.changes));
});
