/** How much room a text takes at the most, from a table of widths: opens no font and breaks no line. */

import type { Prose } from '../../resolve/types.ts';
import { leading } from './format.ts';
import { mm } from './items.ts';

/**
 * Widths in thousandths of an em for U+0020 to U+007E: the widest of the three weights of Source Sans 3. `/`, `\` and opening brackets
 * stand here wider than they are, because kerning drives some letters away from them. A test compares the table with the faces.
 */
const ASCII: readonly number[] = [
  200, 340, 537, 528, 528, 857, 667, 300, 440, 344, 457, 528, 300, 332, 300, 450, 528, 528, 528, 528, 528, 528, 528,
  528, 528, 528, 300, 300, 528, 528, 528, 463, 902, 573, 605, 582, 635, 548, 524, 638, 674, 301, 509, 614, 518, 762,
  665, 684, 596, 684, 613, 556, 556, 665, 556, 813, 567, 525, 541, 430, 450, 344, 528, 500, 555, 527, 573, 468, 573,
  518, 341, 534, 571, 276, 278, 548, 286, 857, 572, 555, 573, 573, 398, 443, 383, 568, 523, 776, 514, 521, 460, 430,
  268, 344, 528,
];
/** Letters of Latin-1 and Latin Extended-A and their signs. */
const LATIN = 900;
/** Dashes, quotes, comparison signs. */
const SIGN = 1100;
const SIGNS = '\u2013\u2014\u2018\u2019\u201c\u201d\u2026\u2212\u2264\u2265';
/** What kerning adds to a word at the most, as a share. */
const KERNING = 1.07;
/** The space, in ems; it is kerned too. */
const BLANK = 0.215;

/** By code unit; 0 for what needs a closer look. */
const WIDTH = widths();

function widths(): Float64Array {
  const table = new Float64Array(0x10000);
  ASCII.forEach((width, i) => {
    table[0x20 + i] = (width * KERNING) / 1000;
  });
  table[0xa0] = table[0x20] ?? 0;
  for (let code = 0xa1; code < 0x180; code++) table[code] = LATIN / 1000;
  // The soft hyphen has no shape of its own.
  table[0xad] = 0;
  for (const sign of SIGNS) table[sign.charCodeAt(0)] = SIGN / 1000;
  return table;
}

/** Words of one paragraph at the most; a longer one is not screened. */
const MOST_WORDS = 4096;
/** In place of a blank: the line ends behind the word. */
const BREAK = 1e9;
/** Words of the one paragraph in hand, and the width of the blank behind each. */
const words = new Float64Array(MOST_WORDS);
const blanks = new Float64Array(MOST_WORDS);

/**
 * A paragraph in hand, and the height of the paragraphs before it. One object serves a whole card. Lines are filled as the line
 * breaker fills them, with words no narrower than its own: so many lines are enough for it too.
 */
export class TextRoom {
  /** False once a text may hold a sign that no face has, or a word wider than its place. */
  sure = true;
  /** pt. */
  height = 0;
  private count = 0;
  private word = 0;

  /** More of the paragraph in hand. Its first letter may become a capital. */
  add(text: string, size: number): void {
    for (let i = 0; i < text.length; i++) {
      const code = text.charCodeAt(i);
      if (code === 0x20 || code === 0x09) {
        this.endWord(BLANK * size);
        continue;
      }
      if (code === 0x0a) {
        this.word += 1e-9;
        this.endWord(BREAK);
        continue;
      }
      let width = WIDTH[code] ?? 0;
      if (width === 0) this.sure = false;
      // 32 before a letter of ASCII stands its capital.
      if (i === 0 && code >= 0x61 && code <= 0x7a) width = Math.max(width, WIDTH[code - 32] ?? 0);
      this.word += width * size;
    }
  }

  private endWord(blank: number): void {
    const { count } = this;
    if (this.word > 0) {
      if (count >= MOST_WORDS - 1) {
        this.sure = false;
        return;
      }
      words[count] = this.word;
      blanks[count] = blank;
      this.count += 1;
      this.word = 0;
      // The first text of a paragraph may begin with a blank, which takes its room.
    } else if (count === 0 && blank !== BREAK) {
      words[0] = 0;
      blanks[0] = blank;
      this.count = 1;
    } else if (count > 0 && blank > (blanks[count - 1] ?? 0)) blanks[count - 1] = blank;
  }

  /** Ends the paragraph: its width in pt if nothing parts it, at the most. */
  takeWidth(): number {
    this.endWord(0);
    let total = 0;
    for (let i = 0; i < this.count; i++) {
      const blank = blanks[i] ?? 0;
      total += (words[i] ?? 0) + (blank === BREAK ? 0 : blank);
    }
    this.count = 0;
    return total;
  }

  /** Ends the paragraph: its lines in a place of `width` pt, at the most. */
  lines(width: number): number {
    this.endWord(0);
    const { count } = this;
    this.count = 0;
    let lines = count === 0 ? 0 : 1;
    let used = 0;
    for (let i = 0; i < count; i++) {
      const word = words[i] ?? 0;
      if (word > width) this.sure = false;
      if (used > 0 && used + word > width) {
        lines += 1;
        used = 0;
      }
      used += word + (blanks[i] ?? 0);
      if (used >= BREAK) {
        lines += 1;
        used = 0;
      }
    }
    return lines;
  }

  /** Ends the paragraph and adds its lines of `lead` pt to the height. */
  end(width: number, lead: number): void {
    this.height += this.lines(width) * lead;
  }

  /** One paragraph of one text. */
  text(text: string, size: number, width: number, lead = leadOf(size)): void {
    this.add(text, size);
    this.end(width, lead);
  }

  /** The author's paragraphs and list items, with `lead` before the first. */
  prose(prose: Prose, size: number, width: number, lead = ''): void {
    const step = leadOf(size);
    for (let i = 0; i < prose.length; i++) {
      const p = prose[i];
      if (p === undefined) continue;
      if (i === 0) this.add(lead, size);
      for (const run of p.runs) this.add(run.text, size);
      this.end(p.kind === 'item' ? width - mm(4) : width, step);
      if (i > 0) this.height += step * 0.2;
    }
  }
}

const leads = new Map<number, number>();

function leadOf(size: number): number {
  const known = leads.get(size);
  if (known !== undefined) return known;
  const lead = leading(size);
  leads.set(size, lead);
  return lead;
}
