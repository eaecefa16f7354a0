/** Change bars: beside what differs from the issue before, in the outer margin, and nowhere else. */

import { describe, expect, test } from 'vitest';
import { formatOf, leading, leftOf, textWidthOf } from '../../src/layout/card/format.ts';
import { type Bar, type Block, mm } from '../../src/layout/card/index.ts';
import { settingFor } from '../../src/layout/card/setting.ts';
import { type StepScene, stepBlock } from '../../src/layout/card/step-block.ts';
import { loadFaces } from '../../src/layout/type/index.ts';
import { paintCard } from '../../src/render/pdf/index.ts';
import type { Document, ResolvedShop, Step, StepMark } from '../../src/resolve/index.ts';
import { compileMini } from '../fixtures/mini-shop.ts';
import { allMarked, documentOf, EVERY_MARK, lay, withMarks } from './controlled.ts';
import { demo } from './demo.ts';
import { inkIn, rasterise } from './read-pdf.ts';

const { shop } = demo();
const faces = loadFaces();
const FORMATS = ['A4', 'Letter', 'A5'] as const;
const OF_204 = documentOf('OF-204');
const ALL_MARKED = allMarked(OF_204);

/** Height that bars cover, where they stand beside each other once. */
function covered(bars: readonly Bar[]): number {
  let sum = 0;
  let end = Number.NEGATIVE_INFINITY;
  for (const { y, height } of [...bars].sort((a, b) => a.y - b.y)) {
    sum += Math.max(0, y + height - Math.max(y, end));
    end = Math.max(end, y + height);
  }
  return sum;
}

describe('change bars', () => {
  test.each(FORMATS)('%s: in the outer margin of each side, clear of text, holes and the edge of the paper', (name) => {
    // Steps of the demo are too tall for A5.
    const from: ResolvedShop = name === 'A5' ? compileMini().resolved : shop;
    const own = { ...from, info: { ...from.info, cardFormat: name } };
    const format = formatOf(name);
    const document = from.documents.find((d) => d.doc === 'OF-204') ?? from.documents[0];
    if (document === undefined) throw new Error('no document');
    const card = lay(allMarked(document), own);
    const barred = card.sides.filter((s) => s.bars !== undefined);
    expect(new Set(barred.map((s) => s.number % 2)).size).toBe(2);
    for (const { number, bars, header, footer } of barred) {
      for (const item of bars?.block.decoration ?? []) {
        if (bars === undefined || item.kind !== 'rect') throw new Error('a bar is a filled box');
        const [left, right] = [bars.x + item.x, bars.x + item.x + item.width];
        const [top, bottom] = [bars.y + item.y, bars.y + item.y + item.height];
        // The binding margin, where the holes are, lies on the other side of the paper.
        if (number % 2 === 1) {
          expect(left).toBeGreaterThan(leftOf(format, number) + textWidthOf(format));
          expect(right).toBeLessThan(format.width - mm(6.4));
        } else {
          expect(right).toBeLessThan(leftOf(format, number));
          expect(left).toBeGreaterThan(mm(6.4));
        }
        expect(item.width).toBeGreaterThanOrEqual(mm(1) - 0.01);
        expect(top).toBeGreaterThan(header.y + header.block.height);
        expect(bottom).toBeLessThan(footer.y);
      }
    }
  });

  test('change neither the arrangement nor a word', () => {
    const plain = lay(OF_204);
    const marked = lay(ALL_MARKED);
    expect(plain.sides.some((s) => s.bars !== undefined)).toBe(false);
    expect(marked.sides.map((s) => s.body.map((b) => [b.y, b.block.height, b.block.nodes]))).toEqual(
      plain.sides.map((s) => s.body.map((b) => [b.y, b.block.height, b.block.nodes])),
    );
  });

  const format = formatOf('A4');
  const setting = settingFor(faces, format, OF_204.range, () => undefined);
  function blockOf(document: Document, step: Step): Block {
    const scene: StepScene = {
      joint: (id) => document.variants[0]?.joints.find((j) => j.id === id),
      tool: (id) => shop.tools.find((t) => t.id === id)?.name ?? id,
      person: (id) => id,
    };
    return stepBlock(setting, step, scene);
  }

  test('stand beside the part that differs and nothing else', () => {
    const has: Readonly<Record<StepMark, (step: Step) => boolean>> = {
      text: () => true,
      note: (s) => s.note !== undefined,
      warnings: (s) => s.warnings.length > 0,
      joint: (s) => s.tighten !== undefined,
      measures: (s) => s.measures.length > 0,
      lists: (s) => s.remove.length > 0,
      wait: (s) => s.wait !== undefined,
      points: (s) => s.hold !== undefined,
      records: (s) => s.records.length > 0,
    };
    for (const mark of EVERY_MARK) {
      const found = shop.documents.flatMap((document) =>
        (document.variants[0]?.stages ?? []).flatMap((s) => s.steps.map((step) => ({ document, step }))),
      );
      const own = found.filter(({ step }) => has[mark](step)).slice(0, 6);
      expect(own.length, mark).toBeGreaterThan(0);
      for (const { document, step } of own) {
        const place = `${mark} of ${document.doc} step ${step.number}`;
        const { bars = [], height } = blockOf(document, { ...step, marks: [mark] });
        const barred = covered(bars);
        expect(barred, place).toBeGreaterThan(0);
        // Something of every step is not this part; lists may stand beside all the rest of it.
        if (mark !== 'text' && mark !== 'lists')
          expect(barred, place).toBeLessThan(height - leading(format.type.step) + 0.01);
        for (const bar of bars) {
          expect(bar.y, place).toBeGreaterThanOrEqual(-0.01);
          expect(bar.y + bar.height, place).toBeLessThanOrEqual(height + 0.01);
        }
        // A warning stands over the step's number, everything else from there down.
        const warned = blockOf(document, { ...step, marks: ['warnings'] }).bars ?? [];
        const below = step.warnings.length === 0 ? 0 : Math.max(...warned.map((b) => b.y + b.height));
        for (const bar of bars) {
          if (mark === 'warnings') expect(bar.y + bar.height, place).toBeLessThanOrEqual(below + 0.01);
          else expect(bar.y, place).toBeGreaterThanOrEqual(below - 0.01);
        }
      }
    }
  });

  test('what a step has lost is marked beside its number', () => {
    const step = OF_204.variants[0]?.stages
      .flatMap((s) => s.steps)
      .find((s) => s.warnings.length === 0 && s.measures.length === 0 && s.records.length === 0);
    if (step === undefined) throw new Error('no plain step');
    for (const mark of ['warnings', 'measures', 'records'] as const) {
      expect(blockOf(OF_204, { ...step, marks: [mark] }).bars).toEqual([{ y: 0, height: leading(format.type.step) }]);
    }
  });

  test('no step that is marked is without a bar, whatever the mark', () => {
    for (const document of shop.documents) {
      for (const step of document.variants[0]?.stages.flatMap((s) => s.steps) ?? []) {
        for (const mark of EVERY_MARK) {
          const { bars } = blockOf(document, { ...step, marks: [mark] });
          expect(bars?.length ?? 0, `${document.doc} step ${step.number} ${mark}`).toBeGreaterThan(0);
        }
        expect(blockOf(document, step).bars).toBeUndefined();
        expect(blockOf(document, { ...step, marks: [] }).bars).toBeUndefined();
      }
    }
  });

  test('of neighbouring parts are one bar, of different steps two', () => {
    const [first, second] = OF_204.variants[0]?.stages[0]?.steps ?? [];
    if (first === undefined || second === undefined) throw new Error('two steps are needed');
    const bars = (marks: Readonly<Record<number, readonly StepMark[]>>): number =>
      lay(withMarks(OF_204, marks)).sides.reduce((n, s) => n + (s.bars?.block.decoration.length ?? 0), 0);
    expect(bars({ [first.number]: EVERY_MARK })).toBe(1);
    expect(bars({ [first.number]: ['text'], [second.number]: ['text'] })).toBe(2);
  });

  test('are painted where they were laid', async () => {
    const card = lay(ALL_MARKED);
    const bytes = await paintCard(card, shop);
    const px = 100 / 25.4;
    const pages = card.sides.filter((s) => s.bars !== undefined).slice(0, 4);
    const pictures = await rasterise(
      bytes,
      pages.map((s) => s.number),
      100,
    );
    pictures.forEach((picture, i) => {
      const odd = (pages[i]?.number ?? 0) % 2 === 1;
      const across = (from: number, to: number): number =>
        odd
          ? inkIn(picture, picture.width - to * px, 0, picture.width - from * px, picture.height)
          : inkIn(picture, from * px, 0, to * px, picture.height);
      expect(across(9.4, 10)).toBeGreaterThan(0.1);
      expect(across(0, 8.9)).toBe(0);
      // Holes for the binder: 12 mm from the other edge, 6 mm wide, and room around them.
      expect(odd ? inkIn(picture, 0, 0, 21.5 * px, picture.height) : 0).toBe(0);
      expect(odd ? 0 : inkIn(picture, picture.width - 21.5 * px, 0, picture.width, picture.height)).toBe(0);
    });
  });
});
