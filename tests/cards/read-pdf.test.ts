/** The reader itself: it must see the faults for which the card tests look. */

import { expect, test } from 'vitest';
import { loadFaces } from '../../src/layout/type/index.ts';
import { bytesOf, newPdf, type Pdf, useFace } from '../../src/render/pdf/pdfkit-document.ts';
import { inkIn, rasterise, readPdf } from './read-pdf.ts';

const faces = loadFaces();

async function pageOf(paint: (pdf: Pdf) => void) {
  const pdf = newPdf(faces, {
    title: 't',
    author: '',
    subject: '',
    keywords: '',
    language: 'en',
    date: '2026-01-01',
    identity: {},
  });
  const bytes = await bytesOf(pdf, () => {
    pdf.addPage({ size: [200, 100], margin: 0 });
    useFace(pdf, faces.regular);
    pdf.fontSize(12);
    paint(pdf);
  });
  const read = await readPdf(bytes);
  const [page] = read.pages;
  if (page === undefined) throw new Error('no page');
  return { bytes, read, page };
}

test('a text without an element and a rule without an artifact are faults', async () => {
  const { page } = await pageOf((pdf) => {
    pdf.text('a', 20, 50, { lineBreak: false, baseline: 'alphabetic' }).rect(1, 1, 5, 5).fill();
  });
  expect(page.faults.filter((f) => f.includes('outside marked content')).length).toBe(2);
});

test('an artifact inside an element is a fault', async () => {
  const { page } = await pageOf((pdf) => {
    pdf.markContent('P', {}).markContent('Artifact', {}).rect(1, 1, 5, 5).fill().endMarkedContent();
    pdf.endMarkedContent();
  });
  expect(page.faults).toContain('an artifact inside tagged content');
});

test('a character without a glyph is a fault', async () => {
  const { page } = await pageOf((pdf) => {
    pdf.markContent('P', {}).text('\ue123', 20, 50, { lineBreak: false, baseline: 'alphabetic' }).endMarkedContent();
  });
  expect(page.faults).toEqual(['a box in place of a glyph']);
});

test('ink is found where it is and nowhere else', async () => {
  const { bytes, read } = await pageOf((pdf) => {
    pdf.markContent('Artifact', {}).rect(0, 0, 50, 50).fill().endMarkedContent();
  });
  const [picture] = await rasterise(bytes, [1], 72);
  if (picture === undefined) throw new Error('no picture');
  expect(inkIn(picture, 0, 0, 50, 50)).toBe(1);
  expect(inkIn(picture, 51, 0, 200, 100)).toBe(0);
  expect(read.fonts.length).toBe(0);
});

test('the face is named and embedded, and the language and marks are read', async () => {
  const { read, page } = await pageOf((pdf) => {
    pdf.markContent('P', {}).text('office', 20, 50, { lineBreak: false, baseline: 'alphabetic' }).endMarkedContent();
  });
  expect(read.fonts).toEqual([{ name: expect.stringContaining('SourceSans3'), embedded: true }]);
  expect(read.info.Language).toBe('en');
  expect(read.marked).toBe(true);
  expect(page.joined).toBe('office');
});
