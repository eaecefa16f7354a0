/** The file for a spreadsheet, read back by a parser that follows RFC 4180 alone. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CardNeeds, csvCell, csvText, orderCsv, orderList } from '../../src/lists/index.ts';
import { quantity } from '../../src/units/index.ts';

/** RFC 4180, 2: records end in CR LF; a quoted field ends at a lone quote, a doubled one is a quote. */
function parse(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    let cell = '';
    if (text[at] === '"') {
      at += 1;
      for (; ; at += 1) {
        if (text[at] === '"' && text[at + 1] === '"') at += 1;
        else if (text[at] === '"') break;
        cell += text[at] ?? '';
      }
      at += 1;
    } else {
      while (at < text.length && text[at] !== ',' && text[at] !== '\r') cell += text[at++];
    }
    row.push(cell);
    if (text[at] === ',') {
      at += 1;
      if (text.startsWith('\r\n', at)) row.push('');
    }
    if (text.startsWith('\r\n', at)) {
      at += 2;
      rows.push(row);
      row = [];
    }
  }
  return rows;
}

describe('cells', () => {
  test.each([
    ['aaa', 'aaa'],
    // RFC 4180, 2.6 and 2.7.
    ['b\r\nbb', '"b\r\nbb"'],
    ['b"bb', '"b""bb"'],
    ['a,b', '"a,b"'],
    // OWASP, CSV Injection: = + - @, tab and return at the beginning.
    ['=1+1', "'=1+1"],
    ['=HYPERLINK("http://a","b")', `"'=HYPERLINK(""http://a"",""b"")"`],
    ['+44', "'+44"],
    ['-12', "'-12"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['\t=1', "'\t=1"],
    ['\u00a0=1', ' =1'],
    ['12\u00a0g', '12 g'],
    ['6 - 8', '6 - 8'],
  ])('%j', (text, cell) => {
    expect(csvCell(text)).toBe(cell);
  });
});

describe('rows', () => {
  test('any text comes back whole, and no cell can begin a formula', () => {
    const cell = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom('=a', '+1', '-1', '@x', '"', ',', '\r\n', '', "'"),
    );
    const rows = fc
      .integer({ min: 1, max: 4 })
      .chain((width) =>
        fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 5 }),
      );
    fc.assert(
      fc.property(rows, (written) => {
        const text = csvText(written);
        expect(text.endsWith('\r\n')).toBe(true);
        const read = parse(text);
        expect(read.flat().filter((c) => /^[=+\-@\t\r]/u.test(c))).toEqual([]);
        const bare = (c: string) => (/^'[=+\-@\t\r]/u.test(c) ? c.slice(1) : c);
        const meant = written.map((r) => r.map((c) => c.replaceAll('\u00a0', ' ')));
        expect(read.map((r) => r.map(bare))).toEqual(meant.map((r) => r.map(bare)));
      }),
    );
  });

  test('an order list is a table with a head, one row a line, and says what stands only to be looked for', () => {
    const card: CardNeeds = {
      card: 'MW-1-LARGE',
      doc: 'MW-1',
      slug: 'mw-1',
      title: 'Renew the gasket',
      label: 'Large',
      machine: 'pump',
      machineName: 'pump, "old"',
      kits: [],
      parts: [
        { id: 'gasket', name: '=gasket', number: '-7', fresh: 1, inspected: 0, lead: quantity('time', 10, 'd') },
        { id: 'screw', name: 'screw', fresh: 0, inspected: 8 },
      ],
      consumables: [
        { id: 'paste', amounts: [quantity('mass', 60, 'g')], asNeeded: 0 },
        { id: 'wipe', amounts: [], asNeeded: 2 },
      ],
    };
    const consumables = {
      paste: { name: 'paste', number: 'S-1', pack: quantity('mass', 100, 'g') },
      wipe: { name: 'wipe' },
    };
    const list = orderList({ cards: [card], consumables }, new Map([['MW-1-LARGE', 2]]));
    const text = orderCsv(list, () => card.machineName);
    expect(text.charCodeAt(0)).not.toBe(0xfeff);
    expect(parse(text)).toEqual([
      ['Order', 'Unit', 'Number', 'Name', 'Kind', 'Needed', 'Delivery time', 'Machine', 'Asked for by', 'Note'],
      ['2', 'pieces', "'-7", "'=gasket", 'Part', '2 fitted new', '10 days', 'pump, "old"', 'MW-1 Large × 2', ''],
      ['2', 'packs of 100 g', 'S-1', 'paste', 'Consumable', '120 g', '', '', 'MW-1 Large × 2', ''],
      [
        '',
        '',
        '',
        'wipe',
        'Consumable',
        'as needed',
        '',
        '',
        'MW-1 Large × 2',
        'no amount stated: look whether it is in stock',
      ],
      [
        '',
        '',
        '',
        'screw',
        'Part',
        '',
        '',
        'pump, "old"',
        'MW-1 Large × 2',
        '16 inspected, no usual share stated: look whether spares are in stock',
      ],
    ]);
    expect(orderCsv(list, () => card.machineName)).toBe(text);
  });
});
