/** Binders under control: copy numbers, every page in the list of effective pages, and what is not bound. */

import { describe, expect, test } from 'vitest';
import { collector } from '../../src/diagnostics/index.ts';
import { type BinderControl, layoutBinder } from '../../src/layout/binder/index.ts';
import { layoutCards, mm } from '../../src/layout/card/index.ts';
import { loadFaces } from '../../src/layout/type/index.ts';
import { paintBinder } from '../../src/render/pdf/index.ts';
import type { Bench, Document, ResolvedShop } from '../../src/resolve/index.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { note, standing, withTemporary } from './controlled.ts';
import { demo } from './demo.ts';
import { type ReadPdf, readPdf, squeeze } from './read-pdf.ts';

const { shop } = demo();
const faces = loadFaces();

function benchOf(id: string): Bench {
  const found = shop.benches.find((b) => b.id === id);
  if (found === undefined) throw new Error(`no bench ${id}`);
  return found;
}

const HEAT = benchOf('heat-exchange');
const ONLY: Document[] = shop.documents.filter((d) => HEAT.binder.includes(d.doc));
const SUSPENDED = {
  doc: 'OF-240',
  title: 'Renew the joint of the fresh-water tank cover',
  standing: 'suspended',
  rev: 'B',
  reason: 'gasket of the wrong medium found in stores',
};
const CONTROL: BinderControl = { asOf: '2026-11-25', copies: 7, states: [SUSPENDED] };

function withDocuments(change: (document: Document) => Document, format = shop.info.cardFormat) {
  const own: ResolvedShop = {
    ...shop,
    info: { ...shop.info, cardFormat: format },
    documents: ONLY.map(change),
  };
  return { own, cards: layoutCards(own, faces, collector(CATALOGUE).report) };
}

const TOUCHED = withDocuments((d) => (d.doc === 'OF-204' ? withTemporary(d, 3, note('TC-07')) : d));

async function read(
  own: ResolvedShop,
  cards: ReturnType<typeof layoutCards>,
  control: BinderControl,
): Promise<ReadPdf> {
  const pdf = await readPdf(await paintBinder(own, HEAT, cards, control));
  expect([...new Set(pdf.pages.flatMap((p) => p.faults))]).toEqual([]);
  return pdf;
}

describe('a binder under control', () => {
  const copy = squeeze(`copy ${HEAT.copy} of 7`);

  test('names its copy on cover, list, dividers and blank sides, and every card bears it', async () => {
    const pdf = await read(TOUCHED.own, TOUCHED.cards, CONTROL);
    expect(pdf.info.Title).toBe(`Binder ${HEAT.name}, copy ${HEAT.copy} of 7, as of 2026-11-25`);
    expect(pdf.pages[0]?.joined).toContain(squeeze(`Copy ${HEAT.copy} of 7`));
    const count = pdf.pages.length;
    pdf.pages.forEach((page, i) => {
      const card = page.joined.includes(squeeze(`CONTROLLED COPY ${HEAT.copy} of 7 · ${HEAT.name}`));
      const sheet = page.joined.includes(
        `${squeeze(`Binder ${HEAT.name}, `)}${copy}${squeeze(`, as of 2026-11-25 · binder page ${i + 1} of ${count}`)}`,
      );
      expect([card, sheet].filter(Boolean).length, `page ${i + 1}`).toBe(1);
      expect(page.joined).not.toContain('UNCONTROLLED');
    });
  });

  test('lists every page once and without a gap: cover, the list itself, dividers, cards, blank sides', async () => {
    for (const format of ['A4', 'A5'] as const) {
      const { own, cards } = withDocuments((d) => d, format);
      const pdf = await read(own, cards, CONTROL);
      const list = pdf.pages.filter((p) => p.joined.includes('Fingerprint') && !p.joined.includes('Page1of'));
      // The leftmost column of the table.
      const left = (i: number): number => (i % 2 === 1 ? (format === 'A4' ? 12 : 8) : format === 'A4' ? 22 : 20);
      const spans = list.flatMap((page) => {
        const at = mm(left(pdf.pages.indexOf(page)));
        return page.texts
          .filter((t) => Math.abs(t.x - at) < 1 && /^\d+(\s+to\s+\d+)?$/u.test(t.text))
          .sort((a, b) => b.y - a.y)
          .map((t) => t.text.split(/\s+to\s+/u).map(Number));
      });
      let next = 1;
      for (const [from = 0, to = from] of spans) {
        expect(from, format).toBe(next);
        next = to + 1;
      }
      expect(next - 1, format).toBe(pdf.pages.length);
      const all = list.map((p) => p.joined).join('');
      for (const text of ['Cover', 'List of effective pages', 'Divider']) expect(all).toContain(squeeze(text));
      for (const card of cards.filter((c) => c.doc !== 'OF-240')) {
        const row = `${card.rev}${card.effective}${card.sides.length}${card.fingerprint}`;
        expect(all).toContain(squeeze(row));
      }
    }
  });

  test('says which card bears a temporary change', async () => {
    const pdf = await read(TOUCHED.own, TOUCHED.cards, CONTROL);
    expect(pdf.pages[1]?.joined.split(squeeze('with temporary change TC-07')).length).toBe(3);
  });

  test('names what is suspended or not yet effective, and binds none of it', async () => {
    const { own, cards } = withDocuments((d) => (d.doc === 'OF-131' ? standing(d, 'not yet effective') : d));
    const pdf = await read(own, cards, CONTROL);
    const [cover, list] = pdf.pages.map((p) => p.joined);
    expect(cover).toContain(squeeze('SUSPENDED: not in this binder'));
    expect(cover).toContain(squeeze('NOT YET EFFECTIVE: not in this binder'));
    for (const text of [
      'Not in this binder',
      'None of these is to be worked from.',
      `OF-240${SUSPENDED.title}BSUSPENDEDGasket of the wrong medium found in stores.`,
      'NOT YET EFFECTIVE',
      `from ${own.documents.find((d) => d.doc === 'OF-131')?.revision.effective}`,
    ])
      expect(list).toContain(squeeze(text));
    for (const card of cards.filter((c) => c.doc === 'OF-240' || c.doc === 'OF-131'))
      expect(pdf.pages.some((p) => p.joined.includes(card.address))).toBe(false);
    for (const card of cards.filter((c) => c.doc === 'OF-204' || c.doc === 'OF-184'))
      expect(pdf.pages.some((p) => p.joined.includes(card.address))).toBe(true);
  });

  test('binds what is in force although a newer revision waits for its day', async () => {
    const { own, cards } = TOUCHED;
    const waiting = cards
      .filter((c) => c.doc === 'OF-131')
      .map((c) => ({ ...c, rev: 'K', effective: '2026-12-01', standing: 'not yet effective' as const }));
    const state = { doc: 'OF-131', title: 'Renew a flange gasket', standing: 'not yet effective' };
    for (const states of [[], [{ ...state, rev: 'K', effective: '2026-12-01' }]]) {
      const pdf = await read(own, [...waiting, ...cards], { ...CONTROL, states });
      const own131 = cards.filter((c) => c.doc === 'OF-131');
      const pages = pdf.pages.filter((p) => own131.some((c) => p.joined.includes(c.address)));
      expect(pages.length).toBe(own131.reduce((n, c) => n + c.sides.length, 0));
      expect(pdf.pages[0]?.joined).not.toContain('NOTYETEFFECTIVE');
      expect(pdf.pages[1]?.joined.includes(squeeze('KNOT YET EFFECTIVE, from 2026-12-01'))).toBe(states.length > 0);
    }
  });

  test('never binds a draft, and says of a document without any card that it is not issued', async () => {
    const { own, cards } = withDocuments((d) => (d.doc === 'OF-131' ? standing(d, 'draft') : d));
    const some = cards.filter((c) => c.doc !== 'OF-184');
    const pdf = await read(own, some, { ...CONTROL, states: [] });
    expect(pdf.pages[1]?.joined).toContain(squeeze('NOT ISSUED'));
    expect(pdf.pages[1]?.joined).toContain('DRAFT');
    expect(pdf.pages.some((p) => p.joined.includes(squeeze('DRAFT: not for work')))).toBe(false);
  });

  test('keeps its own sheets within the paper, also where everything is suspended and on small paper', () => {
    const states = HEAT.binder.map((doc) => ({ ...SUSPENDED, doc }));
    for (const format of ['A4', 'A5', 'Letter'] as const) {
      const { own, cards } = withDocuments((d) => d, format);
      for (const control of [CONTROL, { ...CONTROL, states }, { ...CONTROL, states: [] }]) {
        const binder = layoutBinder(own, HEAT, cards, faces, control);
        for (const entry of binder.entries) {
          if (entry.kind === 'card') continue;
          const foot = entry.blocks.at(-1);
          for (const b of entry.blocks.slice(0, -1))
            expect(b.y + b.block.height, format).toBeLessThanOrEqual((foot?.y ?? 0) + 0.01);
          expect((foot?.y ?? 0) + (foot?.block.height ?? 0)).toBeLessThanOrEqual(binder.height - mm(6.4));
        }
      }
    }
  });

  test('is the same bytes twice, and others for another copy or day', async () => {
    const { own, cards } = TOUCHED;
    const first = await paintBinder(own, HEAT, cards, CONTROL);
    expect(Buffer.compare(first, await paintBinder(own, HEAT, cards, CONTROL))).toBe(0);
    expect(Buffer.compare(first, await paintBinder(own, { ...HEAT, copy: 5 }, cards, CONTROL))).not.toBe(0);
    expect(Buffer.compare(first, await paintBinder(own, HEAT, cards, { ...CONTROL, asOf: '2026-11-26' }))).not.toBe(0);
  });
});
