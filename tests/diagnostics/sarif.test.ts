/** The SARIF form. Its shape is held by the types made from the schema of the standard (OASIS SARIF 2.1.0). */

import type { Log } from 'sarif';
import { expect, test } from 'vitest';
import { renderSarif } from '../../src/diagnostics/index.ts';
import { compileFiles } from '../../src/pipeline/index.ts';
import { CHECKS, EXAMPLE_SHOP } from '../../src/rules/index.ts';
import { readMemory } from '../../src/source/index.ts';

function log(change: (text: string) => string): Log {
  const shop = { ...EXAMPLE_SHOP, 'machines/pump.yaml': change(EXAMPLE_SHOP['machines/pump.yaml'] ?? '') };
  const files = Object.entries(shop).map(([relative, content]) => ({ relative, content }));
  const { diagnostics, accepted, textOf } = compileFiles((report) => readMemory(files, {}, 'a shop', report), 'a shop');
  return JSON.parse(renderSarif({ diagnostics, accepted, rules: CHECKS, textOf })) as Log;
}

test('one run with every check as a rule, in the order of the list (3.14.6, 3.19.23, 3.49)', () => {
  const sarif = log((t) => t);
  expect(sarif.version).toBe('2.1.0');
  expect(sarif.runs).toHaveLength(1);
  const [run] = sarif.runs;
  expect(run?.columnKind).toBe('utf16CodeUnits');
  expect(run?.tool.driver.rules?.map((r) => r.id)).toEqual(CHECKS.map((c) => c.code));
  for (const r of run?.tool.driver.rules ?? []) {
    expect(r.shortDescription?.text).not.toBe('');
    expect(['error', 'warning']).toContain(r.defaultConfiguration?.level);
  }
  expect(run?.results).toEqual([]);
});

test('a result names rule, level, region and what to do; its file is a valid URI (3.27, 3.30, 3.4.3)', () => {
  const result = log((t) => t.replace('torque: 160 N·m', 'torque: 16 N·m')).runs[0]?.results?.[0];
  expect(result?.ruleId).toBe('TRQ001');
  expect(CHECKS[result?.ruleIndex ?? -1]?.code).toBe('TRQ001');
  expect(result?.level).toBe('error');
  expect(result?.message.text).toContain('What to do:');
  const place = result?.locations?.[0]?.physicalLocation;
  expect(place?.artifactLocation?.uri).toBe('a%20shop/machines/pump.yaml');
  expect(place?.region).toEqual({ startLine: 30, startColumn: 13, endLine: 30, endColumn: 19 });
});

test('both places of a conflict stand in the result (3.27.22)', () => {
  const result = log((t) => t.replace('name: cover screw, kind: screw', 'name: cover screw, kind: screw, quantity: 8'))
    .runs[0]?.results?.[0];
  expect(result?.ruleId).toBe('PRT001');
  expect(result?.relatedLocations?.[0]?.message?.text).toContain('cover');
  expect(result?.relatedLocations?.[0]?.physicalLocation?.region?.startLine).toBeGreaterThan(1);
});

test('an accepted warning is a result with a suppression in the source (3.35)', () => {
  const results = log((t) => t.replace('circular_passes: 1', 'circular_passes: 0 # accept TRQ028: metal on metal'))
    .runs[0]?.results;
  expect(results).toHaveLength(1);
  expect(results?.[0]?.suppressions).toEqual([
    { kind: 'inSource', status: 'accepted', justification: 'metal on metal' },
  ]);
});
