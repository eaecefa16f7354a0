/** Reads PDFs back: texts with their places, painting operators within their marks, structure, faces, pictures of pages. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { createCanvas } from '@napi-rs/canvas';
import { getDocument, OPS, type PDFDocumentProxy, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

const require = createRequire(import.meta.url);

export interface ReadText {
  readonly text: string;
  /** Left end of the baseline, pt from the lower left corner of the paper. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
}

export interface StructNode {
  readonly role: string;
  readonly alt?: string;
  readonly children: readonly (StructNode | { readonly type: string; readonly id: string })[];
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly ReadText[];
  /** All texts run together, white space removed. */
  readonly joined: string;
  readonly faults: readonly string[];
  readonly structure: StructNode | null;
  readonly links: readonly { readonly url: string; readonly contents: string }[];
}

export interface ReadPdf {
  readonly info: { readonly Title?: string; readonly Language?: string };
  readonly marked: boolean;
  readonly fingerprint: string;
  /** Faces of the file: the name of each, and whether its outlines are in the file. */
  readonly fonts: readonly { readonly name: string; readonly embedded: boolean }[];
  readonly pages: readonly ReadPage[];
}

async function open<T>(bytes: Uint8Array, use: (pdf: PDFDocumentProxy) => Promise<T>): Promise<T> {
  const fonts = path.join(path.dirname(require.resolve('pdfjs-dist/package.json')), 'standard_fonts');
  // pdf.js takes the buffer over: it gets a copy.
  const task = getDocument({ data: bytes.slice(), standardFontDataUrl: `${pathToFileURL(fonts).href}/`, verbosity: 0 });
  try {
    return await use(await task.promise);
  } finally {
    await task.destroy();
  }
}

export interface OutlineEntry {
  readonly title: string;
  /** Page that it leads to, from 0. */
  readonly page: number;
  readonly items: readonly OutlineEntry[];
}

/** The list of bookmarks. */
export function readOutline(bytes: Uint8Array): Promise<OutlineEntry[]> {
  return open(bytes, async (pdf) => {
    const entries = async (nodes: Awaited<ReturnType<typeof pdf.getOutline>>): Promise<OutlineEntry[]> =>
      Promise.all(
        (nodes ?? []).map(async ({ title, dest, items }) => ({
          title,
          page: Array.isArray(dest) ? await pdf.getPageIndex(dest[0]) : -1,
          items: await entries(items),
        })),
      );
    return entries(await pdf.getOutline());
  });
}

export function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  return open(bytes, async (pdf) => {
    const { info } = await pdf.getMetadata();
    const mark = await pdf.getMarkInfo();
    const pages: ReadPage[] = [];
    for (let n = 1; n <= pdf.numPages; n++) pages.push(await readPage(await pdf.getPage(n)));
    return {
      info: info as ReadPdf['info'],
      marked: (mark as unknown as Map<string, boolean> | null)?.get('Marked') === true,
      fingerprint: pdf.fingerprints[0] ?? '',
      fonts: fontsOf(bytes),
      pages,
    };
  });
}

/** From the font descriptors, which stand uncompressed in the file. */
function fontsOf(bytes: Uint8Array): { name: string; embedded: boolean }[] {
  const text = Buffer.from(bytes).toString('latin1');
  return [...text.matchAll(/\/Type \/FontDescriptor[\s\S]*?endobj/gu)].map(([dictionary]) => ({
    name: /\/FontName \/(\S+)/u.exec(dictionary)?.[1] ?? '',
    embedded: /\/FontFile[23]? \d+ 0 R/u.test(dictionary),
  }));
}

async function readPage(page: PDFPageProxy): Promise<ReadPage> {
  const { width, height } = page.getViewport({ scale: 1 });
  const content = await page.getTextContent();
  const texts = content.items.flatMap((item): ReadText[] => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [a = 0, b = 0, , , x = 0, y = 0] = item.transform as number[];
    return [{ text: item.str, x, y, width: item.width, size: Math.hypot(a, b) }];
  });
  const operators = await page.getOperatorList();
  const annotations = (await page.getAnnotations()) as {
    subtype?: string;
    url?: string;
    contentsObj?: { str?: string };
  }[];
  return {
    width,
    height,
    texts,
    joined: squeeze(texts.map((t) => t.text).join('')),
    faults: markFaults(operators.fnArray, operators.argsArray as unknown[][]),
    structure: (await page.getStructTree()) as StructNode | null,
    links: annotations
      .filter((a) => a.subtype === 'Link')
      .map((a) => ({ url: a.url ?? '', contents: a.contentsObj?.str ?? '' })),
  };
}

/** White space carries no meaning where lines were broken; the reader gives the micro sign as the Greek letter. */
export function squeeze(text: string): string {
  return text
    .normalize('NFC')
    .replaceAll('\u03bc', '\u00b5')
    .replace(/[\s\u00a0]/gu, '');
}

const PAINTING = new Set([
  OPS.showText,
  OPS.constructPath,
  OPS.fill,
  OPS.stroke,
  OPS.fillStroke,
  OPS.paintImageXObject,
]);

/** Marked content is balanced, everything painted lies in it, no artifact inside tagged content, no empty box for a glyph. */
function markFaults(fns: readonly number[], args: readonly unknown[][]): string[] {
  const faults: string[] = [];
  const stack: string[] = [];
  for (const [i, fn] of fns.entries()) {
    if (fn === OPS.beginMarkedContent || fn === OPS.beginMarkedContentProps) {
      const tag = nameOf(args[i]?.[0]);
      if (tag === 'Artifact' && stack.length > 0) faults.push('an artifact inside tagged content');
      stack.push(tag);
    } else if (fn === OPS.endMarkedContent) {
      if (stack.pop() === undefined) faults.push('an end of marked content without a beginning');
    } else if (PAINTING.has(fn) && stack.length === 0) faults.push(`operator ${fn} paints outside marked content`);
    if (fn !== OPS.showText) continue;
    // The first glyph of a face is the empty box; PDFKit gives it the code point zero.
    for (const glyph of (args[i]?.[0] ?? []) as ({ unicode?: string } | number | null)[]) {
      if (typeof glyph === 'object' && glyph?.unicode === '\u0000') faults.push('a box in place of a glyph');
    }
  }
  if (stack.length > 0) faults.push(`${stack.length} marks are never ended`);
  return faults;
}

function nameOf(value: unknown): string {
  return typeof value === 'string' ? value : String((value as { name?: string } | null)?.name ?? value);
}

/** All elements of a structure tree, depth first. */
export function elements(tree: StructNode | null): StructNode[] {
  if (tree === null) return [];
  return [tree, ...tree.children.flatMap((child) => ('role' in child ? elements(child) : []))];
}

export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/** A page as pixels; page counts from 1. */
export function rasterise(bytes: Uint8Array, pages: readonly number[], dpi: number): Promise<Picture[]> {
  return open(bytes, async (pdf) => {
    const pictures: Picture[] = [];
    for (const n of pages) {
      const page = await pdf.getPage(n);
      const viewport = page.getViewport({ scale: dpi / 72 });
      const canvas = createCanvas(Math.ceil(viewport.width), Math.ceil(viewport.height));
      const context = canvas.getContext('2d');
      context.fillStyle = '#ffffff';
      context.fillRect(0, 0, canvas.width, canvas.height);
      await page.render({
        canvas: canvas as unknown as HTMLCanvasElement,
        canvasContext: context as unknown as CanvasRenderingContext2D,
        viewport,
      }).promise;
      const image = context.getImageData(0, 0, canvas.width, canvas.height);
      pictures.push({ width: image.width, height: image.height, data: image.data });
    }
    return pictures;
  });
}

/** Share of ink (anything darker than almost white) in a box given in pixels. */
export function inkIn(picture: Picture, left: number, top: number, right: number, bottom: number): number {
  let dark = 0;
  let all = 0;
  for (let y = Math.max(0, Math.floor(top)); y < Math.min(picture.height, bottom); y++) {
    for (let x = Math.max(0, Math.floor(left)); x < Math.min(picture.width, right); x++) {
      all++;
      if ((picture.data[(y * picture.width + x) * 4 + 1] ?? 255) < 250) dark++;
    }
  }
  return all === 0 ? 0 : dark / all;
}

let decoder: Promise<unknown> | undefined;

/** What the symbols on a picture say. */
export async function scan(picture: Picture): Promise<string[]> {
  decoder ??= Promise.resolve(
    prepareZXingModule({
      overrides: {
        wasmBinary: readFileSync(require.resolve('zxing-wasm/reader/zxing_reader.wasm')).buffer as ArrayBuffer,
      },
      fireImmediately: true,
    }),
  );
  await decoder;
  const found = await readBarcodes(
    { data: picture.data, width: picture.width, height: picture.height, colorSpace: 'srgb' } as ImageData,
    {
      formats: ['QRCode'],
      maxNumberOfSymbols: 4,
    },
  );
  return found.map((r) => r.text);
}
