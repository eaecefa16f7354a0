/** Snapshots of every format that was ever written are still read and printed; those of a later one are refused by name. */

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { canonical } from '../../src/control/canonical.ts';
import { freeze, SNAPSHOT_FORMAT, shopOf, thaw } from '../../src/control/snapshot.ts';
import { collector, renderFull } from '../../src/diagnostics/index.ts';
import { layoutCard } from '../../src/layout/card/index.ts';
import { loadFaces } from '../../src/layout/type/index.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { compileMini } from '../fixtures/mini-shop.ts';
import { append, check, frozenMini, history, issueAct, withLedger } from './history.ts';

const FOLDER = path.resolve(import.meta.dirname, '..', 'fixtures', 'snapshots', 'data');
const FORMATS = Array.from({ length: SNAPSHOT_FORMAT }, (_, i) => i + 1);

/** Every text in a laid-out card. */
function texts(value: unknown): readonly string[] {
  if (Array.isArray(value)) return value.flatMap(texts);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    key === 'text' && typeof inner === 'string' ? [inner] : texts(inner),
  );
}

test('one file is kept for every format', () => {
  expect(readdirSync(FOLDER).filter((f) => f.endsWith('.json'))).toEqual(FORMATS.map((n) => `format-${n}.json`));
});

describe.each(FORMATS)('format %i', (format) => {
  const text = readFileSync(path.join(FOLDER, `format-${format}.json`), 'utf8');

  test('is read whole', () => {
    expect(`${canonical(JSON.parse(text))}\n`).toBe(text);
    const snapshot = thaw(text, 'issued/MW-1/A.json');
    expect(snapshot).toMatchObject({
      format,
      engine: '0.1.0',
      machine: { name: 'pump' },
      document: {
        doc: 'MW-1',
        title: 'Renew the cover gasket',
        revision: { rev: 'A', author: 'ada', approver: 'ben' },
      },
    });
    expect(snapshot?.document.variants.map((v) => `${v.label} ${v.stepCount}`)).toEqual(['Small 14', 'Large 16']);
  });

  test('is laid out as its cards, with its numbers', () => {
    const snapshot = thaw(text, 'issued/MW-1/A.json');
    if (snapshot === undefined) throw new Error('not read');
    const { report, list } = collector(CATALOGUE);
    // Whatever the registers say by now, the card says what was issued.
    const now = compileMini({
      'shop.yaml': (t) => t.replace('Mini Works', 'Other Works'),
      'tools.yaml': (t) => t.replace('24 mm socket', '24 mm impact socket'),
      'machines/pump.yaml': (t) => t.replace('torque: 160 N·m', 'torque: 155 N·m'),
    }).resolved;
    const shop = shopOf(snapshot, now);
    for (const variant of snapshot.document.variants) {
      const card = layoutCard(shop, snapshot.document, variant, loadFaces(), report);
      const words = texts(card).join(' ').replace(/\s+/g, ' ');
      expect(card.sides.length).toBeGreaterThanOrEqual(2);
      for (const said of [
        'MW-1',
        'Mini Works',
        '160 N·m',
        '24 mm socket',
        'Trapped water scalds the hands',
        variant.fingerprint,
      ]) {
        expect(words).toContain(said);
      }
      expect(words).not.toMatch(/155 N·m|impact|Other Works/);
    }
    expect(renderFull(list(), () => undefined)).toBe('');
  });
});

test('the present format is what its kept file says', () => {
  const kept: unknown = JSON.parse(readFileSync(path.join(FOLDER, `format-${SNAPSHOT_FORMAT}.json`), 'utf8'));
  const now: unknown = JSON.parse(frozenMini());
  // Keys that come or go are another format; what the example shop says may change.
  expect(keysOf(now)).toEqual(keysOf(kept));
});

/** Every key with its path, list positions aside. */
function keysOf(value: unknown, at = ''): readonly string[] {
  const all = (inner: unknown, here: string): readonly string[] => {
    if (Array.isArray(inner)) return inner.flatMap((i) => all(i, `${here}[]`));
    if (typeof inner !== 'object' || inner === null) return [here];
    return Object.entries(inner).flatMap(([key, next]) => all(next, `${here}.${key}`));
  };
  return [...new Set(all(value, at))].sort();
}

describe('a later format', () => {
  const later = `${canonical({ ...JSON.parse(frozenMini()), format: 99, engine: '7.0.0' })}\n`;

  test('is not guessed at', () => {
    expect(thaw(later, 'x')).toBeUndefined();
  });

  test('is told with the version that wrote it', () => {
    const { entries, files } = history();
    const act = issueAct('MW-4', 'A', later, { approved: '2026-02-07', effective: '2026-02-07' });
    const list = append(
      entries,
      '2026-02-07',
      { ...act, snapshot: { ...act.snapshot, format: 99, engine: '7.0.0' } },
      'ben',
    );
    const { said, found } = check(withLedger(new Map(files).set('issued/MW-4/A.json', later), list));
    expect(said).toEqual([
      'LDG011 issued/ledger.jsonl:10 the snapshot of MW-4 Rev A has the format 99, written by version 7.0.0, and this version does not know it',
    ]);
    expect(found[0]?.hint).toBe('build with the version that wrote it, or a later one');
  });
});

test('what is thawed freezes to the same bytes', () => {
  const { resolved } = compileMini();
  const text = frozenMini();
  const snapshot = thaw(text, 'x');
  if (snapshot === undefined) throw new Error('not read');
  const again = freeze(shopOf(snapshot, resolved), snapshot.document, snapshot.engine);
  const drop = (t: string): unknown => {
    const { tools: _tools, info: _info, ...rest } = JSON.parse(t);
    return rest.document;
  };
  expect(drop(again)).toEqual(drop(text));
});
