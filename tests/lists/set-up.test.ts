/** Set-up list of a bench, order book and parts of a small shop, counted by hand. */

import { describe, expect, test } from 'vitest';
import { orderBook, orderList, setUpList, wrenchSettings } from '../../src/lists/index.ts';
import type { ResolvedShop } from '../../src/resolve/index.ts';
import { quantity } from '../../src/units/index.ts';
import { type Changes, compileMini } from '../fixtures/mini-shop.ts';

/** The mini shop with a hook and a lift that only the large pump needs, a kit, amounts, delivery times and a share. */
const CHANGES: Changes = {
  'tools.yaml': (t) => `${t}hook: { name: plug hook, kind: special tool, kept: Drawer 3 }
socket-15-16: { name: 15/16 in socket, kind: socket, size: 15/16 in }
`,
  'consumables.yaml':
    () => `oil: { name: machine oil, kind: lubricant, condition: oiled, ppe: [gloves], pack: 100 ml, lead: 1 week, waste: Oil drum }
wipe: { name: lint-free wipe, kind: wipe, waste: Rag bin }
`,
  'machines/pump.yaml': (t) =>
    t
      .replace('always_replace: true }', 'always_replace: true, kit: Gasket kit, lead: 6 weeks }')
      .replace('number: MW-102 }', 'number: MW-102, rate: 10 % }'),
  'procedures/mw-1.yaml': (t) =>
    t
      .replace(
        '- do: Take out the <part:plug>.\n        only: { size: large }\n',
        `- do: Take out the <part:plug>.
        only: { size: large }
        with: [hook, socket-15-16]
        lift: { mass: 30 kg, by: hoist }
`,
      )
      .replace(
        'lubricate: { with: oil, where: thread and under the head }',
        'lubricate: { with: oil, where: thread and under the head }\n        use: { oil: 30 ml }',
      ),
};

/** The lists read what was resolved; whether the checks would let the shop be published is no matter of theirs. */
function shopOf(changes: Changes): ResolvedShop {
  const { resolved, diagnostics } = compileMini(changes);
  const unread = diagnostics.filter((d) => /^(?:REF|FLD|SRC)/u.test(d.code) && d.severity === 'error');
  expect(unread.map((d) => `${d.code} ${d.message}`)).toEqual([]);
  return resolved;
}

describe('the set-up list of a bench', () => {
  const shop = shopOf(CHANGES);
  const [bench] = shop.benches;
  if (bench === undefined) throw new Error('no bench');
  const list = setUpList(shop, bench);
  const tool = (id: string) => list.tools.flatMap((g) => g.tools).find((t) => t.id === id);

  test('is the union over its cards, by kind and size', () => {
    expect(list.cards.map((c) => c.variant.cardName)).toEqual(['MW-1-SMALL', 'MW-1-LARGE']);
    expect(list.tools.map((g) => [g.title, g.tools.map((t) => t.id)])).toEqual([
      ['Torque wrenches', ['wrench-40-200']],
      ['Sockets and keys', ['socket-24', 'socket-15-16']],
      ['Measuring tools', ['feeler', 'gauge']],
      ['Lifting gear', ['hoist']],
      ['Lockout', ['lock']],
      ['Special tools', ['hook']],
    ]);
  });

  test('a tool that one card needs names that card, and no other does', () => {
    expect(tool('hook')?.neededBy.only?.variant.cardName).toBe('MW-1-LARGE');
    expect(tool('hook')?.kept).toBe('Drawer 3');
    expect(tool('feeler')?.neededBy).toMatchObject({ isAll: true, docs: ['MW-1'] });
    for (const t of list.tools.flatMap((g) => g.tools)) {
      const using = list.cards.filter((c) => c.variant.tools.some((u) => u.id === t.id));
      expect(t.neededBy.only, t.id).toBe(using.length === 1 ? using[0] : undefined);
    }
  });

  test('a torque wrench says what it is set to: 30 % to 100 % of 160 N·m', () => {
    // Rounds of 30, 70 and 100 % of 160 N·m on a scale of 1 N·m: 48, 112, 160.
    expect(tool('wrench-40-200')?.settings?.text).toBe('48 to 160\u00a0N·m');
    expect(tool('socket-24')?.settings).toBeUndefined();
  });

  test('lifts, protection and waste stand on it', () => {
    expect(list.lifts.map((l) => [l.mass.value, l.by, l.neededBy.only?.variant.label])).toEqual([
      [30, 'hoist', 'Large'],
      [18, 'chain hoist', undefined],
    ]);
    expect(list.ppe.map((p) => p.name)).toEqual(['gloves', 'eye protection']);
    expect(list.waste).toEqual([
      { where: 'Rag bin', names: ['lint-free wipe'] },
      { where: 'Oil drum', names: ['machine oil'] },
    ]);
  });

  test('a bench of one card names no card, because all are its own', () => {
    const one = shopOf({
      'procedures/mw-1.yaml': (t) => t.replace('applies: { size: [small, large] }', 'applies: { size: [large] }'),
    });
    const only = one.benches.map((b) => setUpList(one, b)).flatMap((l) => l.tools.flatMap((g) => g.tools));
    expect(only.length).toBeGreaterThan(3);
    expect(only.filter((t) => t.neededBy.only !== undefined)).toEqual([]);
  });

  test('a document that the shop lacks is left out', () => {
    expect(setUpList(shop, { ...bench, binder: ['MW-9'] })).toMatchObject({ cards: [], tools: [], ppe: [] });
  });
});

describe('settings of a wrench', () => {
  test('torques measured with it count, other measures do not, and units are those of its scale', () => {
    const nm = (n: number) => quantity('torque', n, 'N·m');
    const measure = (min: ReturnType<typeof nm>) => ({
      what: 'torque',
      at: [],
      limit: { min },
      limitText: '',
      unit: min.unit,
      tool: 'w',
      toolName: 'w',
      ifOut: [],
    });
    const card = (measures: readonly ReturnType<typeof measure>[]) => ({
      document: { doc: 'A' },
      variant: { joints: [], stages: [{ steps: [{ measures }] }] },
    });
    const wrench = { id: 'w', range: { min: nm(5), max: nm(100) } };
    expect(wrenchSettings(wrench, [card([])])).toBeUndefined();
    // 50 lbf·ft is 67.79 N·m (1 lbf·ft = 1.3558179483 N·m, NIST SP 811 App. B).
    expect(wrenchSettings(wrench, [card([measure(nm(40)), measure(quantity('torque', 50, 'lbf·ft'))])])?.text).toBe(
      '40 to 67.8\u00a0N·m',
    );
    expect(wrenchSettings({ ...wrench, id: 'other' }, [card([measure(nm(40))])])).toBeUndefined();
  });
});

describe('the order book of a shop', () => {
  const shop = shopOf(CHANGES);
  const book = orderBook(shop);

  test('two jobs on small pumps and one on a large one, counted by hand', () => {
    const list = orderList(
      book,
      new Map([
        ['MW-1-SMALL', 2],
        ['MW-1-LARGE', 1],
      ]),
    );
    expect(list.lines.map((l) => [l.kind, l.name, l.order, l.lead?.value])).toEqual([
      ['kit', 'Gasket kit', 3, 6],
      // Three times 30 ml out of cans of 100 ml.
      ['consumable', 'machine oil', 1, 1],
      // 8 screws on each small pump, 12 on the large one: a tenth of 28 is 2.8.
      ['part', 'cover screw', 3, undefined],
    ]);
    expect(list.stock.map((l) => l.name)).toEqual(['lint-free wipe']);
    expect(list.unrated).toEqual([]);
  });

  test('is plain data: what JSON brings back gives the same list', () => {
    const again = JSON.parse(JSON.stringify(book)) as typeof book;
    const counts = new Map([['MW-1-LARGE', 7]]);
    expect(orderList(again, counts)).toEqual(orderList(book, counts));
  });
});
