/** The demo shop: sound, as large and as varied as it is meant to be, and caught at every place when something is renamed. */

import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { placer, renderFull } from '../../src/diagnostics/index.ts';
import { compileShop } from '../../src/pipeline/index.ts';

const CONTENT = path.resolve(import.meta.dirname, '..', '..', 'content');
const demo = compileShop({ folder: CONTENT, shown: 'content' });
const { resolved: shop } = demo;
const plans = shop.machines.flatMap((m) => m.joints.map((j) => j.plan));

/** The demo with one file changed, compiled. */
function changed(file: string, change: (text: string) => string): ReturnType<typeof compileShop> {
  const folder = mkdtempSync(path.join(tmpdir(), 'demo-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  cpSync(CONTENT, folder, { recursive: true });
  const before = readFileSync(path.join(folder, file), 'utf8');
  const after = change(before);
  expect(after).not.toBe(before);
  writeFileSync(path.join(folder, file), after);
  return compileShop({ folder, shown: 'content' });
}

function places(compiled: ReturnType<typeof compileShop>, code: string): string[] {
  const place = placer(compiled.textOf);
  return compiled.diagnostics
    .filter((d) => d.code === code)
    .map((d) => `${d.range.file}:${place(d.range).line}:${place(d.range).column}`)
    .sort();
}

/** Every place where the content names the id, found by reading the files as text. */
function mentions(id: string, scheme: string, keys: string): string[] {
  const found: string[] = [];
  for (const folder of ['machines', 'procedures', 'stages']) {
    for (const name of readdirSync(path.join(CONTENT, folder))) {
      const lines = readFileSync(path.join(CONTENT, folder, name), 'utf8').split('\n');
      lines.forEach((line, i) => {
        for (const m of line.matchAll(new RegExp(`(?<![\\w-])${id}(?![\\w-])`, 'g'))) {
          const before = line.slice(0, m.index);
          const at = before.endsWith(`${scheme}:`)
            ? m.index - scheme.length
            : /[:]$/.test(before)
              ? undefined
              : m.index + 1;
          const isKey = new RegExp(`(?:^|[\\s{,])(?:${keys}): (?:\\[[^\\]]*|\\{[^}]*)?$`).test(before);
          if (before.endsWith(`${scheme}:`)) found.push(`content/${folder}/${name}:${i + 1}:${at}`);
          else if (isKey) found.push(`content/${folder}/${name}:${i + 1}:${at}`);
        }
      });
    }
  }
  return found.sort();
}

describe('the demo shop', () => {
  test('has no faults and no warnings', () => {
    expect(renderFull(demo.diagnostics, demo.textOf)).toBe('');
    expect(demo.checked).toBeDefined();
  });

  test('is as large as a real binder', () => {
    expect(shop.documents.length).toBeGreaterThanOrEqual(12);
    expect(shop.machines.length).toBeGreaterThanOrEqual(9);
    expect(shop.benches.length).toBeGreaterThanOrEqual(6);
    expect(shop.tools.length).toBeGreaterThanOrEqual(60);
    expect(shop.consumables.length).toBeGreaterThanOrEqual(25);
    expect(shop.documents.filter((d) => d.variants.length >= 2).length).toBeGreaterThanOrEqual(2);
    for (const d of shop.documents) {
      for (const v of d.variants) {
        expect(v.stepCount, v.cardName).toBeGreaterThanOrEqual(15);
        expect(v.stepCount, v.cardName).toBeLessThanOrEqual(45);
      }
    }
  });

  test('hangs every document at a bench and serves every machine', () => {
    expect(shop.documents.filter((d) => d.benches.length === 0).map((d) => d.doc)).toEqual([]);
    const served = new Set(shop.documents.map((d) => d.machine));
    expect(shop.machines.filter((m) => !served.has(m.id)).map((m) => m.id)).toEqual([]);
  });

  test('has the variety of joints that a ferry works has', () => {
    const counts = new Set(plans.map((p) => p.count));
    for (const n of [3, 4, 6, 8, 12, 16, 20, 36]) expect(counts, `count ${n}`).toContain(n);
    expect(counts.has(7) || counts.has(9)).toBe(true);
    expect(new Set(plans.map((p) => p.pattern.kind))).toEqual(
      new Set(['circle', 'arc', 'circles', 'rectangle', 'slot', 'points']),
    );
    const heads = new Set(plans.map((p) => p.head));
    for (const head of ['hexagon', 'socket', 'stud'] as const) expect(heads).toContain(head);
    const grades = [...new Set(plans.map((p) => p.grade.id))].join(', ');
    for (const grade of ['8.8', '10.9', '12.9', 'A2-70', 'SAE', 'A193 B7']) expect(grades).toContain(grade);
    const conditions = new Set(plans.map((p) => p.condition.id));
    for (const id of ['dry', 'oiled', 'anti-seize', 'threadlocked']) expect(conditions).toContain(id);
    expect(new Set(plans.map((p) => p.thread.system))).toEqual(new Set(['metric', 'unified']));
  });

  test('shows what a joint may have beside its bolts', () => {
    const features = new Set(plans.flatMap((p) => p.features.map((f) => f.kind)));
    expect(features).toEqual(new Set(['dowel', 'jacking screw', 'clocking mark']));
    expect(new Set(plans.map((p) => p.sequence.method))).toEqual(new Set(['cross', 'spiral', 'quadrants']));
    expect(new Set(plans.map((p) => p.sequence.tools))).toEqual(new Set([1, 2, 4]));
    const has = (what: string, holds: (p: (typeof plans)[number]) => boolean) =>
      expect(plans.filter(holds).length, what).toBeGreaterThan(0);
    has('groups of neighbours', (p) => p.sequence.groups !== undefined);
    has('a nut that is turned', (p) => p.turned === 'nut' && p.head !== 'stud');
    has('a nut with its class', (p) => p.nut !== undefined);
    has('run-down torque', (p) => p.runDown !== undefined && p.setting.si > p.target.si);
    has('an adapter', (p) => p.adapter !== undefined && p.setting.si < p.target.si + (p.runDown?.si ?? 0));
    has('a wall', (p) => p.wallMm !== undefined);
    has('a standard flange', (p) => p.flange !== undefined);
    has('a picture of the rounds', (p) => p.interaction !== undefined);
    has('a nut factor of the lubricant’s maker', (p) => p.condition.source.startsWith('K: '));
    has('holes numbered anticlockwise', (p) => 'numbering' in p.pattern && p.pattern.numbering === 'anticlockwise');
  });

  test('copies torque tables from manuals, and every cell holds', () => {
    expect(shop.statedTables.length).toBeGreaterThan(1);
    const cells = shop.statedTables.flatMap((t) => t.comparison.cells);
    expect(cells.length).toBeGreaterThan(20);
    expect(cells.filter((c) => c.verdict !== 'holds')).toEqual([]);
  });

  test('states torques with their sources, inside the computed bands', () => {
    const stated = plans.filter((p) => p.origin === 'stated');
    expect(stated.length).toBeGreaterThan(10);
    for (const p of stated) {
      expect(p.source?.document, p.id).toBeTruthy();
      expect(p.target.si, p.id).toBeGreaterThanOrEqual(p.result.shortForm.low);
      expect(p.target.si, p.id).toBeLessThanOrEqual(p.result.shortForm.high);
    }
  });

  test('fits again what it takes off, for every variant (common practice, no source)', () => {
    const open = shop.documents.flatMap((d) =>
      d.variants.flatMap((v) => {
        const steps = v.stages.flatMap((s) => s.steps);
        const removed = new Set(steps.flatMap((s) => s.remove.map((m) => m.id)));
        const fitted = new Set(steps.flatMap((s) => s.fit.map((m) => m.id)));
        return [...removed].filter((id) => !fitted.has(id)).map((id) => `${v.cardName}: ${id}`);
      }),
    );
    expect(open).toEqual([]);
  });
});

describe('a renamed entry', () => {
  const usedTools = Object.keys(shop.whereUsed.tools).filter((id) => /-/.test(id));
  const usedConsumables = Object.keys(shop.whereUsed.consumables).filter((id) => /-/.test(id));
  const sample = (list: readonly string[], n: number) => list.filter((_, i) => i % Math.ceil(list.length / n) === 0);

  for (const id of sample(usedTools, 8)) {
    test(`tool ${id} is reported at every place that names it`, () => {
      const compiled = changed('tools.yaml', (t) => t.replace(new RegExp(`^${id}:`, 'm'), `${id}-renamed:`));
      const reported = places(compiled, 'REF001');
      expect(reported.length).toBeGreaterThan(0);
      expect(reported).toEqual(mentions(id, 'tool', 'with|wrench|socket'));
      expect(compiled.checked).toBeUndefined();
    });
  }

  for (const id of sample(usedConsumables, 6)) {
    test(`consumable ${id} is reported at every place that names it`, () => {
      const compiled = changed('consumables.yaml', (t) => t.replace(new RegExp(`^${id}:`, 'm'), `${id}-renamed:`));
      const reported = places(compiled, 'REF002');
      expect(reported.length).toBeGreaterThan(0);
      expect(reported).toEqual(mentions(id, 'consumable', 'with|use|lubricant'));
      expect(compiled.checked).toBeUndefined();
    });
  }
});

describe('one edit of a joint', () => {
  const card = (compiled: ReturnType<typeof compileShop>) =>
    compiled.checked?.cards.find((c) => c.name === 'OF-204-SMALL');
  const joint = (compiled: ReturnType<typeof compileShop>) =>
    compiled.resolved.documents
      .find((d) => d.doc === 'OF-204')
      ?.variants[0]?.joints.find((j) => j.id === 'front-cover');
  const screws = (compiled: ReturnType<typeof compileShop>) => {
    const variant = compiled.resolved.documents.find((d) => d.doc === 'OF-204')?.variants[0];
    return variant?.parts.find((p) => p.id === joint(compiled)?.fastener)?.quantity;
  };

  test('of the count changes coordinates, order, parts list, torque drawing and card, with no other edit', () => {
    const before = joint(demo);
    const compiled = changed('machines/raw-water-cooler.yaml', (t) => t.replace(/count: 12/g, 'count: 10'));
    const after = joint(compiled);
    expect([before?.count, after?.count]).toEqual([12, 10]);
    expect(after?.holes).toHaveLength(10);
    expect([...(after?.sequence.order ?? [])].sort((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(after?.chordMm).not.toBeCloseTo(before?.chordMm ?? 0, 3);
    expect([screws(demo), screws(compiled)]).toEqual([12, 10]);
    expect(card(compiled)?.fingerprint).not.toBe(card(demo)?.fingerprint);
  });

  test('of the circle changes coordinates, chord and card, and leaves the order', () => {
    const compiled = changed('machines/raw-water-cooler.yaml', (t) =>
      t.replace(/circle: (\d+) mm/, (_, d: string) => `circle: ${Number(d) + 20} mm`),
    );
    expect(joint(compiled)?.holes).not.toEqual(joint(demo)?.holes);
    expect(joint(compiled)?.sequence.order).toEqual(joint(demo)?.sequence.order);
    expect(card(compiled)?.fingerprint).not.toBe(card(demo)?.fingerprint);
  });

  test('of a stated parts list is reported with both places', () => {
    const compiled = changed('machines/raw-water-cooler.yaml', (t) =>
      t.replace(/(front-cover-screw:\n(?: {4}.*\n)*? {4}kind: screw\n)/, '$1    quantity: 11\n'),
    );
    expect(compiled.diagnostics.map((d) => d.code)).toContain('PRT001');
  });
});
