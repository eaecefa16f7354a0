/** The audit pack and the master list on paper, read back. */

import { expect, test } from 'vitest';
import { auditTables } from '../../src/control/audit-pack.ts';
import { BETWEEN } from '../../src/control/audit-table.ts';
import { EMPTY_LEDGER } from '../../src/control/types.ts';
import { PAPER_COLUMNS } from '../../src/layout/control/paper-columns.ts';
import { paintAuditPack, paintMasterList } from '../../src/render/pdf/index.ts';
import type { ResolvedShop } from '../../src/resolve/types.ts';
import { elements, type ReadPdf, readOutline, readPdf, squeeze } from '../cards/read-pdf.ts';
import { AS_OF, EMPTY_VIEW, fixtureShop, LEDGER, VIEW } from './audit-fixture.ts';

const shop = fixtureShop();
const words = (pdf: ReadPdf): string => pdf.pages.map((p) => p.joined).join('');

/** Marks balanced, faces in the file, nothing beyond the paper's margin of 8 mm, head and foot on every page. */
function expectSound(pdf: ReadPdf): void {
  expect([...new Set(pdf.pages.flatMap((p) => p.faults))]).toEqual([]);
  expect(pdf.marked).toBe(true);
  expect(pdf.fonts.filter((f) => !f.embedded)).toEqual([]);
  const margin = (8 * 72) / 25.4;
  pdf.pages.forEach((page, i) => {
    expect(page.joined).toContain(squeeze(`Page ${i + 1} of ${pdf.pages.length}`));
    expect(page.joined).toContain(squeeze(`As of ${AS_OF}`));
    for (const t of page.texts) {
      expect(t.x, t.text).toBeGreaterThanOrEqual(margin);
      expect(t.x + t.width, t.text).toBeLessThanOrEqual(page.width - margin);
      expect(t.y, t.text).toBeGreaterThanOrEqual(margin);
      expect(t.y, t.text).toBeLessThanOrEqual(page.height - margin);
    }
    expectNoOverlap(page);
  });
}

/** No two texts lie over each other: they would where a row or cell is too small for its words. */
function expectNoOverlap(page: ReadPdf['pages'][number]): void {
  const texts = [...page.texts].sort((a, b) => a.y - b.y);
  texts.forEach((a, i) => {
    for (const b of texts.slice(i + 1)) {
      if (b.y - a.y > a.size * 0.6) break;
      const apart = a.x + a.width <= b.x + 0.5 || b.x + b.width <= a.x + 0.5;
      expect(apart, `"${a.text}" lies over "${b.text}"`).toBe(true);
    }
  });
}

test('audit pack: every cell that paper shows is there, tagged, with bookmarks, and the same bytes again', async () => {
  const bytes = await paintAuditPack(VIEW, shop, LEDGER);
  const pdf = await readPdf(bytes);
  expectSound(pdf);
  const all = words(pdf);
  for (const table of auditTables(VIEW, shop, LEDGER)) {
    const columns = PAPER_COLUMNS.get(table.name);
    if (columns === undefined) continue;
    expect(all).toContain(squeeze(table.title));
    for (const row of table.rows) {
      for (const key of columns.flatMap((c) => c.keys)) {
        for (const part of (row[key] ?? '').split(BETWEEN))
          expect(all, `${table.name} ${key}`).toContain(squeeze(part));
      }
    }
  }
  for (const page of pdf.pages) expect(page.joined).toContain(LEDGER.head);
  const titles = (await readOutline(bytes)).map((e) => e.title);
  expect(titles).toEqual([
    'Cover',
    ...auditTables(VIEW, shop, LEDGER)
      .slice(0, -1)
      .map((t) => t.title),
  ]);
  const tags = pdf.pages.flatMap((p) => elements(p.structure)).map((n) => n.role);
  for (const tag of ['H1', 'H2', 'Table', 'TR', 'TH', 'TD', 'P']) expect(tags).toContain(tag);
  expect(Buffer.compare(bytes, await paintAuditPack(VIEW, shop, LEDGER))).toBe(0);
});

test('the cover is one sheet and names the page on which each list begins', async () => {
  const bytes = await paintAuditPack(VIEW, shop, LEDGER);
  const [cover, second] = (await readPdf(bytes)).pages;
  expect(second?.joined).toContain(squeeze('Register of documents'));
  for (const { title, page } of (await readOutline(bytes)).slice(1)) {
    const rows = auditTables(VIEW, shop, LEDGER).find((t) => t.title === title)?.rows.length;
    expect(cover?.joined, title).toContain(squeeze(`${title}${rows}${page + 1}`));
  }
  for (const text of ['1SuspendedOF-340', '1WithdrawnOF-450', '1Feedback openFB-02', 'npm run verify'])
    expect(cover?.joined).toContain(squeeze(text));
});

test('every column on paper is one of its list, and only the ledger stands in its file alone', () => {
  const tables = auditTables(VIEW, shop, LEDGER);
  for (const table of tables) {
    const known = new Set(table.columns.map(([key]) => key));
    const shown = (PAPER_COLUMNS.get(table.name) ?? []).flatMap((c) => c.keys);
    expect(shown.filter((k) => !known.has(k))).toEqual([]);
  }
  expect(tables.filter((t) => !PAPER_COLUMNS.has(t.name)).map((t) => t.name)).toEqual(['ledger']);
});

test('master list: documents, effective pages and copies, with their checksums', async () => {
  const bytes = await paintMasterList(VIEW, shop);
  const pdf = await readPdf(bytes);
  expectSound(pdf);
  const all = words(pdf);
  for (const state of VIEW.documents) {
    expect(all).toContain(squeeze(state.doc + state.title));
    expect(all).toContain(state.current?.snapshot.sha256);
    for (const c of state.current?.cards ?? []) expect(all).toContain(c.fingerprint);
  }
  for (const text of ['List of effective pages', 'Controlled copies', 'UNCONTROLLED when printed.', LEDGER.head])
    expect(all).toContain(squeeze(text));
  expect(pdf.info.Title).toBe(`Master list as of ${AS_OF}, ${shop.info.name}`);
  expect(Buffer.compare(bytes, await paintMasterList(VIEW, shop))).toBe(0);
});

test('empty lists say so in words', async () => {
  const bare: ResolvedShop = { ...shop, benches: [], outside: [], feedback: [] };
  const pdf = await readPdf(await paintAuditPack(EMPTY_VIEW, bare, EMPTY_LEDGER));
  expectSound(pdf);
  for (const table of auditTables(EMPTY_VIEW, bare, EMPTY_LEDGER)) {
    if (PAPER_COLUMNS.has(table.name)) expect(words(pdf)).toContain(squeeze(table.empty));
  }
});

test.each(['A4', 'Letter'] as const)('words and texts of any length stay on %s sheets', async (cardFormat) => {
  const long = 'Querschnittsdurchmesserprüfmaßstab'.repeat(4);
  const text = `${'the gland follower cracked and was looked at again '.repeat(36)}END`;
  const documents = VIEW.documents.map((d) => ({
    ...d,
    title: long,
    ...(d.suspended === undefined ? {} : { suspended: { ...d.suspended, reason: text } }),
  }));
  const entries = LEDGER.entries.map((e) =>
    e.kind === 'issue' ? { ...e, change: { ...e.change, what: text, why: long } } : e,
  );
  const people = shop.people.map((p) => ({ ...p, name: long }));
  const hostile: ResolvedShop = { ...shop, info: { ...shop.info, name: long, cardFormat }, people };
  const pdf = await readPdf(await paintAuditPack({ ...VIEW, documents }, hostile, { ...LEDGER, entries }));
  expectSound(pdf);
  const all = words(pdf);
  expect(all.match(/END/g)?.length).toBeGreaterThanOrEqual(entries.filter((e) => e.kind === 'issue').length);
});

test('many documents: tables run over with their heads, and the pages are counted', async () => {
  const [first] = VIEW.documents;
  if (first === undefined) throw new Error('no document');
  const documents = Array.from({ length: 60 }, (_, i) => ({ ...first, doc: `OF-${500 + i}` }));
  const pdf = await readPdf(await paintMasterList({ ...VIEW, documents }, shop));
  expectSound(pdf);
  const continued = pdf.pages.filter((p) => p.joined.includes(squeeze('Register of documents, continued')));
  expect(continued.length).toBeGreaterThan(1);
  for (const page of continued) expect(page.joined).toContain(squeeze('SHA-256 of the snapshot'));
  for (const { doc } of documents) expect(words(pdf)).toContain(doc);
});
