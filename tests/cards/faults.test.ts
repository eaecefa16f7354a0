/** What cards do with texts and steps that do not fit: nothing is shrunk, clipped or dropped; the fault is reported where it stands. */

import { describe, expect, test } from 'vitest';
import { collector, type Diagnostic } from '../../src/diagnostics/index.ts';
import { type CardLayout, layoutCard } from '../../src/layout/card/index.ts';
import { loadFaces } from '../../src/layout/type/index.ts';
import { paintCard } from '../../src/render/pdf/index.ts';
import type { Document, ResolvedShop, ShopInfo, Step, Variant } from '../../src/resolve/index.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { compileMini } from '../fixtures/mini-shop.ts';
import { demo } from './demo.ts';
import { readPdf, squeeze } from './read-pdf.ts';

const { shop } = demo();
const faces = loadFaces();

function first(): { document: Document; variant: Variant } {
  const document = shop.documents.find((d) => d.variants.some((v) => v.joints.length > 0 && v.key !== ''));
  const variant = document?.variants[0];
  if (document === undefined || variant === undefined) throw new Error('the demo has no such document');
  return { document, variant };
}

/** The card of the first demo procedure with one step changed. */
function withStep(
  change: Partial<Step>,
  info: Partial<ShopInfo> = {},
  more: Partial<Variant> = {},
): { card: CardLayout; found: Diagnostic[]; step: Step; shop: ResolvedShop } {
  const { document, variant } = first();
  const [stage] = variant.stages;
  const [step] = stage?.steps ?? [];
  if (stage === undefined || step === undefined) throw new Error('no step');
  const changed: Variant = {
    ...variant,
    ...more,
    stages: [{ ...stage, steps: [{ ...step, ...change }, ...stage.steps.slice(1)] }, ...variant.stages.slice(1)],
  };
  const own: ResolvedShop = { ...shop, info: { ...shop.info, ...info } };
  const { report, list } = collector(CATALOGUE);
  const card = layoutCard(own, document, changed, faces, report);
  return { card, found: list(), step, shop: own };
}

function prose(text: string) {
  return [{ kind: 'paragraph' as const, runs: [{ text }] }];
}

describe('faults', () => {
  test('a step that is taller than a side is CRD001 at the step', () => {
    const { found, step } = withStep({ text: prose('Turn the screw by hand until it stops. '.repeat(400)) });
    expect(found.map((d) => d.code)).toEqual(['CRD001']);
    expect(found[0]?.range).toEqual(step.range);
    expect(found[0]?.message).toContain(`step ${step.number}`);
  });

  test('a character of no face is CRD002 with its code point', () => {
    const { found, step } = withStep({ text: prose('Turn \ue123 by hand.') });
    expect(found.map((d) => d.code)).toEqual(['CRD002']);
    expect(found[0]?.message).toContain('U+E123');
    expect(found[0]?.range).toEqual(step.range);
  });

  test('a word that is wider than its place is CRD003, and all of it stays on the card', async () => {
    const long = 'Wx'.repeat(150);
    const { found, card, shop: own } = withStep({ text: prose(`Turn ${long} by hand.`) });
    expect(found.map((d) => d.code)).toEqual(['CRD003']);
    const pdf = await readPdf(await paintCard(card, own));
    expect(pdf.pages.map((p) => p.joined).join('')).toContain(long);
    for (const t of pdf.pages.flatMap((p) => p.texts)) expect(t.x + t.width).toBeLessThan(card.width - 12);
  });

  test('an address that makes too large a symbol is CRD004', () => {
    const address = `HTTPS://BINDER.OSFW.EXAMPLE/C/${'LONG-'.repeat(12)}/`;
    const { found } = withStep({}, {}, { address });
    expect(found.map((d) => d.code)).toEqual(['CRD004']);
    expect(found[0]?.message).toContain(String(address.length));
  });

  test('the demo as it is has none, on all formats that suit it', () => {
    for (const cardFormat of ['A4', 'Letter'] as const) expect(withStep({}, { cardFormat }).found).toEqual([]);
  });
});

describe('hostile texts appear as text', () => {
  test.each([
    ['markup', '<script>alert("1")</script> &amp; <b>bold</b>'],
    ['PDF syntax', ') Tj ET Q (x) << /JS (y) >> endstream endobj'],
    ['another script', 'שלום'],
    ['signs of the trade', '⌀ 12 mm, ½ turn → ☐ ≤ 5 µm ⚠'],
  ])('%s', async (_, text) => {
    const { found, card, shop: own } = withStep({ text: prose(text), records: [text], hold: text });
    expect(found).toEqual([]);
    const pdf = await readPdf(await paintCard(card, own));
    const joined = pdf.pages.map((p) => p.joined).join('');
    expect(joined.split(squeeze(text)).length - 1).toBeGreaterThanOrEqual(3);
    expect(pdf.pages.flatMap((p) => p.faults)).toEqual([]);
    expect(pdf.pages.flatMap((p) => p.links).length).toBe(pdf.pages.length);
  });

  test('characters that turn the direction of a line are refused', () => {
    expect(withStep({ text: prose('Turn \u202eleft') }).found.map((d) => d.code)).toEqual(['CRD002']);
  });
});

describe('formats', () => {
  test.each(['A4', 'A5', 'Letter'] as const)(
    '%s: steps, their numbers and blocks stay whole and inside',
    async (cardFormat) => {
      const { card, found, shop: own } = withStep({}, { cardFormat });
      const paper = { A4: [210, 297], A5: [148, 210], Letter: [215.9, 279.4] }[cardFormat];
      expect(card.width).toBeCloseTo(((paper[0] ?? 0) * 72) / 25.4, 1);
      expect(card.height).toBeCloseTo(((paper[1] ?? 0) * 72) / 25.4, 1);
      const pdf = await readPdf(await paintCard(card, own));
      for (const t of pdf.pages.flatMap((p) => p.texts)) {
        expect(t.x).toBeGreaterThanOrEqual((7.9 * 72) / 25.4);
        expect(t.x + t.width).toBeLessThanOrEqual(card.width - (7.8 * 72) / 25.4);
        expect(t.size).toBeGreaterThanOrEqual(7.99);
      }
      // A side's blocks do not run into its foot, unless the step was reported as too tall for this format.
      const over = card.sides.filter((side) => side.body.some((b) => b.y + b.block.height > side.footer.y + 0.01));
      expect(over.length).toBe(found.filter((d) => d.code === 'CRD001').length);
      if (cardFormat !== 'A5') expect(over).toEqual([]);
    },
  );
});

describe('the mini shop lays out without faults of cards', () => {
  test.each(['A5', 'Letter'])('%s', (format) => {
    const { diagnostics, checked } = compileMini({
      'shop.yaml': (text) => text.replace('card: { format: A4 }', `card: { format: ${format} }`),
    });
    expect(diagnostics.filter((d) => d.code.startsWith('CRD')).map((d) => d.message)).toEqual([]);
    expect(checked?.cards.map((card) => [card.name, Math.round((card.width * 25.4) / 72)])).toEqual(
      ['MW-1-SMALL', 'MW-1-LARGE'].map((name) => [name, format === 'A5' ? 148 : 216]),
    );
  });
});
