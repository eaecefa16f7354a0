/** References: what counts as used, which doubles meet, circles of shared stages, and what the author is told. */

import { describe, expect, test } from 'vitest';
import { runExample } from '../../src/pipeline/index.ts';
import { type Edit, EXAMPLE_SHOP } from '../../src/rules/index.ts';
import { unusedJoint } from '../../src/rules/ref/unused-joint.ts';

const PROCEDURE = 'procedures/mw-1.yaml';
const MACHINE = 'machines/pump.yaml';
const TOOLS = 'tools.yaml';
const CONSUMABLES = 'consumables.yaml';

/** Codes of one family with the value in the first backticks. */
function found(edits: readonly Edit[], codes: RegExp): string[] {
  return runExample(edits)
    .diagnostics.filter((d) => codes.test(d.code))
    .map((d) => `${d.code} ${/`([^`]*)`/.exec(d.message)?.[1] ?? ''}`);
}

const append = (file: string, text: string): Edit => ({ file, to: `${EXAMPLE_SHOP[file] ?? ''}${text}` });
const put = (file: string, from: string, to: string): Edit => ({ file, from, to });
const before = (file: string, line: string, text: string): Edit => put(file, line, `${text}${line}`);

const MIRROR = append(TOOLS, 'mirror: { name: inspection mirror, kind: hand tool }\n');
const PAD = append(CONSUMABLES, 'pad: { name: scouring pad, kind: abrasive }\n');
const SPACER = before(
  MACHINE,
  'joints:\n',
  '  spacer: { name: spacer ring, kind: ring, quantity: 1, number: MW-104 }\n',
);
const WIPE_STEP = '      - do: Wipe both faces with a <consumable:wipe>.\n';
const noted = (text: string): Edit => put(PROCEDURE, WIPE_STEP, `${WIPE_STEP}        note: ${text}\n`);

describe('unused (REF017 to REF022)', () => {
  const UNUSED = /^REF0(?:1[7-9]|2[0-2])$/;
  const rows: readonly (readonly [title: string, edits: readonly Edit[], told: readonly string[]])[] = [
    ['a tool that nobody names', [MIRROR], ['REF017 mirror']],
    [
      'a tool in the purpose',
      [MIRROR, put(PROCEDURE, 'purpose: Renews', 'purpose: Needs a <tool:mirror>. Renews')],
      [],
    ],
    [
      'a tool in the words before a stage',
      [MIRROR, put(PROCEDURE, '  - title: Close\n', '  - title: Close\n    intro: Have the <tool:mirror> ready.\n')],
      [],
    ],
    [
      'a tool in a warning',
      [MIRROR, put(PROCEDURE, 'avoid: Open the vent first.', 'avoid: Look behind the cover with the <tool:mirror>.')],
      [],
    ],
    [
      'a tool in what to do when out of limit',
      [
        MIRROR,
        put(
          PROCEDURE,
          'if out: Loosen and repeat this stage.',
          'if out: Look behind the cover with the <tool:mirror>.',
        ),
      ],
      [],
    ],
    ['a tool in a note', [MIRROR, noted('The <tool:mirror> shows the back.')], []],
    [
      'a socket, which is one of a set',
      [append(TOOLS, 'socket-30: { name: 30 mm socket, kind: socket, size: 30 mm }\n')],
      [],
    ],
    [
      'a torque wrench, which is calibrated for nobody',
      [
        append(
          TOOLS,
          'wrench-5-25: { name: small torque wrench, kind: torque wrench, range: 5 to 25 N·m, step: 0.2 N·m, serial: MW-TW-3, calibration_due: 2027-03-01 }\n',
        ),
      ],
      ['REF017 wrench-5-25'],
    ],
    ['a consumable that nobody names', [PAD], ['REF018 pad']],
    ['a consumable with an amount', [PAD, put(PROCEDURE, WIPE_STEP, `${WIPE_STEP}        use: [pad]\n`)], []],
    ['a part that nobody names', [SPACER], ['REF019 spacer']],
    ['a part in a note', [SPACER, noted('The <part:spacer> stays on the shaft.')], []],
    ['a part by its own words', [SPACER, noted('The [ring](part:spacer) stays on the shaft.')], []],
    [
      'a part of which another is made',
      [SPACER, put(MACHINE, 'number: MW-100, mass', 'number: MW-100, made_of: [spacer], mass')],
      [],
    ],
    [
      'a machine without a procedure is one finding',
      [
        {
          file: 'machines/fan.yaml',
          to: 'id: fan\nname: fan\nbench: pumps\nparts:\n  hub: { name: hub, kind: other, quantity: 1, number: F-1 }\n  blade: { name: blade, kind: other, quantity: 6, number: F-2 }\n',
        },
      ],
      ['REF019 fan'],
    ],
    [
      'a stage in no procedure',
      [{ file: 'stages/drain.yaml', to: 'id: drain\ntitle: Drain\nsteps:\n  - do: Open the lower cock.\n' }],
      ['REF021 drain'],
    ],
    [
      'a stage that another calls for',
      [
        { file: 'stages/drain.yaml', to: 'id: drain\ntitle: Drain\nsteps:\n  - do: Open the lower cock.\n' },
        put('stages/close-out.yaml', 'title: Close out\n', 'title: Close out\nfirst: [drain]\n'),
      ],
      [],
    ],
    [
      'nothing, while a fault may hide the use',
      [MIRROR, PAD, SPACER, put(PROCEDURE, 'loosen: cover', 'loosen: cuver')],
      [],
    ],
    ['nothing, while a procedure cannot be read', [MIRROR, put(PROCEDURE, 'title: Open\n', 'title: "Open\n')], []],
  ];

  test.each(rows.map(([title, edits, told]) => ({ title, edits, told })))('$title', ({ edits, told }) => {
    expect(found(edits, UNUSED)).toEqual(told);
  });
});

describe('doubles (REF023 to REF025)', () => {
  const DOUBLES = /^REF02[345]$/;
  const name = (id: string, from: string, to: string) => put(TOOLS, `${id}: { name: ${from},`, `${id}: { name: ${to},`);
  /** A second machine with one part of the number of the cover screw. */
  const fan = (part: string): Edit => ({
    file: 'machines/fan.yaml',
    to: `id: fan\nname: fan\nbench: pumps\nparts:\n  bolt: { name: hub bolt, quantity: 4, number: MW-102, ${part} }\n`,
  });
  const rows: readonly (readonly [title: string, edits: readonly Edit[], told: readonly string[]])[] = [
    ['a serial with a blank and small letters', [put(TOOLS, 'serial: MW-PG-4', 'serial: mw-fg -1')], ['REF023 gauge']],
    ['a name in capitals', [name('gauge', 'pressure gauge', 'Feeler  Gauge')], ['REF024 Feeler  Gauge']],
    ['names that share a word', [name('gauge', 'pressure gauge', 'feeler gauge for pressure')], []],
    ['two people of one name', [put('people.yaml', 'name: Ben Holt', 'name: Ada Fern')], ['REF024 Ada Fern']],
    ['two parts of one name', [put(MACHINE, 'name: cover gasket', 'name: cover')], ['REF024 cover']],
    [
      'two parts of one name, one for each variant',
      [
        put(
          MACHINE,
          'kind: gasket, quantity: 1, number: MW-101, always_replace: true }',
          'kind: gasket, quantity: 1, number: MW-101, always_replace: true }\n  short-plug: { name: vent plug, kind: plug, quantity: 1, number: MW-105, only: { size: small } }',
        ),
      ],
      [],
    ],
    ['a tool and a consumable of one name', [put(CONSUMABLES, 'name: machine oil', 'name: chain hoist')], []],
    ['one number for a screw on one machine and a stud on another', [fan('kind: stud')], ['REF025 MW-102']],
    ['one number in two threads, one of them by its joint', [fan('kind: screw, thread: M12')], ['REF025 MW-102']],
    [
      'one number in two classes, one of them by its joint',
      [fan('kind: screw, thread: M16, grade: "10.9"')],
      ['REF025 MW-102'],
    ],
    ['one number for the same screw on two machines', [fan('kind: screw, thread: M16, grade: "8.8"')], []],
    ['a kind that says nothing', [fan('kind: other')], []],
  ];

  test.each(rows.map(([title, edits, told]) => ({ title, edits, told })))('$title', ({ edits, told }) => {
    expect(found(edits, DOUBLES)).toEqual(told);
  });
});

describe('shared stages that come before others', () => {
  const stage = (id: string, first: string): Edit => ({
    file: `stages/${id}.yaml`,
    to: `id: ${id}\ntitle: ${id}\n${first}steps:\n  - do: Read the ${id} plate.\n`,
  });
  const first = (id: string) => put('stages/isolate.yaml', 'title: Isolate\n', `title: Isolate\nfirst: [${id}]\n`);
  const circles = (edits: readonly Edit[]) =>
    runExample(edits)
      .diagnostics.filter((d) => d.code === 'REF016')
      .map((d) => [d.range.file, d.message, d.related?.length ?? 0]);

  test('a stage before itself', () => {
    expect(circles([first('isolate')])).toEqual([
      ['shop/stages/isolate.yaml', 'the shared stage `isolate` is to come before itself', 0],
    ]);
  });

  test('three in a circle are one report, with the other two places', () => {
    expect(circles([first('b'), stage('b', 'first: [c]\n'), stage('c', 'first: [isolate]\n')])).toEqual([
      [
        'shop/stages/c.yaml',
        'the shared stages come before each other in a circle: `isolate` after `b` after `c` after `isolate`',
        2,
      ],
    ]);
  });

  test('two ways to one stage are no circle, and it is done once', () => {
    const edits = [first('b, c'), stage('b', 'first: [d]\n'), stage('c', 'first: [d]\n'), stage('d', '')];
    expect(runExample(edits).diagnostics.filter((d) => d.severity === 'error')).toEqual([]);
  });
});

describe('what the author is told', () => {
  const tightened = (id: string) => put(PROCEDURE, 'tighten: cover', `tighten: ${id}`);
  const rows: readonly (readonly [title: string, edits: readonly Edit[], says: RegExp, hint: RegExp])[] = [
    [
      'a part where a joint is meant names its joint',
      [tightened('screw')],
      /^`screw` is a part, and a joint is meant here$/,
      /`cover`/,
    ],
    [
      'a part that no joint has',
      [tightened('plug')],
      /^`plug` is a part, and a joint is meant here$/,
      /name a joint of `shop\/machines\/pump.yaml`/,
    ],
    [
      'a joint where a part is meant names its fastener',
      [...(unusedJoint.example.good ?? []), put(PROCEDURE, 'fit: [screw]', 'fit: [screw, foot]')],
      /^`foot` is a joint, and a part is meant here$/,
      /`foot-screw`/,
    ],
    [
      'a part of another variant says what to write',
      [put(PROCEDURE, '        only: { size: large }\n        fit: [plug]', '        fit: [plug]')],
      /does not exist in variant Small$/,
      /`only: \{ size: large \}`/,
    ],
    [
      'an unknown person is looked for in the register',
      [put(PROCEDURE, 'owner: ben', 'owner: zacharias')],
      /^person `zacharias` is not in `shop\/people.yaml`$/,
      /add it to `shop\/people.yaml`/,
    ],
    [
      'an unknown machine among the machines',
      [put(PROCEDURE, 'machine: pump\n', 'machine: windlass\n')],
      /^machine `windlass` is not in `shop\/machines\/`$/,
      /name a machine/,
    ],
  ];

  test.each(rows.map(([title, edits, says, hint]) => ({ title, edits, says, hint })))(
    '$title',
    ({ edits, says, hint }) => {
      const [first] = runExample(edits).diagnostics.filter((d) => d.code.startsWith('REF'));
      expect(first?.message).toMatch(says);
      expect(first?.hint).toMatch(hint);
    },
  );
});
