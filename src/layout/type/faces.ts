/** The parsed card faces, shared over all documents of a run together with the shapes of the words met so far. */

import { create, type Font, type GlyphRun } from 'fontkit';
import { type FaceName, type FontFiles, readFontFiles } from '../../source/font-files.ts';

export type { FaceName } from '../../source/font-files.ts';

/** Word to its shaped run in thousandths of an em: the very objects that the PDF writer keeps for itself otherwise. */
export type WordCache = Record<string, GlyphRun>;

export interface Face {
  readonly name: FaceName;
  readonly font: Font;
  readonly words: WordCache;
  /** Widths of the same words in thousandths of an em: a run of glyphs adds its advances up anew at every question. */
  readonly widths: Map<string, number>;
  /** It has a glyph for each of `PLAIN_SIGNS`. */
  readonly plain: boolean;
}

export type Faces = Readonly<Record<FaceName, Face>>;

/** Signs of everyday text besides letters and digits of ASCII, none of which changes when a text is normalised. */
export const PLAIN_SIGNS = '\u00a0\u00b0\u00b1\u00b7\u00d7\u2013\u2014\u2018\u2019';

/** A cache is emptied before it holds more words than this: a watching server must not grow without end. */
const MOST_WORDS = 20_000;

/** Latin ligatures that are encoded for old text: their letters must come back from the PDF, not the ligature. */
const LIGATURES: ReadonlyMap<number, string> = new Map([
  [0xfb00, 'ff'],
  [0xfb01, 'fi'],
  [0xfb02, 'fl'],
  [0xfb03, 'ffi'],
  [0xfb04, 'ffl'],
  [0xfb05, 'st'],
  [0xfb06, 'st'],
]);

let loaded: Faces | undefined;

/** The faces of this process: read and parsed at the first call only. */
export function loadFaces(): Faces {
  loaded ??= parseFaces(readFontFiles());
  return loaded;
}

/** Parses every face; some tens of milliseconds. */
export function parseFaces(files: FontFiles): Faces {
  return {
    regular: parseFace('regular', files.regular),
    semibold: parseFace('semibold', files.semibold),
    bold: parseFace('bold', files.bold),
    fallback: parseFace('fallback', files.fallback),
    fallbackBold: parseFace('fallbackBold', files.fallbackBold),
  };
}

function parseFace(name: FaceName, bytes: Uint8Array): Face {
  const font = create(bytes);
  settleCodePoints(font);
  const signs = [...PLAIN_SIGNS].map((c) => c.codePointAt(0) ?? 0);
  for (let codePoint = 0x20; codePoint < 0x7f; codePoint++) signs.push(codePoint);
  const plain = signs.every((codePoint) => font.hasGlyphForCodePoint(codePoint));
  return { name, font, words: Object.create(null) as WordCache, widths: new Map(), plain };
}

/**
 * A glyph keeps the first code points with which it was asked for, so that the text read back from a card (and its bytes) would
 * depend on which card was made before it. Asking for every glyph once, with its lowest code point, settles that.
 */
function settleCodePoints(font: Font): void {
  const chosen = new Map<number, readonly number[]>();
  for (const codePoint of [...font.characterSet].sort((a, b) => a - b)) {
    const glyph = glyphId(font, codePoint);
    if (chosen.has(glyph)) continue;
    const letters = LIGATURES.get(codePoint);
    chosen.set(glyph, letters === undefined ? [codePoint] : [...letters].map((c) => c.codePointAt(0) ?? 0));
  }
  for (const [glyph, codePoints] of chosen) font.getGlyph(glyph, codePoints);
}

interface CmapLookup {
  lookup(codePoint: number): number;
}

/** The glyph number without making (and so settling) the glyph. */
function glyphId(font: Font, codePoint: number): number {
  const { _cmapProcessor: cmap } = font as unknown as { _cmapProcessor?: CmapLookup };
  if (cmap === undefined) throw new Error('fontkit has changed: no way to look up a glyph without making it');
  return cmap.lookup(codePoint);
}

/** The shaped run of one word, in thousandths of an em. */
export function shapeWord(face: Face, word: string): GlyphRun {
  const known = face.words[word];
  if (known !== undefined) return known;
  const run = face.font.layout(word);
  const scale = 1000 / face.font.unitsPerEm;
  run.positions.forEach((position, i) => {
    position.xAdvance *= scale;
    position.yAdvance *= scale;
    position.xOffset *= scale;
    position.yOffset *= scale;
    position.advanceWidth = (run.glyphs[i]?.advanceWidth ?? 0) * scale;
  });
  face.words[word] = run;
  return run;
}

/** Width in pt of a text in one face: word by word with the space at each word's end, exactly as the PDF writer sets it. */
export function widthOf(face: Face, text: string, size: number): number {
  let sum = 0;
  let from = 0;
  while (from < text.length) {
    const space = text.indexOf(' ', from);
    const to = space < 0 ? text.length : space + 1;
    sum += wordWidth(face, from === 0 && to === text.length ? text : text.slice(from, to));
    from = to;
  }
  return (sum * size) / 1000;
}

function wordWidth(face: Face, word: string): number {
  const known = face.widths.get(word);
  if (known !== undefined) return known;
  const width = shapeWord(face, word).advanceWidth;
  face.widths.set(word, width);
  return width;
}

/** Empties caches that have grown too large. Called between documents, never within one. */
export function limitWords(faces: Faces): void {
  for (const face of Object.values(faces)) {
    const words = Object.keys(face.words);
    if (words.length > MOST_WORDS) for (const word of words) delete face.words[word];
    if (face.widths.size > MOST_WORDS) face.widths.clear();
  }
}
