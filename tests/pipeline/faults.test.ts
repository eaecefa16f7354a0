/** Each slip of an author, made on purpose in a sound shop: the code, the place and the help that it gets. */

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
    title: 'a renamed measuring tool',
    changes: { 'tools.yaml': put('feeler:', 'feeler-gauge:') },
    faults: [`REF001 shop/${PROCEDURE}:42:17`],
    hint: 'did you mean `feeler-gauge`?',
  },
  {
    title: 'a renamed consumable is reported in text, in fields and in the joint',
    changes: { 'consumables.yaml': put('oil:', 'machine-oil:') },
    faults: [`REF002 shop/${MACHINE}:22:16`, `REF002 shop/${PROCEDURE}:35:28`],
  },
  {
    title: 'an undefined consumable in text has the place of the reference itself',
    changes: { [PROCEDURE]: put('<consumable:wipe>', '<consumable:wipes>') },
    faults: [`REF002 shop/${PROCEDURE}:27:37`],
    hint: 'did you mean `wipe`?',
  },
  {
    title: 'an undefined part',
    changes: { [PROCEDURE]: put('fit: [gasket, cover]', 'fit: [gaskit, cover]') },
    faults: [`REF003 shop/${PROCEDURE}:32:15`],
    hint: 'did you mean `gasket`?',
  },
  {
    title: 'an undefined joint',
    changes: { [PROCEDURE]: put('tighten: cover', 'tighten: cuver') },
    faults: [`REF004 shop/${PROCEDURE}:36:18`],
    hint: 'did you mean `cover`?',
  },
  {
    title: 'an undefined procedure in a binder',
    changes: { 'benches.yaml': put('[MW-1]', '[MW-1, MW-2]') },
    faults: ['REF005 shop/benches.yaml:5:18'],
  },
  {
    title: 'an undefined step',
    changes: { [PROCEDURE]: put('<step:locked>', '<step:lockd>') },
    faults: [`REF006 shop/${PROCEDURE}:33:46`],
    hint: 'did you mean `locked`?',
  },
  {
    title: 'an undefined machine is one fault, not one for each part',
    changes: { [PROCEDURE]: put('machine: pump', 'machine: pumpe') },
    faults: [`REF007 shop/${PROCEDURE}:3:10`],
  },
  {
    title: 'an undefined bench and an undefined person',
    changes: { [MACHINE]: put('bench: pumps', 'bench: pump'), [PROCEDURE]: put('owner: ben', 'owner: bent') },
    faults: [`REF008 shop/${MACHINE}:3:8`, `REF009 shop/${PROCEDURE}:6:8`],
  },
  {
    title: 'an undefined shared stage',
    changes: {
      [PROCEDURE]: put('use: isolate', 'use: isolat'),
    },
    faults: [`REF010 shop/${PROCEDURE}:11:10`],
    hint: 'did you mean `isolate`?',
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
    faults: ['REF011 shop/stages/isolate.yaml:7:9'],
  },
  {
    title: 'a consumable where a tool belongs',
    changes: { [PROCEDURE]: put('with: feeler', 'with: wipe') },
    faults: [`REF012 shop/${PROCEDURE}:42:17`],
    says: '`wipe` is a consumable, and a tool is meant here',
  },
  {
    title: 'a variant value that the machine does not have',
    changes: { [PROCEDURE]: put('only: { size: large }\n        fit', 'only: { size: larg }\n        fit') },
    faults: [`REF013 shop/${PROCEDURE}:29:23`],
    hint: 'did you mean `large`?',
  },
  {
    title: 'a reference of no known kind',
    changes: { [PROCEDURE]: put('<consumable:wipe>', '<consumible:wipe>') },
    faults: [`REF014 shop/${PROCEDURE}:27:37`],
    hint: 'did you mean `consumable`?',
  },
  {
    title: 'a part that this variant does not have',
    changes: { [PROCEDURE]: put('        only: { size: large }\n        fit', '        fit') },
    faults: [`REF015 shop/${PROCEDURE}:28:22`, `REF015 shop/${PROCEDURE}:29:15`],
  },
  {
    title: 'an unknown key',
    changes: { [PROCEDURE]: put('tighten: cover', 'tigthen: cover') },
    faults: [`FLD001 shop/${PROCEDURE}:36:9`],
    hint: 'did you mean `tighten`?',
  },
  {
    title: 'a missing key',
    changes: { 'people.yaml': put(', role: Fitter', '') },
    faults: ['FLD002 shop/people.yaml:1:8'],
    says: '`ada` has no `role`',
  },
  {
    title: 'a grade that YAML reads as a number',
    changes: { [MACHINE]: put('grade: "8.8"', 'grade: 8.8') },
    faults: [`FLD003 shop/${MACHINE}:19:12`],
    hint: 'put it in quotes: `"8.8"`',
  },
  {
    title: 'a value that is none of those allowed',
    changes: { [MACHINE]: put('head: hexagon', 'head: hexagn') },
    faults: [`FLD004 shop/${MACHINE}:20:11`],
    hint: 'did you mean `hexagon`?',
  },
  {
    title: 'a torque without a unit',
    changes: { [MACHINE]: put('torque: 160 N·m', 'torque: 160') },
    faults: [`FLD005 shop/${MACHINE}:27:13`],
    hint: '`160 N·m`',
  },
  {
    title: 'a torque in a unit of length',
    changes: { [MACHINE]: put('torque: 160 N·m', 'torque: 160 mm') },
    faults: [`FLD005 shop/${MACHINE}:27:13`],
    says: 'is a length, and a torque is wanted',
  },
  {
    title: 'a limit that runs backwards',
    changes: { [PROCEDURE]: put('0.05 to 0.30 mm', '0.30 to 0.05 mm') },
    faults: [`FLD006 shop/${PROCEDURE}:41:18`],
  },
  {
    title: 'an id that would climb out of its folder',
    changes: { [PROCEDURE]: put('doc: MW-1', 'doc: ../MW-1') },
    faults: [`FLD007 shop/${PROCEDURE}:1:6`],
  },
  {
    title: 'a date that no calendar has',
    changes: { [PROCEDURE]: put('effective: 2026-01-10', 'effective: 2026-02-30') },
    faults: [`FLD008 shop/${PROCEDURE}:9:26`],
  },
  {
    title: 'a thread that no standard has',
    changes: { [MACHINE]: put('thread: M16', 'thread: M16x1.7') },
    faults: [`FLD009 shop/${MACHINE}:18:13`],
  },
  {
    title: 'a property class that does not exist',
    changes: { [MACHINE]: put('"8.8"', '"8.7"') },
    faults: [`FLD010 shop/${MACHINE}:19:12`],
  },
  {
    title: 'a picture in a step',
    changes: { [PROCEDURE]: put('do: Measure the gap.', "do: 'Measure ![gap](gap.png)'") },
    faults: [`FLD011 shop/${PROCEDURE}:37:13`],
  },
  {
    title: 'a parts list that disagrees with the joint, in each variant, with both places',
    changes: { [MACHINE]: put('name: cover screw, kind: screw', 'name: cover screw, kind: screw, quantity: 8') },
    faults: [`PRT001 shop/${MACHINE}:12:54`],
    says: 'the parts list has 8 of `screw`, and its joints need 12 (Large)',
  },
  {
    title: 'a pattern with one bolt',
    changes: { [MACHINE]: put('count: 8', 'count: 1') },
    faults: [`BLT001 shop/${MACHINE}:24:14`],
  },
  {
    title: 'a circle too small for its sockets',
    changes: { [MACHINE]: put('circle: 240 mm', 'circle: 80 mm') },
    faults: [`BLT002 shop/${MACHINE}:24:14`],
  },
  {
    title: 'a torque typed in lbf·ft and called N·m',
    changes: { [MACHINE]: put('torque: 160 N·m', 'torque: 118 N·m') },
    faults: [`TRQ001 shop/${MACHINE}:27:13`],
  },
  {
    title: 'a torque with a slipped digit',
    changes: { [MACHINE]: put('torque: 160 N·m', 'torque: 16 N·m') },
    faults: [`TRQ001 shop/${MACHINE}:27:13`],
  },
  {
    title: 'a wrench that cannot reach the torque, with those that can',
    changes: {
      'tools.yaml': (t) =>
        `${t.replace('range: 40 to 200 N·m', 'range: 10 to 100 N·m')}wrench-big: { name: big wrench, kind: torque wrench, range: 40 to 220 N·m }\n`,
    },
    faults: [`TRQ005 shop/${MACHINE}:31:13`],
    hint: 'these cover every round: `wrench-big`',
  },
  {
    title: 'a wrench range that runs backwards is one fault, not one for each joint',
    changes: { 'tools.yaml': put('40 to 200 N·m, step', '200 to 40 N·m, step') },
    faults: ['FLD006 shop/tools.yaml:2:77'],
  },
  {
    title: 'a preload of more than the whole load',
    changes: { [MACHINE]: put('preload: 70 %', 'preload: 700 %') },
    faults: [`FLD005 shop/${MACHINE}:26:14`],
    hint: '60 to 75 %',
  },
  {
    title: 'rounds that do not rise',
    changes: { [MACHINE]: put('[30 %, 70 %, 100 %]', '[70 %, 30 %, 100 %]') },
    faults: [`TRQ008 shop/${MACHINE}:29:13`],
  },
  {
    title: 'a socket of another size',
    changes: { [MACHINE]: put('thread: M16', 'thread: M14') },
    faults: [`TRQ001 shop/${MACHINE}:27:13`, `TRQ009 shop/${MACHINE}:32:13`],
    says: 'takes 21',
  },
  {
    title: 'a torque without its source',
    changes: { [MACHINE]: put('    source: { document: Pump manual, edition: "3", place: page 12 }\n', '') },
    faults: [`TRQ010 shop/${MACHINE}:27:13`],
  },
  {
    title: 'a revision that takes effect before its approval, by its own author',
    changes: {
      [PROCEDURE]: put(
        'effective: 2026-01-10, approved: 2026-01-08, author: ada',
        'effective: 2026-01-01, approved: 2026-01-08, author: ben',
      ),
    },
    faults: [`REV002 shop/${PROCEDURE}:9:5`, `REV003 shop/${PROCEDURE}:9:5`],
  },
  {
    title: 'a missing register is one fault, and its ids are not reported one by one',
    changes: { 'tools.yaml': null },
    faults: ['SRC001 shop/tools.yaml:1:1'],
  },
  {
    title: 'a file in a place where nothing is read',
    changes: { 'procedure/mw-9.yaml': 'doc: MW-9\n' },
    faults: ['SRC012 shop/procedure/mw-9.yaml:1:1'],
    hint: 'did you mean `procedures`?',
  },
  { title: 'an empty file', changes: { 'stages/extra.yaml': '\n' }, faults: ['SRC010 shop/stages/extra.yaml:1:1'] },
  {
    title: 'a tab as indentation',
    changes: { [PROCEDURE]: put('      - do: Measure the gap.', '\t- do: Measure the gap.') },
    faults: [`SRC007 shop/${PROCEDURE}:37:1`],
  },
  {
    title: 'anchors and aliases',
    changes: { 'people.yaml': put('ada: {', 'ada: &a {') },
    faults: ['SRC008 shop/people.yaml:1:9'],
  },
  {
    title: 'a key that stands twice',
    changes: { 'people.yaml': (t) => `${t}ada: { name: A, role: B }\n` },
    faults: ['SRC009 shop/people.yaml:3:1'],
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
    ).toEqual([`REF002 shop/${PROCEDURE}:27:37`, `FLD006 shop/${PROCEDURE}:41:18`]);
    expect(
      rows({ [MACHINE]: (t) => t.replace('count: 8', 'count: eight').replace('bench: pumps', 'bench: pump') }),
    ).toEqual([`REF008 shop/${MACHINE}:3:8`, `FLD003 shop/${MACHINE}:24:39`]);
    expect(
      rows({ 'tools.yaml': (t) => t.replace('kind: socket', 'kind: sokcet').replace('lock: {', 'look: {') }),
    ).toEqual(['REF001 shop/stages/isolate.yaml:4:31', 'FLD004 shop/tools.yaml:1:40']);
  });

  test('a file that cannot be read at all is one fault, and its document is not called unknown', () => {
    expect(rows({ [PROCEDURE]: put('stages:', 'stages') })).toEqual([`SRC006 shop/${PROCEDURE}:10:1`]);
    expect(rows({ 'stages/isolate.yaml': put('title: Isolate', "title: 'Isolate") })).toEqual([
      'SRC006 shop/stages/isolate.yaml:2:8',
    ]);
  });

  test('a mistyped key that leaves its place empty is one fault', () => {
    expect(rows({ [PROCEDURE]: put('- title: Close', '- titel: Close') })).toEqual([`FLD001 shop/${PROCEDURE}:25:5`]);
  });

  test('several faults in several files come in one run, by file and line', () => {
    const { diagnostics } = compileMini({
      [PROCEDURE]: (t) => t.replace('<consumable:wipe>', '<consumable:wip>').replace('with: feeler', 'with: feler'),
      'benches.yaml': put('lead: ada', 'lead: adda'),
    });
    expect(diagnostics.map((d) => d.code)).toEqual(['REF009', 'REF002', 'REF001']);
  });
});
