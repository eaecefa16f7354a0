/** The register of outside documents: editions, confirmations, and which numbers rest on what. */

import { describe, expect, test } from 'vitest';
import { isSameEdition } from '../../src/control/editions.ts';
import { editionStates, restsOn } from '../../src/control/rests-on.ts';
import { compileFiles } from '../../src/pipeline/index.ts';
import { type Edit, EXAMPLE_SHOP, edited } from '../../src/rules/index.ts';
import { readMemory } from '../../src/source/index.ts';
import { PROCEDURE, PUMP, put, told } from './told.ts';

/** The register with the pump manual in this edition, and what else stands in its entry. */
const manual = (edition: string, more = ''): Edit => ({
  file: 'outside.yaml',
  to: `pump-manual:\n  document: Pump manual\n  kind: maker's manual\n  edition: "${edition}"\n  owner: ben\n${more}`,
});
const confirmed = (doc: string, on = '2026-02-03') =>
  `  confirmed:\n    ${doc}: { by: ben, on: ${on}, finding: All the same }\n`;
const PAGE_14 = '          source: { document: Pump manual, edition: "3", place: page 14 }\n';
const PAGE_12 = '    source: { document: Pump manual, edition: "3", place: page 12 }\n';
const PAGE_9 = '      source: { document: Pump manual, edition: "3", place: page 9 }\n';
const MACHINE = put(PUMP, 'rotates: true\n', 'rotates: true\nmanual: { document: Pump manual, edition: "3" }\n');

describe('REV011', () => {
  test.each([
    ['3', 0],
    ['3rd edition', 0],
    ['4', 1],
    ['3A', 1],
  ])('the shop holds %s, and all sources name 3', (edition, count) => {
    const found = told('REV011', manual(edition));
    expect(found.map((t) => t.at)).toEqual(Array.from({ length: count }, () => '"3"'));
  });

  test('one report a procedure, with the numbers that rest on the old edition', () => {
    const [found, ...more] = told('REV011', manual('4'));
    expect(more).toEqual([]);
    expect(found?.message).toBe('MW-1: `Pump manual` is cited as `3`, and the shop holds `4`');
    expect(found?.hint).toContain('torque of the cover joint 160 N·m (page 12)');
    expect(found?.hint).toContain('limit of the cover gap 0.05 to 0.30 mm, steps 10 and 12 (page 14)');
    expect(found?.hint).toContain('`confirmed: { MW-1: { by: …, on: …, finding: … } }`');
  });

  test('a confirmation settles it, also for joint, shared stage and manual of the machine', () => {
    expect(told('REV011', manual('4', confirmed('MW-1')), MACHINE)).toEqual([]);
  });

  test('a confirmation from before the edition came in was with an older one', () => {
    const received = '  received: 2026-06-01\n';
    expect(told('REV011', manual('4', received + confirmed('MW-1', '2026-05-31')))).toHaveLength(1);
    expect(told('REV011', manual('4', received + confirmed('MW-1', '2026-06-01')))).toEqual([]);
  });

  test('a procedure that names it nowhere itself is told where its joint or its stage names it', () => {
    const own = put(PROCEDURE, PAGE_14, '          source: { document: Pump manual, edition: "4", place: page 14 }\n');
    const joint = put(PUMP, PAGE_12, PAGE_12.replace('"3"', '"4"'));
    const stage = put('stages/isolate.yaml', PAGE_9, PAGE_9.replace('"3"', '"4"'));
    const message = 'MW-1: `Pump manual` is cited as `3`, and the shop holds `4`';
    expect(told('REV011', manual('4'), own).map((t) => t.message)).toEqual([message]);
    expect(told('REV011', manual('4'), own, stage)[0]?.hint).toContain(
      'compare with the new edition: torque of the cover joint 160 N·m (page 12); then',
    );
    expect(told('REV011', manual('4'), own, joint)[0]?.hint).toContain(
      'compare with the new edition: limit of the water pressure at most 0.5 bar, step 3 (page 9); then',
    );
    expect(told('REV011', manual('4'), own, joint, stage)).toEqual([]);
  });

  test('the manual of a machine, when it alone was left behind', () => {
    const rest = [
      put(PROCEDURE, PAGE_14, PAGE_14.replace('"3"', '"4"')),
      put(PUMP, PAGE_12, PAGE_12.replace('"3"', '"4"')),
      put('stages/isolate.yaml', PAGE_9, PAGE_9.replace('"3"', '"4"')),
    ];
    const found = told('REV011', manual('4'), MACHINE, ...rest);
    expect(found.map((t) => t.message)).toEqual(['`Pump manual` is cited as `3`, and the shop holds `4`']);
    expect(found[0]?.hint).not.toContain('confirmed');
  });

  test('a typed torque table is told for itself', () => {
    const table: Edit = {
      file: 'tables/pump.yaml',
      to: 'id: pump\ntitle: Screws\nsource: { document: Pump manual, edition: "3" }\ncondition: oiled\npreload: 70 %\nrows:\n  M16: { "8.8": 160 N·m }\n',
    };
    expect(told('REV011', manual('4', confirmed('MW-1')), table).map((t) => t.at)).toEqual(['"3"']);
  });

  test('a source without edition cannot be another edition', () => {
    expect(told('REV011', manual('3'), put(PUMP, PAGE_12, '    source: { document: Pump manual }\n'))).toEqual([]);
  });
});

describe('REV008', () => {
  const other = put(PUMP, PAGE_12, PAGE_12.replace('"3"', '"2"'));
  test('of a listed document the register tells which edition is right, and nothing is told twice', () => {
    expect(told('REV008', other)).toHaveLength(1);
    expect(told('REV008', manual('3'), other)).toEqual([]);
    expect(told('REV011', manual('3'), other).map((t) => t.at)).toEqual(['"2"']);
  });
});

describe('REV012', () => {
  const twice = [
    put(PUMP, PAGE_12, '    source: { document: Oil sheet, edition: "1" }\n'),
    put(PROCEDURE, PAGE_14, '          source: { document: oil  sheet, edition: "1" }\n'),
  ];
  test('once a document, at its first place; case and blanks make no other', () => {
    const found = told('REV012', manual('3'), ...twice);
    expect(found.map((t) => t.message)).toEqual([
      '`Oil sheet` is not in the register of outside documents (and at another place)',
    ]);
    expect(found[0]?.hint).toContain('add it to outside.yaml');
    expect(told('REV012', manual('3'), put(PUMP, PAGE_12, PAGE_12.replace('Pump manual', 'PUMP  manual')))).toEqual([]);
  });

  test('a shop without the register is not asked for it', () => {
    expect(told('REV012', ...twice)).toEqual([]);
  });
});

describe('REV013', () => {
  test.each([
    ['4', 'MW-1', undefined],
    ['3', 'MW-1', '`MW-1` is confirmed, and already names `3`'],
    ['3', 'MW-7', '`MW-7` is confirmed, and the shop has no such procedure'],
  ])('edition %s, %s confirmed', (edition, doc, message) => {
    expect(told('REV013', manual(edition, confirmed(doc))).map((t) => t.message)).toEqual(
      message === undefined ? [] : [message],
    );
  });

  test('a document that the procedure does not name; the procedure that was meant is offered', () => {
    const sheet: Edit = {
      file: 'outside.yaml',
      to: `oil-sheet: { document: Oil sheet, kind: data sheet, edition: "2", owner: ben, confirmed: { MW-1: { by: ben, on: 2026-02-03, finding: Same } } }\n`,
    };
    expect(told('REV013', sheet).map((t) => t.message)).toEqual(['`MW-1` is confirmed, and names `Oil sheet` nowhere']);
    expect(told('REV013', manual('4', confirmed('MW-7')))[0]?.hint).toBe('did you mean `MW-1`?');
  });
});

test.each([
  ['edition 3', '3rd edition', true],
  ['issue 3', 'revision 3', true],
  ['sheets 1 to 4, revision 3', 'revision 3', true],
  ['sheet 2, revision 4', 'Revision 4', true],
  ['issue of 2019', '2019', true],
  ['3', '4', false],
  ['3', '3A', false],
  ['2019', '2019-06', false],
])('%s and %s', (a, b, same) => {
  expect(isSameEdition(a, b)).toBe(same);
  expect(isSameEdition(b, a)).toBe(same);
});

/** The example shop after a change, resolved. */
const resolved = (edits: readonly Edit[]) => {
  const { files } = edited(EXAMPLE_SHOP, edits);
  return compileFiles((report) => readMemory(files, {}, 'shop', report), 'shop', { cards: 'suspect' }).resolved;
};

describe('what rests on which document', () => {
  const resting = (...edits: readonly Edit[]) => {
    const shop = resolved(edits);
    const [document] = shop.documents;
    if (document === undefined) throw new RangeError('the example shop has a procedure');
    return restsOn(shop, document).map((r) => ({
      ...r,
      numbers: r.numbers.map((n) => n.replaceAll('\u00a0', ' ')),
    }));
  };

  test('joints, then steps; numbers that stand on one card only say on which', () => {
    expect(resting(manual('3'))).toEqual([
      {
        outsideId: 'pump-manual',
        document: 'Pump manual',
        edition: '3',
        numbers: [
          'torque of the cover joint 160 N·m (page 12)',
          'limit of the water pressure at most 0.5 bar, step 3 (page 9)',
          'limit of the cover gap 0.05 to 0.30 mm, steps 10 and 12 (page 14)',
        ],
      },
    ]);
    const large = put(
      PUMP,
      '        pattern: { circle: 320 mm, count: 12, first: 15 deg }\n',
      '        pattern: { circle: 320 mm, count: 12, first: 15 deg }\n        torque: 155 N·m\n',
    );
    expect(resting(large)[0]?.numbers.slice(0, 2)).toEqual([
      'torque of the cover joint 160 N·m, Small (page 12)',
      'limit of the water pressure at most 0.5 bar, step 3 (page 9)',
    ]);
    expect(resting(large)[0]?.numbers).toContain('torque of the cover joint 155 N·m, Large (page 12)');
  });

  test('the list of the procedure has no numbers of its own; two editions are kept apart', () => {
    const listed = put(
      PROCEDURE,
      'owner: ben\n',
      'owner: ben\nsources: [{ document: Oil sheet, edition: "1" }, { document: Pump manual, edition: "2" }]\n',
    );
    expect(resting(listed).map((r) => [r.document, r.edition, r.numbers.length])).toEqual([
      ['Oil sheet', '1', 0],
      ['Pump manual', '2', 0],
      ['Pump manual', '3', 3],
    ]);
  });

  test.each([
    ['clamp: { force: 20 kN, source: { document: Oil sheet } }', 'least clamp force of the cover joint 20 kN'],
    [
      'bearing_limit: { pressure: 300 MPa, source: { document: Oil sheet } }',
      'pressure that the faces of the cover joint bear 300 MPa',
    ],
    [
      'gasket_load: { area: 90 cm2, seating: 10 MPa, most: 90 MPa, source: { document: Oil sheet } }',
      'pressure on the gasket of the cover joint at least 10 MPa and at most 90 MPa',
    ],
  ])('%s', (line, words) => {
    const edit = put(PUMP, '    socket: socket-24\n', `    socket: socket-24\n    ${line}\n`);
    expect(resting(edit).flatMap((r) => r.numbers)).toContain(words);
  });

  test('the nut factor of a lubricant rests on its listed data sheet', () => {
    const edits = [
      put(
        'consumables.yaml',
        'medium: mineral oil,',
        'nut_factor: { low: 0.13, nominal: 0.16, high: 0.20, source: { document: "Oil, sheet", edition: "1", place: line 2 } }, medium: mineral oil,',
      ),
      {
        file: 'outside.yaml',
        to: 'oil-sheet: { document: "Oil, sheet", kind: data sheet, edition: "2", owner: ben }\n',
      },
    ];
    expect(resting(...edits).find((r) => r.outsideId === 'oil-sheet')).toEqual({
      outsideId: 'oil-sheet',
      document: 'Oil, sheet',
      edition: '1',
      numbers: ['nut factor of the cover joint 0.16 (line 2)'],
    });
    expect(told('REV011', ...edits).map((t) => t.at)).toEqual(['"1"']);
  });

  test('states of the register: older editions alone, with their confirmations', () => {
    const states = (...edits: readonly Edit[]) => editionStates(resolved(edits));
    expect(states(manual('3'))).toEqual([
      { id: 'pump-manual', document: 'Pump manual', kind: "maker's manual", edition: '3', owner: 'ben', rests: [] },
    ]);
    const [open] = states(manual('4'));
    expect(open?.rests.map((r) => [r.doc, r.edition, r.numbers.length, r.confirmed])).toEqual([
      ['MW-1', '3', 3, undefined],
    ]);
    const [settled] = states(manual('4', `  kept: Office\n${confirmed('MW-1')}`));
    expect(settled?.kept).toBe('Office');
    expect(settled?.rests[0]?.confirmed).toEqual({ by: 'ben', on: '2026-02-03', finding: 'All the same' });
  });
});
