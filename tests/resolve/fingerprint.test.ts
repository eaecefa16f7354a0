/** The digest of a card's content against `JSON.stringify`, which it stands for. */

import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { digest, fingerprintOf, jsonWithoutPlaces } from '../../src/resolve/fingerprint.ts';
import { FULL_SHOP } from '../fixtures/full-joint.ts';
import { compileMini } from '../fixtures/mini-shop.ts';

const reference = (value: unknown): string =>
  JSON.stringify(value, (key, v: unknown) => (key === 'range' || key === 'ranges' ? undefined : v)) ?? 'null';

test('any plain data is written as JSON.stringify writes it, without its places', () => {
  const { tree } = fc.letrec<{ tree: unknown; leaf: unknown; map: unknown }>((tie) => ({
    leaf: fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.double(),
      fc.integer(),
      fc.boolean(),
      fc.constantFrom(null, undefined, -0, Number.NaN, '\ud800', '"', '\\', '\u2028', 'N·m'),
    ),
    map: fc.dictionary(
      fc.oneof(fc.string(), fc.constantFrom('range', 'ranges', 'rounds', 'sequence', '"k"')),
      tie('tree'),
    ),
    tree: fc.oneof({ depthSize: 'small' }, tie('leaf'), fc.array(tie('tree')), tie('map')),
  }));
  fc.assert(
    fc.property(tree, (value) => {
      expect(jsonWithoutPlaces(value)).toBe(reference(value));
    }),
    { numRuns: 2000 },
  );
});

test('the variants of a shop with every kind of joint, twice over', () => {
  const { resolved } = compileMini({ ...FULL_SHOP });
  expect(resolved.documents.length).toBeGreaterThan(0);
  for (const round of [1, 2]) {
    for (const value of [...resolved.documents, ...resolved.machines]) {
      expect(jsonWithoutPlaces({ round, value })).toBe(reference({ round, value }));
    }
  }
});

test('a fingerprint is the first eight digits of the SHA-256 of that JSON', () => {
  expect(fingerprintOf(digest({ a: 1, range: 2 }))).toBe(
    createHash('sha256').update('{"a":1}').digest('hex').slice(0, 8).toUpperCase(),
  );
  expect(digest({ a: 1 })).not.toBe(digest({ a: 2 }));
});
