/** Ten slips of the hand made on purpose in the demo shop: each is caught by a check that has a name, and stops the build. */

import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { placer } from '../../src/diagnostics/index.ts';
import { compileShop } from '../../src/pipeline/index.ts';

const CONTENT = path.resolve(import.meta.dirname, '..', '..', 'content');
const FLANGE = 'machines/raw-water-main.yaml';
const COUPLING = 'machines/shaft-coupling.yaml';
const CRANE = 'machines/deck-crane.yaml';

/** What slipped; in which file; what stands there; what was typed; the names of the checks that find it. */
type Slip = readonly [slip: string, file: string, from: RegExp, to: string, ...checks: string[]];

const SLIPS: readonly Slip[] = [
  ['a digit', FLANGE, /torque: 90 N·m/, 'torque: 30 N·m', 'torque-far-off'],
  ['twelve times', FLANGE, /torque: 90 N·m/, 'torque: 1080 N·m', 'torque-unit-slip'],
  ['1.356 times', FLANGE, /torque: 90 N·m/, 'torque: 90 lbf·ft', 'torque-unit-slip'],
  ['a class', COUPLING, /(also: .*\n.*\n {4})grade: "10\.9"/, '$1grade: "8.8"', 'fastener-differs', 'torque-unit-slip'],
  ['a class in the parts list', COUPLING, /grade: "10\.9"/, 'grade: "8.8"', 'fastener-differs'],
  ['a condition', CRANE, /condition: moly/, 'condition: dry', 'lubricant-condition'],
  ['a count', FLANGE, /count: 8/, 'count: 6', 'fastener-count', 'flange-mismatch'],
  ['a circle', FLANGE, /circle: 180 mm/, 'circle: 108 mm', 'flange-mismatch'],
  ['a pitch', COUPLING, /(also: .*\n {4})thread: M20\n/, '$1thread: M20x1.5\n', 'fastener-differs'],
  ['a pitch of no standard', COUPLING, /(also: .*\n {4})thread: M20\n/, '$1thread: M20x2.25\n', 'bad-thread'],
  ['a wrench', FLANGE, /wrench: torque-wrench-100/, 'wrench: torque-wrench-25', 'wrench-range'],
  ['a key', FLANGE, /socket: socket-24/, 'socket: socket-27', 'wrong-drive'],
];

test.each(SLIPS.map((slip) => ({ title: slip[0], slip })))('$title is caught', ({ slip }) => {
  const [, file, from, to, ...checks] = slip;
  const folder = mkdtempSync(path.join(tmpdir(), 'slip-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  cpSync(CONTENT, folder, { recursive: true });
  const name = path.join(folder, file);
  const before = readFileSync(name, 'utf8');
  const after = before.replace(from, to);
  expect(after).not.toBe(before);
  writeFileSync(name, after);
  const { diagnostics, checked, textOf } = compileShop({ folder, shown: 'content' });
  const found = diagnostics.map((d) => d.name);
  expect(found).toEqual(expect.arrayContaining([...checks]));
  expect(checked).toBeUndefined();
  // The author is led to the line that slipped, or to one that names it beside the place where the two differ.
  const slipped = before.slice(0, before.search(from)).split('\n').length;
  const place = placer(textOf);
  const near = diagnostics
    .flatMap((d) => [d.range, ...(d.related ?? []).map((r) => r.range)])
    .map((r) => place(r).line);
  expect(near.some((line) => Math.abs(line - slipped) <= 2)).toBe(true);
});
