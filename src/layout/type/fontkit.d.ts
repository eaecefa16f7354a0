/** The part of fontkit that is used here; the package ships no types of its own. */

declare module 'fontkit' {
  export interface GlyphPosition {
    xAdvance: number;
    yAdvance: number;
    xOffset: number;
    yOffset: number;
    advanceWidth?: number;
  }

  export interface Glyph {
    readonly id: number;
    readonly advanceWidth: number;
    readonly codePoints: readonly number[];
  }

  export interface GlyphRun {
    readonly glyphs: readonly Glyph[];
    readonly positions: GlyphPosition[];
    /** Sum of the advances in `positions`. */
    readonly advanceWidth: number;
  }

  export interface Font {
    readonly postscriptName: string;
    readonly unitsPerEm: number;
    readonly ascent: number;
    readonly descent: number;
    readonly characterSet: readonly number[];
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): Glyph;
    getGlyph(id: number, codePoints: readonly number[]): Glyph;
    layout(text: string): GlyphRun;
  }

  export function create(bytes: Uint8Array): Font;
}
