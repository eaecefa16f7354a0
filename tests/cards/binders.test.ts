/** Binders and posters of the demo, painted and read back. */

import { expect, test } from 'vitest';
import { paintBinder, paintTables } from '../../src/render/pdf/index.ts';
import { formatNumber } from '../../src/units/index.ts';
import { demo } from './demo.ts';
import { elements, readPdf, squeeze } from './read-pdf.ts';

const { shop, cards } = demo();

test.each(shop.benches.map((b) => b.id))(
  'binder of %s: cover, list of effective pages, its cards in order, each on the front of a leaf',
  async (id) => {
    const bench = shop.benches.find((b) => b.id === id);
    if (bench === undefined) throw new Error('no bench');
    const bytes = await paintBinder(shop, bench, cards);
    const pdf = await readPdf(bytes);
    const [cover, list] = pdf.pages;
    for (const text of [bench.name, bench.place, shop.info.name, shop.info.safety, ...bench.binder])
      expect(cover?.joined).toContain(squeeze(text));
    expect(list?.joined).toContain(squeeze('List of effective pages'));
    const own = bench.binder.flatMap((doc) => cards.filter((c) => c.doc === doc));
    const rows = own.map((c) =>
      squeeze(`${c.doc}${c.title}${c.variantLabel}${c.rev}${c.effective}${c.sides.length}${c.fingerprint}`),
    );
    let at = 0;
    for (const row of rows) {
      at = list?.joined.indexOf(row, at) ?? -1;
      expect(at, row).toBeGreaterThanOrEqual(0);
    }
    // Leaves are counted by their fronts: page 1, 3, 5 ...
    let from = 0;
    for (const card of own) {
      const start = pdf.pages.findIndex(
        (p, i) =>
          i >= from && p.joined.includes(squeeze(`Page 1 of ${card.sides.length}`)) && p.joined.includes(card.address),
      );
      expect(start, card.name).toBeGreaterThanOrEqual(from);
      expect(start % 2, card.name).toBe(0);
      from = start + card.sides.length;
    }
    expect([...new Set(pdf.pages.flatMap((p) => p.faults))]).toEqual([]);
    expect(pdf.fonts.length).toBeGreaterThanOrEqual(3);
    expect(pdf.fonts.filter((f) => !f.embedded)).toEqual([]);
    expect(Buffer.compare(bytes, await paintBinder(shop, bench, cards))).toBe(0);
  },
);

test('posters: every thread of every table with torque in both units and preload', async () => {
  const bytes = await paintTables(shop);
  const pdf = await readPdf(bytes);
  for (const table of shop.tables) {
    const page = pdf.pages.filter(
      (p) =>
        p.joined.includes(squeeze(table.grade.id)) &&
        p.joined.toLowerCase().includes(squeeze(table.condition.name).toLowerCase()),
    );
    const text = page.map((p) => p.joined).join('');
    for (const row of table.rows) {
      const want = `${row.thread.designation}${formatNumber(row.printedNm)}${formatNumber(row.printedLbfFt)}${(row.preloadN / 1000).toFixed(1)}`;
      expect(text).toContain(squeeze(want));
    }
    expect(text).toContain(squeeze("Computed, not the maker's."));
  }
  expect([...new Set(pdf.pages.flatMap((p) => p.faults))]).toEqual([]);
  expect(pdf.pages.flatMap((p) => elements(p.structure)).filter((n) => n.role === 'Table').length).toBe(
    pdf.pages.length,
  );
  expect(Buffer.compare(bytes, await paintTables(shop))).toBe(0);
});

test('posters of tables from manuals: every cell in its row, both units where the manual has them', async () => {
  const pdf = await readPdf(await paintTables(shop));
  expect(shop.statedTables.length).toBeGreaterThan(1);
  for (const { title, source, comparison } of shop.statedTables) {
    const page = pdf.pages.find((p) => p.joined.includes(squeeze(title)));
    expect(page?.joined, title).toContain(squeeze(source.document));
    expect(page?.joined).toContain(squeeze('Typed from the manual and checked cell by cell.'));
    for (const thread of new Set(comparison.cells.map((c) => c.thread.designation))) {
      const row = comparison.cells
        .filter((c) => c.thread.designation === thread)
        .map((c) => formatNumber(c.stated) + (c.second === undefined ? '' : formatNumber(c.second)));
      expect(page?.joined).toContain(squeeze(thread + row.join('')));
    }
  }
});
