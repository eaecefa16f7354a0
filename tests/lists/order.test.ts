/** Order lists: worked examples counted by hand, and what must hold for any shop. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CardNeeds,
  type ConsumableLine,
  type Jobs,
  leadText,
  needText,
  noteText,
  type OrderBook,
  type OrderLine,
  orderList,
  orderText,
} from '../../src/lists/index.ts';
import { quantity } from '../../src/units/index.ts';

const weeks = (n: number) => quantity('time', n, 'weeks');

function card(name: string, more: Partial<CardNeeds>): CardNeeds {
  return {
    card: name,
    doc: name,
    slug: name.toLowerCase(),
    title: name,
    label: '',
    machine: 'pump',
    machineName: 'pump',
    kits: [],
    parts: [],
    consumables: [],
    ...more,
  };
}

const SEAL_KIT = {
  name: 'Seal kit',
  quantity: 1,
  lead: weeks(6),
  contents: [
    { id: 'ring', name: 'ring', inKit: 2, used: 2, leftOver: 0, steps: [3] },
    { id: 'clip', name: 'clip', inKit: 2, used: 1, leftOver: 1, steps: [4] },
  ],
};

/** Invented: a pump with a seal job and a cover job, and a winch of another maker. */
const BOOK: OrderBook = {
  cards: [
    card('SEAL', {
      kits: [SEAL_KIT],
      parts: [
        { id: 'gasket', name: 'gasket', number: 'P-1', fresh: 1, inspected: 0, lead: weeks(2) },
        { id: 'screw', name: 'screw', number: 'P-2', fresh: 0, inspected: 12, rate: 0.1 },
        { id: 'clip', name: 'clip', number: 'P-3', fresh: 0, inspected: 4, rate: 0.5, kit: 'Seal kit' },
        { id: 'shaft', name: 'shaft', fresh: 0, inspected: 1 },
      ],
      consumables: [
        { id: 'paste', amounts: [quantity('mass', 60, 'g')], asNeeded: 0 },
        { id: 'wipe', amounts: [], asNeeded: 3 },
      ],
    }),
    card('COVER', {
      label: 'Large',
      parts: [
        { id: 'gasket', name: 'gasket', number: 'P-1', fresh: 1, inspected: 0, lead: weeks(2) },
        { id: 'screw', name: 'screw', number: 'P-2', fresh: 0, inspected: 8, rate: 0.1 },
        { id: 'end-screw', name: 'end screw', number: 'P-2', fresh: 4, inspected: 0 },
      ],
      consumables: [{ id: 'paste', amounts: [quantity('mass', 30, 'g')], asNeeded: 1 }],
    }),
    card('WINCH', {
      machine: 'winch',
      parts: [{ id: 'plug', name: 'plug', number: 'P-1', fresh: 1, inspected: 0 }],
      consumables: [
        { id: 'oil', amounts: [quantity('volume', 18, 'l')], asNeeded: 0 },
        { id: 'sealant', amounts: [quantity('volume', 5, 'ml')], asNeeded: 0 },
      ],
    }),
  ],
  consumables: {
    paste: { name: 'paste', pack: quantity('mass', 500, 'g'), lead: weeks(1) },
    wipe: { name: 'wipe' },
    oil: { name: 'oil' },
    sealant: { name: 'sealant', pack: quantity('mass', 100, 'g') },
  },
};

const of = (counts: Readonly<Record<string, number>>) => orderList(BOOK, new Map(Object.entries(counts)));
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const short = (line: OrderLine) =>
  `${orderText(line).order} ${orderText(line).unit} ${line.name}; ${needText(line)}; ${leadText(line.lead)}`;

describe('an order list', () => {
  test('three seal jobs and two cover jobs, counted by hand', () => {
    const list = of({ SEAL: 3, COVER: 2 });
    expect(list.lines.map((l) => plain(short(l)))).toEqual([
      // One kit a job.
      '3 kits Seal kit; 3 jobs; 6 weeks',
      // One gasket in each of five jobs.
      '5 pieces gasket; 5 fitted new; 2 weeks',
      // 3 times 60 g and 2 times 30 g are 240 g, in packs of 500 g.
      '1 pack of 500 g paste; 240 g, and as needed; 1 week',
      // P-2: 2 times 4 new; 3 times 12 and 2 times 8 inspected are 52, a tenth of them 5.2: 8 + 6.
      '14 pieces screw, end screw; 8 fitted new, 5.2 expected of 52 inspected; ',
      // 3 times 4 clips at half: 6, of which 3 lie left over in the kits.
      '3 pieces clip; 6 expected of 12 inspected, 3 left over in kits; ',
    ]);
    expect(list.stock.map((l) => [l.name, l.asNeeded])).toEqual([['wipe', 9]]);
    expect(list.unrated.map((l) => [l.name, l.inspected, l.order])).toEqual([['shaft', 3, 0]]);
  });

  test('each line says which jobs ask for it', () => {
    const list = of({ SEAL: 3, COVER: 2, WINCH: 1 });
    const asking = (name: string) =>
      list.lines.find((l) => l.name === name)?.for.map((j: Jobs) => [j.card.card, j.count]);
    expect(asking('gasket')).toEqual([
      ['SEAL', 3],
      ['COVER', 2],
    ]);
    expect(asking('Seal kit')).toEqual([['SEAL', 3]]);
    // P-1 of the winch is another maker's: a line of its own.
    expect(asking('plug')).toEqual([['WINCH', 1]]);
  });

  test('an amount without a pack, or in another measure than its pack, is left to the buyer and said so', () => {
    const lines = of({ WINCH: 2 }).lines;
    const line = (name: string) => lines.find((l) => l.name === name);
    const [oil, sealant] = [line('oil'), line('sealant')];
    if (oil === undefined || sealant === undefined) throw new Error('a line is missing');
    expect([orderText(oil).order, plain(needText(oil)), noteText(oil)]).toEqual([
      '',
      '36 l',
      'no pack size stated: order the amount',
    ]);
    expect(plain(noteText(sealant))).toContain('sold in packs of 100 g');
  });

  test('kits of one name whose contents differ are said to', () => {
    const other = { ...SEAL_KIT, contents: SEAL_KIT.contents.slice(0, 1) };
    const book = { ...BOOK, cards: [...BOOK.cards, card('OTHER', { label: 'Small', kits: [other] })] };
    const [kit] = orderList(
      book,
      new Map([
        ['SEAL', 1],
        ['OTHER', 1],
      ]),
    ).lines;
    if (kit === undefined) throw new Error('no kit');
    expect(orderText(kit)).toEqual({ order: '2', unit: 'kits' });
    expect(noteText(kit)).toBe('contents differ between SEAL, OTHER Small: name the variant in the order');
  });

  test('no jobs, unknown cards and counts under one give nothing', () => {
    for (const counts of [{}, { SEAL: 0 }, { NOBODY: 4 }, { SEAL: -2 }, { SEAL: Number.NaN }]) {
      expect(of(counts)).toEqual({ jobs: [], lines: [], stock: [], unrated: [] });
    }
  });
});

/** Shops at random: parts and consumables are drawn from few ids, so that cards meet in them. */
const IDS = ['a', 'b', 'c', 'd'] as const;
const count = fc.integer({ min: 0, max: 9 });
const aPart = fc.record({
  id: fc.constantFrom(...IDS),
  fresh: count,
  inspected: count,
  percent: fc.integer({ min: 0, max: 100 }),
});
const aUse = fc.record({ id: fc.constantFrom(...IDS), tenths: fc.integer({ min: 1, max: 5000 }) });
const aBook = fc
  .array(
    fc.record({
      kits: count,
      parts: fc.uniqueArray(aPart, { selector: (p) => p.id, maxLength: 4 }),
      uses: fc.uniqueArray(aUse, { selector: (u) => u.id, maxLength: 4 }),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map(
    (cards): OrderBook => ({
      cards: cards.map(({ kits, parts, uses }, i) =>
        card(`C${i}`, {
          kits: kits === 0 ? [] : [{ name: 'kit', quantity: kits, contents: [] }],
          parts: parts.map(({ id, fresh, inspected, percent }) => ({
            id,
            name: id,
            number: id,
            fresh,
            inspected,
            rate: percent / 100,
          })),
          consumables: uses.map(({ id, tenths }) => ({
            id,
            amounts: [quantity('mass', tenths / 10, 'g')],
            asNeeded: 0,
          })),
        }),
      ),
      consumables: Object.fromEntries(IDS.map((id) => [id, { name: id, pack: quantity('mass', 250, 'g') }])),
    }),
  );

/** What is needed before anything is rounded, by line. */
function needed(lines: readonly OrderLine[]): ReadonlyMap<string, number> {
  const grams = (l: ConsumableLine) => 1000 * l.amounts.reduce((sum, a) => sum + a.si, 0);
  return new Map(
    lines.map((l) => [l.key, l.kind === 'kit' ? l.order : l.kind === 'part' ? l.fresh + l.expected : grams(l)]),
  );
}

const ordered = (lines: readonly OrderLine[]) => new Map(lines.map((l) => [l.key, l.order ?? 0]));

describe('for any shop', () => {
  const aCase = fc.tuple(aBook, fc.array(count, { minLength: 4, maxLength: 4 }));
  const counts = (all: readonly number[]) => new Map(all.map((n, i) => [`C${i}`, n]));

  test('the list for n jobs needs the sum of the n lists, and is never ordered short or more than singly', () => {
    fc.assert(
      fc.property(aCase, ([book, jobs]) => {
        const whole = orderList(book, counts(jobs));
        const single = jobs.flatMap((n, i) =>
          Array.from({ length: n }, () => orderList(book, new Map([[`C${i}`, 1]])).lines),
        );
        const sum = new Map<string, number>();
        const bound = new Map<string, number>();
        for (const lines of single) {
          for (const [key, n] of needed(lines)) sum.set(key, (sum.get(key) ?? 0) + n);
          for (const [key, n] of ordered(lines)) bound.set(key, (bound.get(key) ?? 0) + n);
        }
        const all = needed(whole.lines);
        expect([...all.keys()].sort()).toEqual([...sum.keys()].sort());
        for (const [key, n] of all) expect(n, key).toBeCloseTo(sum.get(key) ?? Number.NaN, 6);
        for (const line of whole.lines) {
          const packs = line.kind === 'consumable' ? 250 : 1;
          expect((line.order ?? 0) * packs, line.key).toBeGreaterThanOrEqual((all.get(line.key) ?? 0) - 1e-6);
          expect(line.order ?? 0, line.key).toBeLessThanOrEqual(bound.get(line.key) ?? 0);
        }
      }),
    );
  });

  test('no line stands twice, and none is empty', () => {
    fc.assert(
      fc.property(aCase, ([book, jobs]) => {
        const { lines } = orderList(book, counts(jobs));
        expect(new Set(lines.map((l) => l.key)).size).toBe(lines.length);
        for (const line of lines) expect(line.order, line.key).toBeGreaterThan(0);
      }),
    );
  });
});
