/** Scalars of an ordinary file: unquoted over lines, quoted, and block text. */

import { CST } from 'yaml';
import { coreScalar } from './core-scalar.ts';
import { BACKSLASH, COLON, DOUBLE_QUOTE, HASH, type Lines, SPACE, unusual } from './ordinary-lines.ts';
import type { ScalarNode } from './tree.ts';

/** Unquoted text in block context, which goes on over lines indented deeper than `column`. Moves to the next line with content. */
export function plainText(lines: Lines, start: number, column: number): ScalarNode {
  lines.checkBeginning(start);
  let end = endOfPlain(lines, start);
  let value = lines.text.slice(start, end);
  let separator = ' ';
  // A comment ends the text, whatever follows.
  while (lines.isEnd(lines.code(lines.skipSpaces(end)))) {
    let lineEnd = lines.skipSpaces(end);
    let at = 0;
    for (;;) {
      if (lineEnd >= lines.text.length) return finished();
      const line = lines.lineAfter(lineEnd);
      at = lines.skipSpaces(line);
      const code = lines.code(at);
      if (lines.isEnd(code)) {
        separator = separator === ' ' ? '\n' : `${separator}\n`;
        lineEnd = at;
      } else if (code === HASH || at - line <= column) return finished();
      else break;
    }
    end = endOfPlain(lines, at);
    value += separator + lines.text.slice(at, end);
    separator = ' ';
  }
  return finished();

  function finished(): ScalarNode {
    lines.finish(end, column, true);
    return lines.scalar(coreScalar(value), start, end);
  }
}

/** End of the unquoted text on the line of `start`, without blanks; a colon that would make a key of it is unusual. */
function endOfPlain(lines: Lines, start: number): number {
  let end = start;
  for (let at = start; ; at++) {
    const code = lines.code(at);
    if (lines.isEnd(code)) return end;
    if (code === SPACE) {
      if (lines.code(at + 1) === HASH) return end;
    } else {
      if (code === COLON && lines.isEmpty(lines.code(at + 1))) unusual();
      end = at + 1;
    }
  }
}

/** Quoted text. `lines` is not moved; the node's end is that of the closing quote. */
export function quotedText(lines: Lines, start: number, column: number): ScalarNode {
  const { text } = lines;
  const double = lines.code(start) === DOUBLE_QUOTE;
  const quote = double ? '"' : "'";
  let end = text.indexOf(quote, start + 1);
  let plain = true;
  for (;;) {
    if (end < 0) unusual();
    if (double && lines.code(end - 1) === BACKSLASH) {
      let first = end - 1;
      while (lines.code(first - 1) === BACKSLASH) first -= 1;
      if ((end - first) % 2 === 0) break;
      end = text.indexOf(quote, end + 1);
    } else if (!double && text.charAt(end + 1) === quote) {
      plain = false;
      end = text.indexOf(quote, end + 2);
    } else break;
  }
  const inner = text.slice(start + 1, end);
  if (inner.includes('\n')) {
    plain = false;
    checkIndent(lines, start, end, column);
  } else if (double && inner.includes('\\')) plain = false;
  if (plain) return lines.scalar(inner, start, end + 1);
  const token: CST.FlowScalar = {
    type: double ? 'double-quoted-scalar' : 'single-quoted-scalar',
    offset: start,
    indent: 0,
    source: text.slice(start, end + 1),
  };
  const { value } = CST.resolveAsScalar(token, true, unusual);
  return lines.scalar(value, start, end + 1);
}

/** Lines of quoted text stand deeper than what holds them. */
function checkIndent(lines: Lines, start: number, end: number, column: number): void {
  for (let line = lines.text.indexOf('\n', start) + 1; line > 0 && line <= end; ) {
    const at = lines.skipSpaces(line);
    if (!lines.isEnd(lines.code(at)) && at - line <= column) unusual();
    line = lines.text.indexOf('\n', at) + 1;
  }
}

/** `|`, `|-`, `>` and `>-` over lines of one indentation. Moves to the next line with content. */
export function blockText(lines: Lines, start: number, column: number): ScalarNode {
  const { text } = lines;
  const folded = text.charAt(start) === '>';
  const strip = text.charAt(start + 1) === '-';
  let end = lines.skipSpaces(start + (strip ? 2 : 1));
  if (lines.code(end) === HASH && lines.code(end - 1) === SPACE) end = lines.lineEnd(end);
  if (!lines.isEnd(lines.code(end))) unusual();
  let line = lines.lineAfter(end);
  let value = '';
  let indent = -1;
  let blank = 0;
  let last = end;
  while (line < text.length) {
    const at = lines.skipSpaces(line);
    const lineEnd = lines.lineEnd(at);
    if (at === lineEnd) {
      // Blank lines before the text, and blanks that would be part of it, follow rules of their own.
      if (indent < 0 || at - line > indent) unusual();
      blank += 1;
    } else {
      if (indent < 0) {
        indent = at - line;
        if (indent <= column) unusual();
      } else if (at - line < indent) break;
      else if (folded && at - line > indent) unusual();
      value += value === '' ? '' : !folded ? '\n'.repeat(blank + 1) : blank === 0 ? ' ' : '\n'.repeat(blank);
      value += text.slice(line + indent, lineEnd);
      blank = 0;
      last = lineEnd;
    }
    line = lines.lineAfter(lineEnd);
  }
  if (indent < 0) unusual();
  lines.after = last;
  lines.advance(last, column, false);
  return lines.scalar(strip ? value : `${value}\n`, start, last);
}
