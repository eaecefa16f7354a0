/** The one place that knows how PDFKit is called beyond its published types: parsed faces, element closures, word caches. */

import PDFDocument from 'pdfkit';
import type { Face, FaceName, Faces, WordCache } from '../../layout/type/index.ts';

/** An element of the reading order being written. */
export interface StructElement {
  add(child: StructElement | (() => void)): StructElement;
  end(): void;
}

/** An entry in the list of bookmarks; the root has no title. */
export interface Bookmark {
  addItem(title: string, options: { top: number; left: number; expanded: boolean }): Bookmark;
}

export interface StructOptions {
  readonly alt?: string;
  readonly scope?: string;
  readonly bbox?: readonly [number, number, number, number];
}

/** What is used of PDFKit, with its true types. */
export interface Pdf {
  readonly outline: Bookmark;
  readonly page: { readonly width: number };
  addPage(options: { size: [number, number]; margin: number }): Pdf;
  registerFont(name: string, font: unknown): Pdf;
  font(name: string): Pdf;
  fontSize(size: number): Pdf;
  fillColor(color: string): Pdf;
  strokeColor(color: string): Pdf;
  lineWidth(width: number): Pdf;
  dash(length: number, options: { space: number }): Pdf;
  undash(): Pdf;
  moveTo(x: number, y: number): Pdf;
  lineTo(x: number, y: number): Pdf;
  bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): Pdf;
  closePath(): Pdf;
  circle(x: number, y: number, radius: number): Pdf;
  rect(x: number, y: number, width: number, height: number): Pdf;
  fill(): Pdf;
  stroke(): Pdf;
  fillAndStroke(): Pdf;
  save(): Pdf;
  restore(): Pdf;
  addContent(operators: string): Pdf;
  text(text: string, x: number, y: number, options: { lineBreak: false; baseline: 'alphabetic' }): Pdf;
  link(
    x: number,
    y: number,
    width: number,
    height: number,
    url: string | number,
    options: Record<string, unknown>,
  ): Pdf;
  struct(type: string, options: StructOptions): StructElement;
  addStructure(element: StructElement): Pdf;
  markContent(tag: string, options: Record<string, unknown>): Pdf;
  endMarkedContent(): Pdf;
  on(event: 'data', listener: (chunk: Uint8Array) => void): Pdf;
  on(event: 'end', listener: () => void): Pdf;
  end(): void;
}

export interface PdfFacts {
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  readonly keywords: string;
  readonly language: string;
  /** `2026-03-02`: the only date in the file, so that the same input gives the same bytes. */
  readonly date: string;
  /** Further entries that tell one card from another: they make the file's identity differ. */
  readonly identity: Readonly<Record<string, string>>;
}

interface WithCache {
  _font: { layoutCache?: WordCache };
}

/** A new document without pages. Every face is registered; only those used are embedded. */
export function newPdf(faces: Faces, facts: PdfFacts): Pdf {
  const date = new Date(`${facts.date}T00:00:00Z`);
  const options = {
    autoFirstPage: false,
    // No face given here: naming one makes every later change of face open it again.
    font: null,
    pdfVersion: '1.7',
    tagged: true,
    lang: facts.language,
    displayTitle: true,
    subset: 'PDF/UA',
    info: {
      Title: facts.title,
      Author: facts.author,
      Subject: facts.subject,
      Keywords: facts.keywords,
      Creator: 'Fettlebook',
      Producer: 'Fettlebook',
      CreationDate: date,
      ModDate: date,
      ...facts.identity,
    },
  };
  // The published types know neither parsed faces nor PDF/UA nor a missing default face.
  const pdf = new (PDFDocument as unknown as new (options: unknown) => Pdf)(options);
  for (const face of Object.values(faces)) pdf.registerFont(face.name, face.font);
  return pdf;
}

/** Makes a face current; its word cache is shared with the layout, which has shaped every word already. */
export function useFace(pdf: Pdf, face: Face): void {
  pdf.font(face.name);
  const { _font: current } = pdf as unknown as WithCache;
  if (current.layoutCache !== face.words) current.layoutCache = face.words;
}

/** Adds a bookmark that leads to `y` pt below the top of the current page, at the zoom the reader has. */
export function bookmark(pdf: Pdf, parent: Bookmark, title: string, y: number): Bookmark {
  // PDFKit takes `left` from the right edge.
  return parent.addItem(title, { top: Math.max(0, y - 12), left: pdf.page.width, expanded: false });
}

export type { FaceName };

/** All bytes of a document whose pages are painted by `paint`. */
export function bytesOf(pdf: Pdf, paint: () => void): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    pdf.on('data', (chunk) => {
      chunks.push(chunk);
    });
    pdf.on('end', () => {
      // A plain array: callers must not meet the methods of a Buffer.
      resolve(new Uint8Array(Buffer.concat(chunks)));
    });
    try {
      paint();
      pdf.end();
    } catch (error) {
      reject(error instanceof Error ? error : new Error(String(error)));
    }
  });
}
