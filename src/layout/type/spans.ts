/** Text in several weights, cut into pieces that each lie in one face. */

import { type Face, type Faces, PLAIN_SIGNS } from './faces.ts';

export type Weight = 'regular' | 'semibold' | 'bold';

/** Colour of text on a card. */
export type TextInk = 'ink' | 'soft' | 'accent' | 'paper' | 'danger';

export interface Span {
  readonly text: string;
  readonly weight: Weight;
  /** Type size in pt. */
  readonly size: number;
  readonly ink: TextInk;
}

/** A stretch of one span in one face. */
export interface Piece {
  readonly text: string;
  readonly face: Face;
  readonly size: number;
  readonly ink: TextInk;
}

/** What can be wrong with a text; the caller knows the place in the source. */
export interface TextProblems {
  /** No face has this character; a white box stands for it. */
  missing(codePoint: number): void;
  /** The word is wider than its place (`width`, `place` in pt); it was parted so that it stays on the card. */
  tooWide(word: string, width: number, place: number): void;
}

/** Drawn in place of a character that no face has. */
const REPLACEMENT = '\ufffd';

/** Characters without a shape of their own that may be left out: soft hyphen, zero-width space and joiners, byte order mark. */
const SHAPELESS = /[\u00ad\u200b-\u200d\u2060\ufeff]/gu;

/** Control and direction characters: some face may have an empty glyph for them, yet what they do to a line cannot be seen. */
const UNSEEN = /[\p{Cc}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/u;

/** Text that needs no look at single characters, in a face that has the plain signs. */
const PLAIN = new RegExp(`^[\\n\\t\\x20-\\x7e${PLAIN_SIGNS}]*$`, 'u');

/**
 * Cuts a span where the face must change. Signs that the text face lacks come from the fallback face of like weight; those that no
 * face has are reported and replaced. An accent goes with the letter before it where that letter's face has it.
 */
export function cutByFace(faces: Faces, span: Span, problems: TextProblems): Piece[] {
  const main = faces[span.weight];
  if (main.plain && PLAIN.test(span.text)) {
    return span.text === '' ? [] : [{ text: span.text, face: main, size: span.size, ink: span.ink }];
  }
  const other = span.weight === 'regular' ? faces.fallback : faces.fallbackBold;
  const pieces: { text: string; face: Face }[] = [];
  for (const character of normalise(span.text)) {
    const codePoint = character.codePointAt(0) ?? 0;
    const last = pieces.at(-1);
    const choices = last !== undefined && /\p{M}/u.test(character) ? [last.face, main, other] : [main, other];
    // Line ends and tabs are no characters of the text: the line breaker takes them out.
    const taken = character === '\n' || character === '\t';
    const face = taken
      ? main
      : UNSEEN.test(character)
        ? undefined
        : choices.find((f) => f.font.hasGlyphForCodePoint(codePoint));
    if (face === undefined) problems.missing(codePoint);
    const text = face === undefined ? REPLACEMENT : character;
    const home = face ?? other;
    if (last !== undefined && last.face === home) last.text += text;
    else pieces.push({ text, face: home });
  }
  return pieces.map((piece) => ({ ...piece, size: span.size, ink: span.ink }));
}

/** Composed letters; ohm and micro signs as their twins that all faces share, so that searching finds them; no shapeless signs. */
function normalise(text: string): string {
  return text
    .normalize('NFC')
    .replace(/\u2126/gu, '\u03a9')
    .replace(/\u03bc/gu, '\u00b5')
    .replace(SHAPELESS, '');
}
