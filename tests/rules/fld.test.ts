/** Values of the wrong form: what is said, and whether the author can mend the file from it alone. */

import { describe, expect, test } from 'vitest';
import { runExample } from '../../src/pipeline/index.ts';

const PROCEDURE = 'procedures/mw-1.yaml';
const MACHINE = 'machines/pump.yaml';

type Row = readonly [file: string, from: string, to: string, said: string, hint: RegExp];

const ROWS: readonly Row[] = [
  ['people.yaml', ', role: Fitter', '', 'FLD002 `ada` has no `role`', /^add `role:` here/],
  ['people.yaml', 'role: Fitter', 'role:', 'FLD003 `role` has no value', /^write it after the colon/],
  ['people.yaml', 'name: Ada Fern', 'name: ""', 'FLD004 `name` is empty', /^write it after the colon/],
  [
    'tools.yaml',
    'lock: { name: padlock, kind: lockout }',
    'lock: { name: padlock }',
    'FLD002 `lock` has no `kind`',
    /one of: .*`lockout`/,
  ],
  ['tools.yaml', 'kind: lockout', 'kind:', 'FLD003 `kind` has no value', /one of: .*`lockout`/],
  ['tools.yaml', 'kind: lockout', 'kind: lokcout', 'FLD004 `lokcout` is not a value of `kind`', /`lockout`/],
  ['tools.yaml', 'capacity: 250 kg', 'capacity: 250', 'FLD005 `capacity: 250` has no unit', /`250 kg`/],
  [MACHINE, 'mass: 18 kg', 'mass: 18', 'FLD005 `mass: 18` has no unit', /`18 kg`.*`18 lb`/],
  [MACHINE, 'torque: 160 N·m', 'torque: 160 mm', 'FLD005 `160 mm` is a length, and a torque is wanted', /N·m/],
  [MACHINE, 'count: 8', 'count: eight', 'FLD003 `count` is text, and a number is wanted', /a number/],
  [MACHINE, 'count: 8, ', '', 'FLD002 `pattern` has no `count`', /^add `count:` here/],
  [
    MACHINE,
    'bench: pumps\n',
    'bench: pumps\nmanual: Pump manual, page 9\n',
    'FLD003 `manual` is text, and a group of keys is wanted',
    /`document`, `edition`, `place`/,
  ],
  [
    MACHINE,
    'rotates: true',
    'rotates: yes',
    'FLD003 `rotates` is text, and `true` or `false` is wanted',
    /`true` or `false`/,
  ],
  [
    MACHINE,
    '  - { from: 51, to: 99,',
    '  - { from: 51, to: 9,',
    'FLD004 serial range 51 to 9 runs backwards',
    /smaller number first/,
  ],
  [
    MACHINE,
    '  - { from: 51, to: 99,',
    '  - { from: 49, to: 99,',
    'FLD004 serial range 49 to 99 overlaps 1 to 50',
    /one range only/,
  ],
  ['shop.yaml', 'card: { format: A4 }', 'card: A4', 'FLD003 `card` is text, and a group of keys is wanted', /`format`/],
  [
    'shop.yaml',
    'card: { format: A4 }',
    'card: { format: A3 }',
    'FLD004 `A3` is not a value of `format`',
    /`A4`, `A5`, `Letter`|did you mean/,
  ],
  ['shop.yaml', 'https://binder', 'binder', 'FLD004 `binder.mini.example/` does not fit `address`', /https:\/\//],
  [PROCEDURE, 'review: 24 months', 'review: 24 month', 'FLD004 `24 month` does not fit `review`', /24 months/],
  [
    PROCEDURE,
    'ppe: [gloves, eye protection]',
    'ppe: [gloves, eyes]',
    'FLD004 `eyes` is not a value of entry 2 of `ppe`',
    /`eye protection`/,
  ],
  [
    PROCEDURE,
    'limit: 0.05 to 0.30 mm',
    'limit: 0.30',
    'FLD006 `limit: 0.3` is neither a range nor has a unit',
    /`at most 0.3 …`/,
  ],
  [PROCEDURE, 'at: [12, 3, 6, 9]', 'at: twelve', 'FLD003 `at` is text, and a list is wanted', /`\[twelve\]`/],
  [PROCEDURE, 'doc: MW-1', 'doc: ../MW-1', 'FLD007 `../MW-1` is not a document number', /capitals, digits/],
  [PROCEDURE, 'owner: ben', 'owner: Ben Holt', 'FLD007 `Ben Holt` cannot serve as an id', /person, from people.yaml/],
  [PROCEDURE, '{ rev: A,', '{ rev: A.1,', 'FLD007 `A.1` is not a revision', /such as `B`/],
  [PROCEDURE, 'effective: 2026-01-10', 'effective: 10.1.2026', 'FLD008 `10.1.2026` is not a date', /YYYY-MM-DD/],
  [
    PROCEDURE,
    'effective: 2026-01-10',
    'effective: 2026-13-10',
    'FLD008 `2026-13-10` is not a day of the calendar',
    /01 to 12/,
  ],
  // February has 29 days in years divided by 4, those divided by 100 and not by 400 left out (ISO 8601-1, memory).
  [
    PROCEDURE,
    'effective: 2026-01-10',
    'effective: 2026-02-29',
    'FLD008 `2026-02-29` is not a day of the calendar',
    /01 to 28/,
  ],
];

describe.each(ROWS.map(([file, from, to, said, hint]) => ({ file, from, to, said, hint })))('$said', (row) => {
  test('and what to do', () => {
    const { diagnostics } = runExample([row]);
    expect(diagnostics.map((d) => `${d.code} ${d.message}`)).toEqual([row.said]);
    expect(diagnostics[0]?.hint).toMatch(row.hint);
  });
});

test('numbers in a list name the list', () => {
  const { diagnostics } = runExample([{ file: MACHINE, from: '[30 %, 70 %, 100 %]', to: '[30, 70, 100]' }]);
  expect(diagnostics.map((d) => d.message)).toEqual([30, 70, 100].map((n) => `\`${n}\` in \`rounds\` has no unit`));
  expect(diagnostics[0]?.hint).toMatch(/`30 %`, `30 N·m`/);
});

test('a day that only a leap year has', () => {
  const leap = (year: number) =>
    runExample([
      {
        file: 'tools.yaml',
        from: 'serial: MW-FG-1, calibration_due: 2027-06-01',
        to: `serial: MW-FG-1, calibration_due: ${year}-02-29`,
      },
    ]).diagnostics.filter((d) => d.code === 'FLD008').length;
  expect([2027, 2028, 2100, 2400].map(leap)).toEqual([1, 0, 1, 0]);
});
