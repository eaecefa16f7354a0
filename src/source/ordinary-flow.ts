/** Lists and maps in brackets of an ordinary file. */

import { coreScalar } from './core-scalar.ts';
import {
  CLOSE_LIST,
  CLOSE_MAP,
  COLON,
  COMMA,
  checkDepth,
  DASH,
  DOUBLE_QUOTE,
  HASH,
  Keys,
  type Lines,
  OPEN_LIST,
  OPEN_MAP,
  SINGLE_QUOTE,
  SPACE,
  unusual,
} from './ordinary-lines.ts';
import { quotedText } from './ordinary-text.ts';
import type { MapEntry, Node, ScalarNode } from './tree.ts';

/** The list or map whose bracket stands at `start`; its end is that of the closing bracket. `lines` is not moved. */
export function bracketed(lines: Lines, start: number, column: number, depth: number): Node {
  checkDepth(depth);
  return lines.code(start) === OPEN_MAP
    ? bracketedMap(lines, start, column, depth)
    : bracketedList(lines, start, column, depth);
}

function bracketedList(lines: Lines, start: number, column: number, depth: number): Node {
  const items: Node[] = [];
  let at = skip(lines, start + 1, column);
  while (lines.code(at) !== CLOSE_LIST) {
    const item = member(lines, at, column, depth + 1);
    items.push(item);
    at = afterMember(lines, endOf(item), column, CLOSE_LIST);
  }
  return { kind: 'sequence', items, range: lines.range(start, at + 1) };
}

function bracketedMap(lines: Lines, start: number, column: number, depth: number): Node {
  const entries: MapEntry[] = [];
  const keys = new Keys();
  let at = skip(lines, start + 1, column);
  while (lines.code(at) !== CLOSE_MAP) {
    const { key, start: keyStart, end } = keyAt(lines, at, column);
    keys.add(key);
    const colon = lines.skipSpaces(end);
    if (lines.code(colon) !== COLON || !lines.isEmpty(lines.code(colon + 1))) unusual();
    const value = member(lines, skip(lines, colon + 1, column), column, depth + 1);
    entries.push({ key, keyRange: { file: lines.file, start: keyStart, end }, value });
    at = afterMember(lines, endOf(value), column, CLOSE_MAP);
  }
  return { kind: 'map', entries, range: lines.range(start, at + 1) };
}

/** White space at the end of a value is no part of its place, and is skipped with what follows. */
function endOf(node: Node): number {
  return node.range.end;
}

function keyAt(lines: Lines, at: number, column: number): { key: string; start: number; end: number } {
  const code = lines.code(at);
  if (code === DOUBLE_QUOTE || code === SINGLE_QUOTE) {
    const node = quotedText(lines, at, column);
    if (lines.text.slice(at, node.range.end).includes('\n')) unusual();
    return { key: String(node.value), start: at, end: node.range.end };
  }
  checkBeginning(lines, at);
  const end = endOfPlain(lines, at);
  return { key: String(coreScalar(lines.text.slice(at, end))), start: at, end };
}

function member(lines: Lines, at: number, column: number, depth: number): Node {
  checkDepth(depth);
  const code = lines.code(at);
  if (code === OPEN_LIST || code === OPEN_MAP) return bracketed(lines, at, column, depth);
  if (code === DOUBLE_QUOTE || code === SINGLE_QUOTE) return quotedText(lines, at, column);
  return plain(lines, at, column);
}

/** Behind a member: a comma, which may be the last, or the closing bracket. */
function afterMember(lines: Lines, end: number, column: number, close: number): number {
  const at = skip(lines, end, column);
  if (lines.code(at) === close) return at;
  if (lines.code(at) !== COMMA) unusual();
  return skip(lines, at + 1, column);
}

/** Blanks and line ends; a line stands deeper than what holds the brackets. Comments are unusual here. */
function skip(lines: Lines, offset: number, column: number): number {
  let at = lines.skipSpaces(offset);
  while (lines.isEnd(lines.code(at))) {
    if (at >= lines.text.length) unusual();
    const line = lines.lineAfter(at);
    at = lines.skipSpaces(line);
    if (!lines.isEnd(lines.code(at)) && at - line <= column) unusual();
  }
  if (lines.code(at) === HASH) unusual();
  return at;
}

function plain(lines: Lines, start: number, column: number): ScalarNode {
  checkBeginning(lines, start);
  let end = endOfPlain(lines, start);
  let value = lines.text.slice(start, end);
  for (;;) {
    let lineEnd = lines.skipSpaces(end);
    let separator = ' ';
    let at = lineEnd;
    while (lines.isEnd(lines.code(lineEnd))) {
      at = skipLine(lines, lineEnd, column);
      if (lines.isEnd(lines.code(at))) separator = separator === ' ' ? '\n' : `${separator}\n`;
      lineEnd = at;
    }
    const code = lines.code(at);
    if (code === COLON && (lines.isEmpty(lines.code(at + 1)) || isBracketSign(lines.code(at + 1)))) unusual();
    if (code === HASH) unusual();
    if (isBracketSign(code)) return lines.scalar(coreScalar(value), start, end);
    end = endOfPlain(lines, at);
    if (end === at) unusual();
    value += separator + lines.text.slice(at, end);
  }
}

function skipLine(lines: Lines, lineEnd: number, column: number): number {
  if (lineEnd >= lines.text.length) unusual();
  const line = lines.lineAfter(lineEnd);
  const at = lines.skipSpaces(line);
  if (!lines.isEnd(lines.code(at)) && at - line <= column) unusual();
  return at;
}

function checkBeginning(lines: Lines, at: number): void {
  lines.checkBeginning(at);
  if (lines.code(at) !== DASH) return;
  const next = lines.code(at + 1);
  if (lines.isEmpty(next) || isBracketSign(next)) unusual();
}

/** End of the unquoted text on the line of `start`, without blanks. */
function endOfPlain(lines: Lines, start: number): number {
  let end = start;
  for (let at = start; ; at++) {
    const code = lines.code(at);
    if (code === SPACE) continue;
    if (lines.isEnd(code) || isBracketSign(code)) return end;
    if (code === HASH && at > start && lines.code(at - 1) === SPACE) return end;
    if (code === COLON) {
      const next = lines.code(at + 1);
      if (lines.isEmpty(next) || isBracketSign(next)) return end;
    }
    end = at + 1;
  }
}

function isBracketSign(code: number): boolean {
  return code === COMMA || code === OPEN_LIST || code === CLOSE_LIST || code === OPEN_MAP || code === CLOSE_MAP;
}
