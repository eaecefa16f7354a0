/** Breaks captions of drawings into centred lines, by the same widths that keep the other texts apart. */

import { textWidth } from './text-size.ts';

/** Lines of `text` no wider than `width` mm at `size` mm; a word that is wider alone is parted where the line is full. */
export function wrapText(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \n\t]+/u).filter((w) => w !== '')) {
    for (const part of partsThatFit(word, size, width)) {
      const longer = line === '' ? part : `${line} ${part}`;
      if (line !== '' && textWidth(longer, size) > width) {
        lines.push(line);
        line = part;
      } else line = longer;
    }
  }
  if (line !== '') lines.push(line);
  return lines;
}

function partsThatFit(word: string, size: number, width: number): string[] {
  if (textWidth(word, size) <= width) return [word];
  const parts: string[] = [];
  let part = '';
  for (const character of word) {
    if (part !== '' && textWidth(part + character, size) > width) {
      parts.push(part);
      part = '';
    }
    part += character;
  }
  return [...parts, part];
}
