/** Breaks text into lines. Numbers and units stay together (no-break spaces), and nothing is ever clipped or shrunk. */

import { type Faces, widthOf } from './faces.ts';
import { cutByFace, type Piece, type Span, type TextProblems } from './spans.ts';

/** A piece in its place on a line; `x` and `width` in pt from the start of the line. */
export interface PlacedPiece extends Piece {
  readonly x: number;
  readonly width: number;
}

export interface TextLine {
  readonly pieces: readonly PlacedPiece[];
  /** Without trailing spaces, in pt. */
  readonly width: number;
}

/** What may not be parted: pieces up to and without the space after them. `space` is the width of that space. */
interface Word {
  readonly pieces: readonly { readonly piece: Piece; readonly width: number }[];
  readonly width: number;
  readonly space: { readonly piece: Piece; readonly width: number } | undefined;
  readonly newLine: boolean;
}

/** Places where a line may end besides spaces: after a hyphen between letters, after a slash between words of letters. */
const INNER_BREAK = /(?<=\p{L}\p{L}[-/])(?=\p{L}\p{L})|(?<=[\u2013\u2014])(?=\p{L})/u;

/** Splits pieces at break opportunities. Lines of source text (`\n`) break the line. */
function wordsOf(pieces: readonly Piece[]): Word[] {
  const words: Word[] = [];
  let current: { piece: Piece; width: number }[] = [];
  const close = (space: Word['space'], newLine: boolean): void => {
    if (current.length === 0 && space === undefined && !newLine) return;
    words.push({ pieces: current, width: current.reduce((sum, p) => sum + p.width, 0), space, newLine });
    current = [];
  };
  for (const piece of pieces) {
    for (const part of piece.text.split(/( +|\t+|\n)/u)) {
      if (part === '') continue;
      if (part === '\n') close(undefined, true);
      else if (/^[ \t]/u.test(part)) {
        const space = { ...piece, text: ' ' };
        close({ piece: space, width: widthOf(piece.face, ' ', piece.size) }, false);
      } else {
        part.split(INNER_BREAK).forEach((syllable, i) => {
          if (i > 0) close(undefined, false);
          current.push({ piece: { ...piece, text: syllable }, width: widthOf(piece.face, syllable, piece.size) });
        });
      }
    }
  }
  close(undefined, false);
  return words;
}

/** Parts a word that is wider than the line wherever it fills the line: it is reported, and the card is not published. */
function partWord(word: Word, width: number): Word[] {
  const parts: Word[] = [];
  let current: { piece: Piece; width: number }[] = [];
  let used = 0;
  const close = (): void => {
    if (current.length > 0) parts.push({ pieces: current, width: used, space: undefined, newLine: false });
    current = [];
    used = 0;
  };
  for (const { piece } of word.pieces) {
    let text = '';
    for (const character of piece.text) {
      const longer = widthOf(piece.face, text + character, piece.size);
      if (used + longer > width && used + longer > 0 && (text !== '' || current.length > 0)) {
        if (text !== '') current.push({ piece: { ...piece, text }, width: widthOf(piece.face, text, piece.size) });
        used += text === '' ? 0 : widthOf(piece.face, text, piece.size);
        close();
        text = character;
      } else text += character;
    }
    if (text !== '') {
      const w = widthOf(piece.face, text, piece.size);
      current.push({ piece: { ...piece, text }, width: w });
      used += w;
    }
  }
  close();
  const last = parts.at(-1);
  return last === undefined ? [word] : [...parts.slice(0, -1), { ...last, space: word.space, newLine: word.newLine }];
}

/** Lines of `spans` no wider than `width` pt (the first one `firstIndent` pt shorter). An empty text gives no line. */
export function breakLines(
  faces: Faces,
  spans: readonly Span[],
  width: number,
  problems: TextProblems,
  firstIndent = 0,
): TextLine[] {
  const words = wordsOf(spans.flatMap((span) => cutByFace(faces, span, problems)));
  const lines: TextLine[] = [];
  let line: Word[] = [];
  let used = 0;
  const close = (): void => {
    lines.push(placeLine(line));
    line = [];
    used = 0;
  };
  const room = (): number => (lines.length === 0 ? width - firstIndent : width);
  const add = (word: Word): void => {
    if (line.length > 0 && used + word.width > room()) close();
    line.push(word);
    used += word.width + (word.space?.width ?? 0);
    if (word.newLine) close();
  };
  for (const word of words) {
    // A hundredth of a point of tolerance: sums of widths differ in their last digits.
    if (word.width <= width + 0.01) add(word);
    else {
      problems.tooWide(word.pieces.map((p) => p.piece.text).join(''), word.width, width);
      for (const part of partWord(word, width)) add(part);
    }
  }
  if (line.length > 0) close();
  return lines;
}

function placeLine(words: readonly Word[]): TextLine {
  const placed: PlacedPiece[] = [];
  let x = 0;
  let end = 0;
  words.forEach((word, i) => {
    for (const { piece, width } of word.pieces) {
      x = append(placed, piece, x, width);
      end = x;
    }
    if (word.space !== undefined && i < words.length - 1) x = append(placed, word.space.piece, x, word.space.width);
  });
  return { pieces: placed, width: end };
}

/** Joins a piece to the one before it when both are alike, so that the PDF holds whole phrases. */
function append(placed: PlacedPiece[], piece: Piece, x: number, width: number): number {
  const last = placed.at(-1);
  if (last !== undefined && last.face === piece.face && last.size === piece.size && last.ink === piece.ink) {
    // Only the word at the joint is measured again: its letters may be kerned across it.
    const tail = last.text.slice(last.text.lastIndexOf(' ') + 1);
    const before = widthOf(last.face, tail, last.size);
    const whole = last.width - before + widthOf(last.face, tail + piece.text, last.size);
    placed[placed.length - 1] = { ...last, text: last.text + piece.text, width: whole };
    return last.x + whole;
  }
  placed.push({ ...piece, x, width });
  return x + width;
}

/** Width in pt of a text that is not broken. */
export function measure(faces: Faces, span: Span, problems: TextProblems): number {
  return cutByFace(faces, span, problems).reduce((sum, piece) => sum + widthOf(piece.face, piece.text, piece.size), 0);
}

/** One line that is not broken; for numbers and labels whose room is known. */
export function oneLine(faces: Faces, spans: readonly Span[], problems: TextProblems): TextLine {
  const placed: PlacedPiece[] = [];
  let x = 0;
  for (const span of spans) {
    for (const piece of cutByFace(faces, span, problems))
      x = append(placed, piece, x, widthOf(piece.face, piece.text, piece.size));
  }
  return { pieces: placed, width: x };
}
