/** Every card of the demo, painted and read back. */

import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import type { CardLayout } from '../../src/layout/card/index.ts';
import { paintCard } from '../../src/render/pdf/index.ts';
import type { Document, Prose, Variant } from '../../src/resolve/index.ts';
import { isCorrected } from '../../src/resolve/index.ts';
import { formatNumber, formatQuantity } from '../../src/units/index.ts';
import { CONTENT, demo } from './demo.ts';
import { elements, inkIn, type ReadPdf, rasterise, readPdf, scan, squeeze } from './read-pdf.ts';

const { shop, cards } = demo();

interface Painted {
  readonly card: CardLayout;
  readonly document: Document;
  readonly variant: Variant;
  readonly bytes: Uint8Array;
  readonly pdf: ReadPdf;
}

const painted = new Map<string, Painted>();

function get(name: string): Painted {
  const found = painted.get(name);
  if (found === undefined) throw new Error(`no card ${name}`);
  return found;
}

beforeAll(async () => {
  for (const card of cards) {
    const document = shop.documents.find((d) => d.doc === card.doc);
    const variant = document?.variants.find((v) => v.key === card.variantKey);
    if (document === undefined || variant === undefined) throw new Error(`card ${card.name} belongs to no document`);
    const bytes = await paintCard(card, shop);
    painted.set(card.name, { card, document, variant, bytes, pdf: await readPdf(bytes) });
  }
}, 120_000);

function words(prose: Prose): string {
  return squeeze(prose.map((p) => p.runs.map((r) => r.text).join('')).join(''));
}

/** What a step must say, in the order in which it is read out. */
function expectedTexts(variant: Variant): { readonly step: number; readonly text: string }[] {
  return variant.stages.flatMap((stage) =>
    stage.steps.flatMap((step) => {
      const joint = variant.joints.find((j) => j.id === step.tighten);
      const parts: string[] = [
        ...step.warnings.flatMap((w) => [
          w.level.toUpperCase(),
          ...w.hazard.map((p) => words([p])),
          ...w.avoid.map((p) => words([p])),
        ]),
        String(step.number),
        ...step.text.map((p) => words([p])),
        ...(step.note ?? []).map((p) => words([p])),
        ...(joint === undefined
          ? []
          : [
              formatQuantity(joint.setting),
              formatQuantity(joint.settingSecond),
              // With an adapter or a locking nut the torque at the bolt stands beside what is set.
              ...(isCorrected(joint) ? [formatQuantity(joint.target)] : []),
              joint.thread.designation,
              ...joint.rounds.flatMap((r) => [formatNumber(r.setting), formatNumber(r.settingSecond)]),
              'TOP',
              ...joint.sequence.order.map((_, i) => String(i + 1)).slice(0, 1),
            ]),
        ...step.measures.flatMap((m) => [m.limitText, ...m.at, ...m.ifOut.map((p) => words([p]))]),
        ...step.records,
        ...(step.hold === undefined ? [] : ['HOLD POINT', step.hold]),
      ];
      return parts.map((text) => ({ step: step.number, text: squeeze(text) }));
    }),
  );
}

describe.each(cards.map((c) => c.name))('card %s', (name) => {
  test('says every step in order, nothing lost or clipped', () => {
    const { pdf, variant } = get(name);
    const all = pdf.pages
      .map((p) => p.joined)
      .join('')
      .toLowerCase();
    let from = 0;
    const missing: string[] = [];
    for (const { step, text } of expectedTexts(variant)) {
      const at = all.indexOf(text.toLowerCase(), from);
      if (at < 0) missing.push(`step ${step}: ${text}`);
      else from = at;
    }
    expect(missing).toEqual([]);
  });

  test('names everything to fetch before step 1', () => {
    const { pdf, card, variant } = get(name);
    const all = pdf.pages
      .map((p) => p.joined)
      .join('')
      .toLowerCase();
    const front = all.slice(0, all.indexOf(squeeze(variant.stages[0]?.title ?? '').toLowerCase()));
    for (const list of [variant.tools, variant.consumables, variant.parts]) {
      expect(list.filter((x) => !front.includes(squeeze(x.name).toLowerCase())).map((x) => x.name)).toEqual([]);
    }
    expect(card.sides.length).toBe(pdf.pages.length);
  });

  test('says on every side what it is and how it stands', () => {
    const { pdf, card } = get(name);
    pdf.pages.forEach((page, i) => {
      for (const text of [
        card.doc,
        card.title,
        card.variantLabel,
        `Rev ${card.rev}`,
        `Effective ${card.effective}`,
        `Page ${i + 1} of ${card.sides.length}`,
        card.fingerprint,
        card.address,
        'UNCONTROLLED',
        shop.info.safety,
        i + 1 === card.sides.length ? 'end' : 'continued over',
      ]) {
        expect(page.joined).toContain(squeeze(text));
      }
    });
  });

  test('has every face in the file and no box for a glyph', () => {
    const { pdf } = get(name);
    expect(pdf.fonts.length).toBeGreaterThanOrEqual(3);
    expect(pdf.fonts.filter((f) => !f.embedded)).toEqual([]);
    expect(pdf.fonts.every((f) => /^[A-Z]{6}\+(SourceSans3|DejaVuSans)/u.test(f.name))).toBe(true);
  });

  test('is tagged: marks balanced, nothing painted outside them, figures and links described', () => {
    const { pdf, card } = get(name);
    expect([...new Set(pdf.pages.flatMap((p) => p.faults))]).toEqual([]);
    expect(pdf.marked).toBe(true);
    expect(pdf.info.Language).toBe(shop.info.language);
    expect(pdf.info.Title).toContain(card.title);
    const nodes = pdf.pages.flatMap((p) => elements(p.structure));
    const described = nodes.filter((n) => n.role === 'Figure' || n.role === 'Link');
    expect(described.length).toBeGreaterThanOrEqual(card.sides.length);
    expect(described.filter((n) => (n.alt ?? '') === '')).toEqual([]);
    expect(nodes.filter((n) => n.role === 'H1').length).toBe(1);
    expect(nodes.some((n) => n.role === 'TH')).toBe(true);
  });

  test('keeps to its margins', () => {
    const { pdf } = get(name);
    const mm = 72 / 25.4;
    pdf.pages.forEach((page, i) => {
      const [left, right] = i % 2 === 0 ? [22 * mm, 12 * mm] : [12 * mm, 22 * mm];
      for (const t of page.texts) {
        expect(t.x, t.text).toBeGreaterThanOrEqual(left - 0.01);
        expect(t.x + t.width, t.text).toBeLessThanOrEqual(page.width - right + 0.6);
        expect(t.y, t.text).toBeGreaterThan(8 * mm);
        expect(t.y + t.size * 0.7, t.text).toBeLessThan(page.height - 9 * mm);
        expect(t.size, t.text).toBeGreaterThanOrEqual(7.99);
      }
    });
  });

  test('carries a symbol that a phone reads, on the first and the last side, and that opens the same page', async () => {
    const { bytes, pdf, card, variant } = get(name);
    const sides = [...new Set([1, card.sides.length])];
    for (const picture of await rasterise(bytes, sides, 150)) expect(await scan(picture)).toEqual([variant.address]);
    for (const page of pdf.pages) {
      expect(page.links.map((l) => l.url.toUpperCase())).toEqual([variant.address]);
      expect(page.links[0]?.contents).toContain(variant.address);
    }
  });
});

describe('all cards', () => {
  test('leave the margins white, also where lines and drawings stand', async () => {
    const { bytes, card } = get(cards[0]?.name ?? '');
    const dpi = 60;
    const px = dpi / 25.4;
    const pages = card.sides.map((s) => s.number);
    const pictures = await rasterise(bytes, pages, dpi);
    pictures.forEach((picture, i) => {
      // Half the width of a box's line may stand outside: 0.2 mm.
      const [left, right] = i % 2 === 0 ? [21.8, 11.8] : [11.8, 21.8];
      expect(inkIn(picture, 0, 0, left * px - 1, picture.height)).toBe(0);
      expect(inkIn(picture, picture.width - right * px + 1, 0, picture.width, picture.height)).toBe(0);
      expect(inkIn(picture, 0, 0, picture.width, 10 * px - 1)).toBe(0);
      expect(inkIn(picture, 0, picture.height - 9 * px + 1, picture.width, picture.height)).toBe(0);
      expect(inkIn(picture, left * px, 10 * px, picture.width - right * px, picture.height - 9 * px)).toBeGreaterThan(
        0.01,
      );
    });
  });

  test('have different identities', () => {
    const ids = [...painted.values()].map((p) => p.pdf.fingerprint);
    expect(new Set(ids).size).toBe(cards.length);
  });

  test('are the same bytes when painted again, whatever was painted before', async () => {
    for (const card of [...cards].reverse()) {
      expect(Buffer.compare(await paintCard(card, shop), get(card.name).bytes), card.name).toBe(0);
    }
  });

  test('are the same bytes in another process', () => {
    const card = cards.at(-1);
    const root = path.resolve(import.meta.dirname, '../..');
    const script = `
      import { createHash } from 'node:crypto';
      import { compileShop } from './src/pipeline/index.ts';
      import { paintCard } from './src/render/pdf/index.ts';
      const { checked } = compileShop({ folder: ${JSON.stringify(CONTENT)}, shown: 'content' });
      process.stdout.write(createHash('sha256').update(await paintCard(checked.cards.at(-1), checked.shop)).digest('hex'));`;
    const other = execFileSync(process.execPath, ['--input-type=module', '-e', script], {
      cwd: root,
      encoding: 'utf8',
    });
    expect(other).toBe(
      createHash('sha256')
        .update(get(card?.name ?? '').bytes)
        .digest('hex'),
    );
  });

  test('no last side is nearly empty', () => {
    const bare = cards.filter((card) => {
      const last = card.sides.at(-1);
      const bottom = Math.max(0, ...(last?.body ?? []).map((b) => b.y + b.block.height));
      return card.sides.length > 1 && bottom < card.height * 0.3;
    });
    expect(bare.map((c) => c.name)).toEqual([]);
  });
});
