/** What the hand does to a file: keys, items and words go and come where they should, and the lines are told. */

import { describe, expect, test } from 'vitest';
import { isMap, parseDocument } from 'yaml';
import {
  away,
  exchanged,
  itemAway,
  itemLines,
  keyAway,
  over,
  slip,
  written,
} from '../../scripts/bench/mutations/edit.ts';
import { listAt, mapAt, scalarAt, sheetOf } from '../../scripts/bench/mutations/sheet.ts';
import { mistyped, moved, transposed } from '../../scripts/bench/mutations/typing.ts';
import { seeded } from '../../scripts/bench/random.ts';

const TEXT = `steps:
  - do: Open it.
    remove: { cover: reuse, gasket: discard }
    with: [hammer, drift]
  - do: >-
      Close it
      again.
    fit:
      - cover
      - gasket
`;
const sheet = sheetOf('procedures/x.yaml', TEXT);
const steps = listAt(sheet.root, 'steps');
const step = (i: number) => {
  const map = steps?.items[i];
  if (!isMap(map)) throw new RangeError(`no step ${i}`);
  return map;
};
const read = (text: string | undefined) => parseDocument(text ?? '').toJS();

describe('losing', () => {
  test('a key of a block map', () => {
    const made = slip(sheet, away(keyAway(sheet, step(0), 'remove')));
    expect(read(made?.text).steps[0]).toEqual({ do: 'Open it.', with: ['hammer', 'drift'] });
    expect(made?.lines).toEqual([[3, 3]]);
  });

  test('the first key, which stands beside the dash', () => {
    expect(read(slip(sheet, away(keyAway(sheet, step(0), 'do')))?.text).steps[0]).toEqual({
      remove: { cover: 'reuse', gasket: 'discard' },
      with: ['hammer', 'drift'],
    });
  });

  test.each([
    ['cover', { gasket: 'discard' }],
    ['gasket', { cover: 'reuse' }],
  ])('%s from a flow map', (key, left) => {
    const map = mapAt(step(0), 'remove');
    const made = map === undefined ? undefined : slip(sheet, away(keyAway(sheet, map, key)));
    expect(read(made?.text).steps[0].remove).toEqual(left);
  });

  test.each([
    [0, 'with', 0, ['drift']],
    [0, 'with', 1, ['hammer']],
    [1, 'fit', 0, ['gasket']],
    [1, 'fit', 1, ['cover']],
  ])('step %i, %s, item %i', (i, key, at, left) => {
    const list = listAt(step(i), key);
    const made = list === undefined ? undefined : slip(sheet, away(itemAway(sheet, list, at)));
    expect(read(made?.text).steps[i][key]).toEqual(left);
  });
});

test('two steps change places whole', () => {
  const made = slip(sheet, exchanged(sheet, itemLines(sheet, step(0)), itemLines(sheet, step(1))));
  expect(read(made?.text).steps).toEqual([...read(TEXT).steps].reverse());
  expect(made?.lines).toEqual([
    [2, 7],
    [8, 10],
  ]);
});

test('words typed over a folded text stand in one line', () => {
  const scalar = scalarAt(step(1), 'do');
  const made = scalar === undefined ? undefined : slip(sheet, [over(sheet, scalar, 'Close: it, "now"')]);
  expect(read(made?.text).steps[1].do).toBe('Close: it, "now"');
  expect(read(made?.text).steps[1].fit).toEqual(['cover', 'gasket']);
});

test('what changes nothing is no mistake', () => {
  const scalar = scalarAt(step(0), 'do');
  expect(scalar === undefined ? undefined : slip(sheet, [over(sheet, scalar, 'Open it.')])).toBeUndefined();
  expect(slip(sheet, [])).toBeUndefined();
});

test.each(['8.8', 'true', 'a: b', 'a, b', '[a]', '# a', 'plain words', '<part:x> off', "'"])('%s survives', (value) => {
  expect(read(`a: [${written(value)}]`).a).toEqual([value]);
});

describe('fingers', () => {
  test.each([
    ['135', 1, '1350'],
    ['135', -1, '13.5'],
    ['0.05', 1, '0.5'],
    ['6.0', -1, '0.6'],
    ['1.5', 1, '15'],
  ] as const)('%s moved by %i is %s', (number, by, made) => expect(moved(number, by)).toBe(made));

  test('two figures change places, or nothing does', () => {
    expect(transposed(seeded(1), '44')).toBeUndefined();
    expect(['315', '153']).toContain(transposed(seeded(1), '135'));
  });

  test('a mistyped word is never the word, and differs by two letters at most', () => {
    const random = seeded(7);
    for (let i = 0; i < 500; i += 1) {
      const word = random.pick(['gasket', 'wire-brush', 'socket-24', 'a', 'oo']);
      const made = mistyped(random, word);
      expect(made).not.toBe(word);
      expect(Math.abs(made.length - word.length)).toBeLessThanOrEqual(1);
    }
  });
});
