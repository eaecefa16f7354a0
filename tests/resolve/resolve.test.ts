/** Resolving: variants, numbering, references, totals, joints of each variant. */

import { describe, expect, test } from 'vitest';
import type { Prose } from '../../src/resolve/index.ts';
import { compileMini } from '../fixtures/mini-shop.ts';

const words = (prose: Prose | undefined) => (prose ?? []).flatMap((p) => p.runs.map((r) => r.text)).join('');

describe('a procedure with two variants', () => {
  const { resolved: shop } = compileMini();
  const [document] = shop.documents;
  const [small, large] = document?.variants ?? [];

  test('makes one card for each, with its own address in capitals', () => {
    expect(document?.variants.map((v) => [v.key, v.label, v.cardName])).toEqual([
      ['small', 'Small', 'MW-1-SMALL'],
      ['large', 'Large', 'MW-1-LARGE'],
    ]);
    expect(small?.address).toBe('HTTPS://BINDER.MINI.EXAMPLE/C/MW-1/A/SMALL/');
    expect(small?.path).toBe('C/MW-1/A/SMALL');
    expect([small?.serials, large?.serials]).toEqual([['1 to 50'], ['51 to 99']]);
  });

  test('numbers the steps through shared stages, and leaves out those of other variants', () => {
    expect(small?.stages.map((s) => [s.title, s.steps.map((x) => x.number)])).toEqual([
      ['Isolate', [1, 2, 3, 4]],
      ['Open', [5, 6]],
      ['Close', [7, 8, 9, 10]],
      ['Close out', [11, 12, 13, 14]],
    ]);
    expect(large?.stepCount).toBe(16);
  });

  test('prints the names of references, and step numbers of this variant', () => {
    expect(words(small?.stages[0]?.steps[0]?.text)).toBe('Lock the switch with padlock.');
    expect(words(large?.stages[2]?.steps[3]?.text)).toBe('When step\u00a01 is done, tighten the cover joint.');
  });

  test('plans the joint of each variant from one entry', () => {
    expect([small, large].map((v) => [v?.joints[0]?.count, v?.joints[0]?.holes.length])).toEqual([
      [8, 8],
      [12, 12],
    ]);
    expect(small?.joints[0]?.rounds.map((r) => [r.number, r.torque.value, r.pass])).toEqual([
      [1, 48, 'sequence'],
      [2, 112, 'sequence'],
      [3, 160, 'sequence'],
      [4, 160, 'circular'],
    ]);
  });

  test('draws up tools, consumables and parts with counts, fates and steps', () => {
    expect(large?.parts.map((p) => [p.id, p.quantity, p.fate, p.steps])).toEqual([
      ['cover', 1, 'reuse', [6, 10]],
      ['gasket', 1, 'discard', [6, 10]],
      ['screw', 12, 'inspect', [6, 11]],
      ['plug', 1, 'reuse', [7, 9]],
    ]);
    expect(small?.tools.map((t) => t.id)).toEqual(['lock', 'wrench-40-200', 'socket-24', 'feeler', 'gauge', 'hoist']);
    expect(small?.consumables.map((c) => c.id)).toEqual(['wipe', 'oil']);
    expect(small?.ppe).toEqual(['gloves', 'eye protection']);
  });

  test('knows where everything is used', () => {
    expect(shop.whereUsed.tools['feeler']?.map((u) => [u.doc, u.variantKey, u.steps])).toEqual([
      ['MW-1', 'small', [10]],
      ['MW-1', 'large', [12]],
    ]);
    expect(shop.whereUsed.joints['pump/cover']?.[0]?.steps).toEqual([5, 9]);
  });
});

describe('a joint', () => {
  test('without a stated torque is set down to a mark of the wrench and never above the share asked for', () => {
    const { resolved } = compileMini({
      'machines/pump.yaml': (t) =>
        t.replace('    torque: 160 N·m\n    source: { document: Pump manual, edition: "3", place: page 12 }\n', ''),
    });
    const plan = resolved.documents[0]?.variants[0]?.joints[0];
    expect(plan?.origin).toBe('computed');
    expect(Number.isInteger(plan?.target.value)).toBe(true);
    expect(plan?.result.preloadShare.nominal).toBeLessThanOrEqual(0.7 + 1e-12);
    expect(plan?.result.preloadShare.nominal).toBeGreaterThan(0.69);
  });

  test('stated in another unit than the wrench reads is shown in the unit of the wrench', () => {
    const { resolved, diagnostics } = compileMini({
      'machines/pump.yaml': (t) => t.replace('torque: 160 N·m', 'torque: 118 lbf·ft'),
    });
    const plan = resolved.documents[0]?.variants[0]?.joints[0];
    expect(diagnostics).toEqual([]);
    expect([plan?.target.unit, plan?.target.value.toFixed(0), plan?.targetSecond.unit]).toEqual([
      'N·m',
      '160',
      'lbf·ft',
    ]);
  });
});

test('the fingerprint follows what the card says, and nothing else', () => {
  const print = (c: ReturnType<typeof compileMini>) => c.resolved.documents[0]?.variants[0]?.fingerprint;
  const base = print(compileMini());
  const comment = print(compileMini({ 'procedures/mw-1.yaml': (t) => `# a comment\n\n${t}` }));
  const torque = print(compileMini({ 'machines/pump.yaml': (t) => t.replace('torque: 160 N·m', 'torque: 161 N·m') }));
  const name = print(compileMini({ 'tools.yaml': (t) => t.replace('name: padlock', 'name: red padlock') }));
  expect(comment).toBe(base);
  expect(new Set([base, torque, name]).size).toBe(3);
});

test('text that looks like markup stays text', () => {
  const { resolved, diagnostics } = compileMini({
    'procedures/mw-1.yaml': (t) =>
      t.replace('do: Measure the gap.', "do: 'Measure <b>now</b> <script>alert(1)</script>.'"),
  });
  expect(diagnostics).toEqual([]);
  expect(words(resolved.documents[0]?.variants[0]?.stages[2]?.steps.at(-1)?.text)).toBe(
    'Measure <b>now</b> <script>alert(1)</script>.',
  );
});

test('an address below a folder keeps the letters of the folder, which a static host tells apart', () => {
  const { resolved, diagnostics } = compileMini({
    'shop.yaml': (t) => t.replace('https://binder.mini.example/', 'https://mini.example/binder'),
  });
  expect(diagnostics).toEqual([]);
  expect(resolved.info.basePath).toBe('/binder/');
  expect(resolved.documents[0]?.variants[0]?.address).toBe('HTTPS://MINI.EXAMPLE/binder/C/MW-1/A/SMALL/');
});
