/**
 * Slips of an author in the sound shop of the examples, where they say more than the example of their check: several places,
 * several faults, no echoes, both variants.
 */

import { describe, expect, test } from 'vitest';
import { placer, renderFull } from '../../src/diagnostics/index.ts';
import { type Changes, compileMini } from '../fixtures/mini-shop.ts';

const PROCEDURE = 'procedures/mw-1.yaml';
const MACHINE = 'machines/pump.yaml';

const put = (from: string | RegExp, to: string) => (text: string) => text.replace(from, to);

interface Slip {
  readonly title: string;
  readonly changes: Changes;
  /** `CODE file:line:column` of every fault, in order. */
  readonly faults: readonly string[];
  readonly says?: string;
  readonly hint?: string;
}

const SLIPS: readonly Slip[] = [
  {
    title: 'a renamed tool is reported at each place that uses it, in shared stages, fields and joints',
    changes: { 'tools.yaml': put('lock: {', 'padlock: {') },
    faults: ['REF001 shop/stages/isolate.yaml:4:31'],
    says: 'tool `lock` is not in the register',
  },
  {
    title: 'a renamed consumable is reported in text, in fields and in the joint',
    changes: { 'consumables.yaml': put('oil:', 'machine-oil:') },
    faults: [`REF002 shop/${MACHINE}:25:16`, `REF002 shop/${PROCEDURE}:38:28`],
  },
  {
    title: 'an undefined bench and an undefined person',
    changes: { [MACHINE]: put('bench: pumps', 'bench: pump'), [PROCEDURE]: put('owner: ben', 'owner: bent') },
    faults: [`REF008 shop/${MACHINE}:3:8`, `REF009 shop/${PROCEDURE}:6:8`],
  },
  {
    title: 'two procedures with one number name both places',
    changes: {
      'procedures/mw-2.yaml': (_t) =>
        'doc: MW-1\ntitle: X\nmachine: pump\npurpose: X\nowner: ben\nreview: 12 months\nrevisions: [{ rev: A, effective: 2026-01-01, approved: 2026-01-01, author: ada, approver: ben, what: x, why: x }]\nstages: [{ use: isolate }]\n',
    },
    faults: ['REF011 shop/procedures/mw-2.yaml:1:6'],
  },
  {
    title: 'a step id used twice',
    changes: { 'stages/isolate.yaml': put('record: Tried by', 'id: locked') },
    faults: ['REF011 shop/stages/isolate.yaml:19:9'],
  },
  {
    title: 'a grade that YAML reads as a number',
    changes: { [MACHINE]: put('grade: "8.8"', 'grade: 8.8') },
    faults: [`FLD003 shop/${MACHINE}:22:12`],
    hint: 'put it in quotes: `"8.8"`',
  },
  {
    title: 'a torque in a unit of length',
    changes: { [MACHINE]: put('torque: 160 N·m', 'torque: 160 mm') },
    faults: [`FLD005 shop/${MACHINE}:30:13`],
    says: 'is a length, and a torque is wanted',
  },
  {
    title: 'an id that would climb out of its folder',
    changes: { [PROCEDURE]: put('doc: MW-1', 'doc: ../MW-1') },
    faults: [`FLD007 shop/${PROCEDURE}:1:6`],
  },
  {
    title: 'a property class that does not exist',
    changes: { [MACHINE]: put('"8.8"', '"8.7"') },
    faults: [`FLD010 shop/${MACHINE}:22:12`],
  },
  {
    title: 'a parts list that disagrees with the joint, in each variant, with both places',
    changes: { [MACHINE]: put('name: cover screw, kind: screw', 'name: cover screw, kind: screw, quantity: 8') },
    faults: [`PRT001 shop/${MACHINE}:14:54`],
    says: 'the parts list has 8 of `screw`, and its joints need 12 (Large)',
  },
  {
    title: 'a torque typed in lbf·ft and called N·m',
    changes: { [MACHINE]: put('torque: 160 N·m', 'torque: 118 N·m') },
    faults: [`TRQ001 shop/${MACHINE}:30:13`],
  },
  {
    title: 'a torque with a slipped digit',
    changes: { [MACHINE]: put('torque: 160 N·m', 'torque: 16 N·m') },
    faults: [`TRQ001 shop/${MACHINE}:30:13`],
  },
  {
    title: 'a wrench that cannot reach the torque, with those that can',
    changes: {
      'tools.yaml': (t) =>
        `${t.replace('range: 40 to 200 N·m', 'range: 10 to 100 N·m')}wrench-big: { name: big wrench, kind: torque wrench, range: 40 to 220 N·m, step: 1 N·m, calibration_due: 2027-03-01 }\n`,
    },
    faults: [`TRQ005 shop/${MACHINE}:34:13`, 'REF017 shop/tools.yaml:7:1'],
    hint: 'write one that covers every round: `wrench-big`',
  },
  {
    title: 'a wrench range that runs backwards is one fault, not one for each joint',
    changes: { 'tools.yaml': put('40 to 200 N·m, step', '200 to 40 N·m, step') },
    faults: ['FLD006 shop/tools.yaml:2:77'],
  },
  {
    title: 'a preload of more than the whole load',
    changes: { [MACHINE]: put('preload: 70 %', 'preload: 700 %') },
    faults: [`FLD005 shop/${MACHINE}:29:14`],
    hint: '60 to 75 %',
  },
  {
    title: 'a socket of another size',
    changes: { [MACHINE]: put('thread: M16', 'thread: M14') },
    faults: [`TRQ001 shop/${MACHINE}:30:13`, `TRQ009 shop/${MACHINE}:35:13`],
    says: 'takes 21',
  },
  {
    title: 'a revision that takes effect before its approval, by its own author',
    changes: {
      [PROCEDURE]: put(
        'effective: 2026-01-10, approved: 2026-01-08, author: ada',
        'effective: 2026-01-01, approved: 2026-01-08, author: ben',
      ),
    },
    faults: [`REV002 shop/${PROCEDURE}:11:26`, `REV003 shop/${PROCEDURE}:11:83`],
  },
  {
    title: 'a missing register is one fault, and its ids are not reported one by one',
    changes: { 'tools.yaml': null },
    faults: ['SRC001 shop/tools.yaml:1:1'],
  },
];

describe('a slip is reported by the right check at the right place', () => {
  test('the sound shop has no faults', () => {
    const { diagnostics, textOf, checked } = compileMini();
    expect(renderFull(diagnostics, textOf)).toBe('');
    expect(checked).toBeDefined();
  });

  for (const slip of SLIPS) {
    test(slip.title, () => {
      const { diagnostics, textOf, checked } = compileMini(slip.changes);
      const place = placer(textOf);
      const rows = diagnostics.map((d) => {
        const { line, column } = place(d.range);
        return `${d.code} ${d.range.file}:${line}:${column}`;
      });
      const shown = renderFull(diagnostics, textOf);
      expect(rows, shown).toEqual(slip.faults);
      expect(checked === undefined).toBe(diagnostics.some((d) => d.severity === 'error'));
      if (slip.says !== undefined) expect(shown).toContain(slip.says);
      if (slip.hint !== undefined) expect(shown).toContain(slip.hint);
      expect(shown).not.toMatch(/\bundefined\b(?!-)|\[object|NaN/);
    });
  }

  const rows = (changes: Changes) => {
    const { diagnostics, textOf } = compileMini(changes);
    const place = placer(textOf);
    return diagnostics.map((d) => `${d.code} ${d.range.file}:${place(d.range).line}:${place(d.range).column}`);
  };

  test('a fault of shape hides no other fault, and references to what it spoils are not echoed', () => {
    expect(
      rows({
        [PROCEDURE]: (t) =>
          t.replace('limit: 0.05 to 0.30 mm', 'limit: 0.30').replace('<consumable:wipe>', '<consumable:wip>'),
      }),
    ).toEqual([`REF002 shop/${PROCEDURE}:30:37`, `FLD006 shop/${PROCEDURE}:44:18`]);
    expect(
      rows({ [MACHINE]: (t) => t.replace('count: 8', 'count: eight').replace('bench: pumps', 'bench: pump') }),
    ).toEqual([`REF008 shop/${MACHINE}:3:8`, `FLD003 shop/${MACHINE}:27:39`]);
    expect(
      rows({ 'tools.yaml': (t) => t.replace('kind: socket', 'kind: sokcet').replace('lock: {', 'look: {') }),
    ).toEqual(['REF001 shop/stages/isolate.yaml:4:31', 'FLD004 shop/tools.yaml:1:40']);
  });

  test('a file that cannot be read at all is one fault, and its document is not called unknown', () => {
    expect(rows({ [PROCEDURE]: put('stages:', 'stages') })).toEqual([`SRC006 shop/${PROCEDURE}:12:1`]);
    expect(rows({ 'stages/isolate.yaml': put('title: Isolate', "title: 'Isolate") })).toEqual([
      'SRC006 shop/stages/isolate.yaml:2:8',
    ]);
  });

  test('a mistyped key that leaves its place empty is one fault', () => {
    expect(rows({ [PROCEDURE]: put('- title: Close', '- titel: Close') })).toEqual([`FLD001 shop/${PROCEDURE}:28:5`]);
  });

  test('several faults in several files come in one run, by file and line', () => {
    const { diagnostics } = compileMini({
      [PROCEDURE]: (t) => t.replace('<consumable:wipe>', '<consumable:wip>').replace('with: feeler', 'with: feler'),
      'benches.yaml': put('lead: ada', 'lead: adda'),
    });
    expect(diagnostics.map((d) => d.code)).toEqual(['REF009', 'REF002', 'REF001']);
  });
});
