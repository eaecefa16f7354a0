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
const MAY_BREAK = /[-/\u2013\u2014]/u;

/** Splits pieces at break opportunities. Lines of source text (`\n`) break the line. */
function wordsOf(pieces: readonly Piece[]): Word[] {
  const words: Word[] = [];
  let current: { piece: Piece; width: number }[] = [];
  const close = (space: Word['space'], newLine: boolean): void => {
    if (current.length === 0 && space === undefined && !newLine) return;
    let width = 0;
    for (const p of current) width += p.width;
    words.push({ pieces: current, width, space, newLine });
    current = [];
  };
  const add = (piece: Piece, text: string): void => {
    const own = text === piece.text ? piece : { text, face: piece.face, size: piece.size, ink: piece.ink };
    current.push({ piece: own, width: widthOf(piece.face, text, piece.size) });
  };
  for (const piece of pieces) {
    const { text } = piece;
    let space: Word['space'];
    for (let from = 0; from < text.length; ) {
      let to = from;
      while (to < text.length && !isSpace(text, to)) to++;
      if (to > from) {
        const word = text.slice(from, to);
        // Looking back and ahead is dear, and few words have a sign to break at.
        const syllables = MAY_BREAK.test(word) ? word.split(INNER_BREAK) : [word];
        syllables.forEach((syllable, i) => {
          if (i > 0) close(undefined, false);
          add(piece, syllable);
        });
      }
      from = to;
      if (text[from] === '\n') {
        close(undefined, true);
        from++;
      } else if (from < text.length) {
        while (text[from] === ' ' || text[from] === '\t') from++;
        // One object for all spaces of a piece: they are alike.
        space ??= { piece: { ...piece, text: ' ' }, width: widthOf(piece.face, ' ', piece.size) };
        close(space, false);
      }
    }
  }
  close(undefined, false);
  return words;
}

function isSpace(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return code === 0x20 || code === 0x09 || code === 0x0a;
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

/** Paragraphs set before, by all that shapes them: feet, labels and shared stages come again on card after card. */
const settled = new WeakMap<Faces, Map<string, readonly TextLine[]>>();
/** They are forgotten before there are more than this: a watching server must not grow without end. */
const MOST_SETTLED = 20_000;

/** Lines of `spans` no wider than `width` pt. An empty text gives no line. */
export function breakLines(
  faces: Faces,
  spans: readonly Span[],
  width: number,
  problems: TextProblems,
): readonly TextLine[] {
  const known = settled.get(faces) ?? new Map<string, readonly TextLine[]>();
  settled.set(faces, known);
  let key = String(width);
  // With the length of each text no text can pass for two.
  for (const { weight, size, ink, text } of spans) key += `;${weight} ${size} ${ink} ${text.length} ${text}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  let sound = true;
  const lines = setAnew(faces, spans, width, {
    missing: (codePoint) => {
      sound = false;
      problems.missing(codePoint);
    },
    tooWide: (word, wordWidth, place) => {
      sound = false;
      problems.tooWide(word, wordWidth, place);
    },
  });
  // A text with a fault is set anew wherever it stands, so that the fault is reported there too.
  if (sound) {
    if (known.size >= MOST_SETTLED) known.clear();
    known.set(key, lines);
  }
  return lines;
}

function setAnew(faces: Faces, spans: readonly Span[], width: number, problems: TextProblems): TextLine[] {
  const words = wordsOf(spans.flatMap((span) => cutByFace(faces, span, problems)));
  const lines: TextLine[] = [];
  let line: Word[] = [];
  let used = 0;
  const close = (): void => {
    lines.push(placeLine(line));
    line = [];
    used = 0;
  };
  const add = (word: Word): void => {
    if (line.length > 0 && used + word.width > width) close();
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
  const line = new LineInHand();
  let end = 0;
  words.forEach((word, i) => {
    for (const { piece, width } of word.pieces) end = line.append(piece, width);
    if (word.space !== undefined && i < words.length - 1) line.append(word.space.piece, word.space.width);
  });
  return { pieces: line.placed, width: end };
}

/** Joins each piece to the one before it when both are alike, so that the PDF holds whole phrases. */
class LineInHand {
  readonly placed: { -readonly [K in keyof PlacedPiece]: PlacedPiece[K] }[] = [];
  /** The last piece from its last space on: its letters may be kerned with those that follow, so it is measured again with them. */
  private tail = '';
  private tailWidth = 0;
  private end = 0;

  /** Returns where the line ends now, in pt. */
  append(piece: Piece, width: number): number {
    const last = this.placed.at(-1);
    if (last !== undefined && last.face === piece.face && last.size === piece.size && last.ink === piece.ink) {
      const longer = this.tail + piece.text;
      const measured = this.tail === '' ? width : widthOf(piece.face, longer, piece.size);
      last.text += piece.text;
      last.width += measured - this.tailWidth;
      this.keepTail(piece, longer, measured);
      this.end = last.x + last.width;
    } else {
      this.placed.push({ text: piece.text, face: piece.face, size: piece.size, ink: piece.ink, x: this.end, width });
      this.keepTail(piece, piece.text, width);
      this.end += width;
    }
    return this.end;
  }

  private keepTail(piece: Piece, text: string, width: number): void {
    const cut = text.lastIndexOf(' ') + 1;
    this.tail = cut === 0 ? text : text.slice(cut);
    this.tailWidth = cut === 0 ? width : this.tail === '' ? 0 : widthOf(piece.face, this.tail, piece.size);
  }
}

/** Width in pt of a text that is not broken. */
export function measure(faces: Faces, span: Span, problems: TextProblems): number {
  return cutByFace(faces, span, problems).reduce((sum, piece) => sum + widthOf(piece.face, piece.text, piece.size), 0);
}

/** One line that is not broken; for numbers and labels whose room is known. */
export function oneLine(faces: Faces, spans: readonly Span[], problems: TextProblems): TextLine {
  const line = new LineInHand();
  let end = 0;
  for (const span of spans) {
    for (const piece of cutByFace(faces, span, problems))
      end = line.append(piece, widthOf(piece.face, piece.text, piece.size));
  }
  return { pieces: line.placed, width: end };
}
