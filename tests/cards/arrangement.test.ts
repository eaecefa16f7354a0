/** How cards arrange what they say: order within a step, tables that run over, how full their sides are, bookmarks. */

import { describe, expect, test } from 'vitest';
import { chooseLowest } from '../../src/layout/card/choose.ts';
import type { Chunk } from '../../src/layout/card/chunks.ts';
import { formatOf } from '../../src/layout/card/format.ts';
import { type Block, type CardLayout, type Node, node } from '../../src/layout/card/index.ts';
import { paginate } from '../../src/layout/card/paginate.ts';
import { type Setting, settingFor } from '../../src/layout/card/setting.ts';
import { loadFaces } from '../../src/layout/type/index.ts';
import { paintBinder, paintCard } from '../../src/render/pdf/index.ts';
import { demo } from './demo.ts';
import { readOutline } from './read-pdf.ts';

const { shop, cards } = demo();
const RANGE = { file: 'x.yaml', start: 0, end: 0 };

function textsOf(nodes: readonly Node[]): string[] {
  return nodes.flatMap((n) => [
    ...n.items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])),
    ...textsOf(n.kids),
  ]);
}

function cardOf(doc: string): CardLayout {
  const card = cards.find((c) => c.doc === doc);
  if (card === undefined) throw new Error(`no card of ${doc}`);
  return card;
}

const sideTexts = (card: CardLayout): string[][] =>
  card.sides.map((side) => side.body.flatMap((b) => textsOf(b.block.nodes)));

describe('a step', () => {
  test('says how long to wait before it asks for the reading', () => {
    const found = shop.documents.flatMap((d) =>
      d.variants.flatMap((v) =>
        v.stages.flatMap((s) =>
          s.steps.filter((step) => step.wait !== undefined && step.measures.length > 0).map((step) => ({ d, v, step })),
        ),
      ),
    );
    expect(found.length).toBeGreaterThan(0);
    for (const { d, v, step } of found) {
      const card = cards.find((c) => c.doc === d.doc && c.variantKey === v.key);
      const blocks = (card?.sides ?? []).flatMap((side) => side.body).map((b) => textsOf(b.block.nodes));
      const own = blocks.find((texts) => texts.includes(String(step.number)) && texts.some((t) => /^WAIT/u.test(t)));
      const wait = own?.findIndex((t) => /^WAIT/u.test(t)) ?? -1;
      const limit = own?.indexOf((step.measures[0]?.limitText ?? '').replaceAll(' ', '\u00a0')) ?? -1;
      expect(wait, `${d.doc} step ${step.number}`).toBeGreaterThanOrEqual(0);
      expect(limit, `${d.doc} step ${step.number}`).toBeGreaterThan(wait);
    }
  });
});

describe('arrangements', () => {
  const faults: string[] = [];
  const setting: Setting = {
    ...settingFor(loadFaces(), formatOf('A4'), RANGE, () => undefined),
    problems: { missing: () => undefined, tooWide: (word) => faults.push(word) },
  };
  const block = (height: number): Block => ({ height, decoration: [], nodes: [] });

  test('the preferred one is kept while it costs little height', () => {
    expect(chooseLowest(setting, [() => block(105), () => block(100)], 6).height).toBe(105);
    expect(chooseLowest(setting, [() => block(107), () => block(100)], 6).height).toBe(100);
  });

  test('one with a fault loses to one without, and its fault is not reported', () => {
    const chosen = chooseLowest(setting, [
      (s) => {
        s.problems.tooWide('long', 2, 1);
        return block(1);
      },
      () => block(100),
    ]);
    expect([chosen.height, faults]).toEqual([100, []]);
  });
});

describe('sides', () => {
  const chunk = (height: number, more: Partial<Chunk> = {}): Chunk => ({
    block: { height, decoration: [], nodes: [node('P', [])] },
    gap: 0,
    keepWithNext: false,
    what: 'it',
    range: RANGE,
    ...more,
  });
  const heights = (chunks: readonly Chunk[]): number[][] =>
    paginate(chunks, 100, () => undefined).map((side) => side.map((b) => b.block.height));

  test('share what stays empty, and the last one is no mere rest', () => {
    expect(heights([60, 30, 60, 30, 40].map((h) => chunk(h)))).toEqual([[60, 30], [60, 30], [40]]);
    // Filled from the front, the last side would hold 10 only.
    expect(heights([30, 30, 30, 10].map((h) => chunk(h + 1)))).toEqual([
      [31, 31],
      [31, 11],
    ]);
  });

  test('never part what belongs together, and never leave a heading behind', () => {
    expect(heights([chunk(50), chunk(30), chunk(10, { keepWithNext: true }), chunk(60)])).toEqual([
      [50, 30],
      [10, 60],
    ]);
  });

  test('a table that runs over has its heading and head again', () => {
    const head: Block = { height: 5, decoration: [], nodes: [node('TR', [])] };
    const heading: Block = { height: 7, decoration: [], nodes: [node('H2', [])] };
    const rows = Array.from({ length: 14 }, (_, i) =>
      chunk(10, { table: { id: 1, head, ...(i === 0 ? {} : { heading }) } }),
    );
    const sides = paginate(rows, 100, () => undefined);
    expect(sides.map((side) => side.map((b) => [b.block.nodes[0]?.tag, b.block.height, b.y]))).toEqual([
      [['Table', 95, 0]],
      [
        ['H2', 7, 0],
        ['Table', 55, 7],
      ],
    ]);
  });

  test('of the demo are well filled: few are more than 35 % empty, and the tables of OF-251 say that they go on', () => {
    let inner = 0;
    let bare = 0;
    for (const card of cards) {
      for (const side of card.sides.slice(0, -1)) {
        const top = side.header.y + side.header.block.height;
        const bottom = Math.max(...side.body.map((b) => b.y + b.block.height));
        inner++;
        if ((side.footer.y - bottom) / (side.footer.y - top) > 0.38) bare++;
      }
    }
    expect(bare / inner).toBeLessThan(0.03);
    const starts = sideTexts(cardOf('OF-251')).map((texts) => texts[0]);
    expect(starts).toContain('Tools (continued)');
  });
});

describe('bookmarks', () => {
  test('a card has one for each stage', async () => {
    for (const card of cards) {
      const variant = shop.documents.find((d) => d.doc === card.doc)?.variants.find((v) => v.key === card.variantKey);
      const outline = await readOutline(await paintCard(card, shop));
      expect(outline.map((o) => o.title)).toEqual(variant?.stages.map((s) => `Stage ${s.number}: ${s.title}`));
      // They lead to the side on which the stage begins, in order.
      const pages = outline.map((o) => o.page);
      expect(pages).toEqual([...pages].sort((a, b) => a - b));
      const texts = sideTexts(card);
      for (const { title, page } of outline) expect(texts[page]).toContain(title.replace(/^Stage \d+: /u, ''));
    }
  });

  test('a binder has its documents, and under them variants and stages', async () => {
    const [bench] = shop.benches;
    if (bench === undefined) throw new Error('no bench');
    const outline = await readOutline(await paintBinder(shop, bench, cards));
    const documents = bench.binder.map((doc) => shop.documents.find((d) => d.doc === doc));
    expect(outline.map((o) => o.title)).toEqual([
      `Binder: ${bench.name}`,
      'List of effective pages',
      ...documents.map((d) => `${d?.doc} ${d?.title}`),
    ]);
    documents.forEach((document, i) => {
      const own = outline[i + 2]?.items ?? [];
      const labels = (document?.variants ?? []).map((v) => v.label);
      const stages = document?.variants[0]?.stages.map((s) => `Stage ${s.number}: ${s.title}`);
      expect(own.map((o) => o.title)).toEqual(labels[0] === '' ? stages : labels);
    });
  });
});
